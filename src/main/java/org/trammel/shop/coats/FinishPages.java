package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.inspection.GivenCodes;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signatures;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.Keyed;

/** The sheets of finishes. */
@Controller
@RequestMapping("/shop/finishes")
class FinishPages {

    private static final BigDecimal MOST_MIN = BigDecimal.valueOf(100_000);

    private final Finishes finishes;
    private final Signatures signatures;
    private final Crew crew;

    FinishPages(Finishes finishes, Signatures signatures, Crew crew) {
        this.finishes = finishes;
        this.signatures = signatures;
        this.crew = crew;
    }

    @GetMapping
    String list(SignedOn who, Model model) {
        model.addAttribute("finishes", finishes.inForce());
        model.addAttribute("keeps", who.person().is(Role.QA_LEAD));
        return "coats/finishes";
    }

    @GetMapping("/new")
    String fresh(@RequestParam @Nullable String from, Model model) {
        Finish last = from == null ? null : finishes.of(from).get(0);
        model.addAttribute("last", last);
        model.addAttribute("metals", NewFinish.METALS);
        model.addAttribute("rules", CoatForm.rules());
        model.addAttribute("levels", CoatForm.levels());
        model.addAttribute("figures", CoatFigure.values());
        model.addAttribute("values", values(last));
        return "coats/finish-form";
    }

    @GetMapping("/{code}")
    String one(@PathVariable String code, SignedOn who, Model model) {
        List<Finish> revisions = finishes.of(code);
        model.addAttribute("figures", CoatFigure.values());
        model.addAttribute("f", revisions.get(0));
        model.addAttribute("revisions", revisions);
        model.addAttribute("names", crew.names());
        model.addAttribute("keeps", who.person().is(Role.QA_LEAD));
        return "coats/finish";
    }

    @PostMapping
    String putInForce(
            Act act,
            @RequestParam Map<String, String> fields,
            @RequestParam(defaultValue = "") String secret,
            SignedOn who) {
        signatures.confirm(who, secret);
        Finish set = finishes.putInForce(act, fields.getOrDefault("code", ""), content(fields), CoatForm.asked(fields));
        return "redirect:/shop/finishes/" + set.code();
    }

    private static NewFinish content(Map<String, String> fields) {
        String deed = "The finish was not put in force.";
        return new NewFinish(
                fields.getOrDefault("what", ""),
                NewFinish.METALS.stream()
                        .filter(metal -> "true".equals(fields.get("metal" + metal)))
                        .toList(),
                NewFinish.words(fields.getOrDefault("blastOperations", "")),
                NewFinish.words(fields.getOrDefault("coatOperations", "")),
                fields.getOrDefault("masks", "").lines().toList(),
                Keyed.figureOrNone("mostBar", deed, fields.get("mostBar")),
                Keyed.figureOrNone("mostEarth", deed, fields.get("mostEarth")),
                fields.getOrDefault("source", ""),
                second(fields, deed),
                gives(fields));
    }

    /** Null where nothing of a second colour is entered. */
    private static @Nullable SecondColour second(Map<String, String> fields, String deed) {
        if (Stream.of("layOperations", "drawOperations", "lines", "mostMin")
                .allMatch(field -> fields.getOrDefault(field, "").isBlank())) {
            return null;
        }
        BigDecimal most = Keyed.figureOrNone("mostMin", deed, fields.get("mostMin"));
        if (most != null && (most.stripTrailingZeros().scale() > 0 || most.abs().compareTo(MOST_MIN) > 0)) {
            throw Refusal.input("mostMin", deed, "Minutes are a whole number.", "Enter such as 120.");
        }
        return new SecondColour(
                NewFinish.words(fields.getOrDefault("layOperations", "")),
                NewFinish.words(fields.getOrDefault("drawOperations", "")),
                fields.getOrDefault("lines", "").lines().toList(),
                most == null ? null : most.intValueExact());
    }

    private static Map<CoatFigure, List<String>> gives(Map<String, String> fields) {
        Map<CoatFigure, List<String>> gives = new EnumMap<>(CoatFigure.class);
        for (CoatFigure figure : CoatFigure.values()) {
            gives.put(figure, GivenCodes.typed(fields.getOrDefault("gives" + figure, "")));
        }
        return gives;
    }

    private static Map<String, Object> values(@Nullable Finish last) {
        Map<String, Object> values = new HashMap<>();
        if (last != null) {
            NewFinish content = last.content();
            values.put("what", content.what());
            content.metals().forEach(metal -> values.put("metal" + metal, true));
            values.put("blastOperations", String.join(" ", content.blastOperations()));
            values.put("coatOperations", String.join(" ", content.coatOperations()));
            values.put("masks", String.join("\n", content.masks()));
            values.put("mostBar", content.most_bar());
            values.put("mostEarth", content.mostEarth_MOhm());
            values.put("source", content.source());
            SecondColour second = content.secondColour();
            if (second != null) {
                values.put("layOperations", String.join(" ", second.layOperations()));
                values.put("drawOperations", String.join(" ", second.drawOperations()));
                values.put("lines", String.join("\n", second.lines()));
                values.put("mostMin", second.most_min());
            }
            content.gives().forEach((figure, codes) -> values.put("gives" + figure, String.join(" ", codes)));
            CoatForm.fill(values, last.coat());
        }
        return values;
    }
}
