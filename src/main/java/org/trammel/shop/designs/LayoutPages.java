package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.calc.geometry.Dimension;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.TypedFields;

/** The sheet on which a layout is closed. Computing asks and changes nothing; only taking the layout is an act. */
@Controller
@RequestMapping("/designs/{id:\\d+}/layout")
class LayoutPages {

    private static final String GIVEN = "given.";
    private static final String PART = "part.";
    private static final String WITHOUT = "without";

    private final DesignReading reading;
    private final LayoutSheet layouts;
    private final LayoutOffice office;
    private final Formats formats;

    LayoutPages(DesignReading reading, LayoutSheet layouts, LayoutOffice office, Formats formats) {
        this.reading = reading;
        this.layouts = layouts;
        this.office = office;
        this.formats = formats;
    }

    @GetMapping
    String sheet(@PathVariable long id, @RequestParam Map<String, String> sent, SignedOn who, Model model) {
        Map<String, String> typed = new HashMap<>(sent);
        typed.remove(GIVEN + sent.getOrDefault(WITHOUT, ""));
        RevisionStory story = reading.story(id, who.person().isAny(Role.OWNER, Role.QA_LEAD));
        TypedFields fields = new TypedFields(typed, "Nothing was computed.");
        boolean asked = typed.keySet().stream().anyMatch(name -> name.startsWith(GIVEN));
        Map<Dimension, BigDecimal> given = asked
                ? amounts(fields, GIVEN, List.of(Dimension.values()))
                : LayoutInput.drawn(story.sheet().geometry());
        Map<Dimension, BigDecimal> parts = amounts(fields, PART, LayoutInput.OTHER_PARTS);
        Map<String, String> shown = new HashMap<>();
        given.forEach((dimension, amount) -> shown.put(GIVEN + dimension.name(), formats.plain(amount)));
        typed.forEach((name, value) -> {
            if (name.startsWith(GIVEN) || name.startsWith(PART)) {
                shown.put(name, value);
            }
        });
        model.addAttribute("story", story);
        model.addAttribute("fields", shown);
        model.addAttribute("unread", fields.wrongs());
        model.addAttribute("layout", layouts.of(given, parts));
        model.addAttribute(
                "parts", LayoutInput.OTHER_PARTS.stream().map(PartField::of).toList());
        model.addAttribute(
                "mayTake",
                who.person().isAny(DesignVerb.CHANGE.by())
                        && DesignVerb.CHANGE.allowedFrom(story.sheet().state()));
        return "designs/layout";
    }

    /** A field for another part. */
    record PartField(String name, String label) {

        static PartField of(Dimension dimension) {
            return new PartField(PART + dimension.name(), LayoutInput.label(dimension));
        }
    }

    @PostMapping
    String take(Act act, @PathVariable long id, @RequestParam Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed, "The draft was not changed.");
        Map<Dimension, BigDecimal> given = amounts(fields, GIVEN, List.of(Dimension.values()));
        Long version = fields.idOrNone("version");
        fields.refuseIfWrong();
        office.take(act, id, version, given, fields.confirmed());
        return "redirect:/designs/" + id + "/frame";
    }

    private static Map<Dimension, BigDecimal> amounts(TypedFields fields, String prefix, List<Dimension> of) {
        Map<Dimension, BigDecimal> amounts = new EnumMap<>(Dimension.class);
        for (Dimension dimension : of) {
            BigDecimal amount = fields.figureOrNone(prefix + dimension.name());
            if (amount != null) {
                amounts.put(dimension, amount);
            }
        }
        return amounts;
    }
}
