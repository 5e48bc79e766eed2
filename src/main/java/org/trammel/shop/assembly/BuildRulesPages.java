package org.trammel.shop.assembly;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signatures;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.Keyed;

/** The rules of joining, final check and packing. */
@Controller
@RequestMapping("/shop/build-rules")
class BuildRulesPages {

    private static final String DEED = "The rules were not put in force.";

    private final BuildRulesBook book;
    private final Signatures signatures;
    private final Crew crew;

    BuildRulesPages(BuildRulesBook book, Signatures signatures, Crew crew) {
        this.book = book;
        this.signatures = signatures;
        this.crew = crew;
    }

    @GetMapping
    String rules(SignedOn who, Model model) {
        BuildRules rules = book.inForce().orElse(null);
        model.addAttribute("rules", rules);
        model.addAttribute(
                "items",
                rules == null
                        ? ""
                        : rules.content().countryItems().stream()
                                .map(NewBuildRules.CountryItem::line)
                                .collect(Collectors.joining("\n")));
        model.addAttribute("names", crew.names());
        model.addAttribute("keeps", who.person().is(Role.QA_LEAD));
        return "assembly/build-rules";
    }

    @PostMapping
    String putInForce(
            Act act,
            @RequestParam Map<String, String> fields,
            @RequestParam(defaultValue = "") String secret,
            SignedOn who) {
        signatures.confirm(who, secret);
        book.putInForce(act, content(fields));
        return "redirect:/shop/build-rules";
    }

    private static NewBuildRules content(Map<String, String> fields) {
        String stops = fields.getOrDefault("beddingStops", "").strip();
        if (!stops.matches("[0-9]{1,4}")) {
            throw Refusal.input("beddingStops", DEED, "The stops are no whole number.", "Enter such as 20.");
        }
        return new NewBuildRules(
                codes(fields, "joinOperations"),
                codes(fields, "fitOperations"),
                codes(fields, "finalOperations"),
                codes(fields, "packOperations"),
                new OffsetShares(
                        Keyed.figureOrNone("frontMm", DEED, fields.get("frontMm")),
                        Keyed.figureOrNone("armMm", DEED, fields.get("armMm")),
                        Keyed.figureOrNone("bearingMm", DEED, fields.get("bearingMm")),
                        Keyed.figureOrNone("dropoutMm", DEED, fields.get("dropoutMm"))),
                Integer.parseInt(stops),
                Keyed.figureOrNone("beddingKmh", DEED, fields.get("beddingKmh")),
                NewBuildRules.items(fields.getOrDefault("countryItems", "")),
                fields.getOrDefault("source", ""));
    }

    private static List<String> codes(Map<String, String> fields, String field) {
        return Stream.of(fields.getOrDefault(field, "").split("[\\s,;]+"))
                .filter(code -> !code.isEmpty())
                .toList();
    }
}
