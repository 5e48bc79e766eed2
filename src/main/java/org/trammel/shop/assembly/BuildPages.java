package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Signatures;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.Keyed;

/** The sheet of a join, a final check or a packing at a tablet. */
@Controller
@RequestMapping("/builds/{operationId}")
class BuildPages {

    private static final String BEDDING = "The brake was not recorded.";

    private final Builds builds;
    private final BuildTurn turn;
    private final Signatures signatures;
    private final Crew crew;

    BuildPages(Builds builds, BuildTurn turn, Signatures signatures, Crew crew) {
        this.builds = builds;
        this.turn = turn;
        this.signatures = signatures;
        this.crew = crew;
    }

    @GetMapping
    String sheet(@PathVariable long operationId, SignedOn who, Model model) {
        BuildTurn.At at = turn.of(operationId);
        model.addAttribute("at", at);
        model.addAttribute("record", builds.of(operationId));
        model.addAttribute("names", crew.names());
        model.addAttribute(
                "works",
                who.person().mayWork()
                        && at.head().state().open()
                        && at.head().currentOperationId() != null
                        && at.head().currentOperationId() == operationId);
        Map<Long, String> riders = new LinkedHashMap<>();
        riders.put(0L, "choose who rode");
        crew.active().stream()
                .filter(Person::maySign)
                .forEach(person -> riders.put(person.id(), crew.names().get(person.id())));
        model.addAttribute("riders", riders);
        model.addAttribute(
                "rider", riders.containsKey(who.person().id()) ? who.person().id() : 0L);
        model.addAttribute(
                "brakes",
                Map.of(
                        BuildRecord.Brake.FRONT.name(),
                        BuildRecord.Brake.FRONT.word(),
                        BuildRecord.Brake.REAR.name(),
                        BuildRecord.Brake.REAR.word()));
        return "assembly/build";
    }

    @PostMapping("/join")
    String join(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        String deed = "The parts were not joined.";
        builds.join(
                act,
                operationId,
                List.of(text(fields, "first"), text(fields, "second")),
                new OffsetShares(
                        figure(fields, "frontMm", deed),
                        figure(fields, "armMm", deed),
                        figure(fields, "bearingMm", deed),
                        figure(fields, "dropoutMm", deed)),
                fields.get("words"));
        return back(operationId);
    }

    @PostMapping("/bedding")
    String bed(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        Integer stops = stops(fields, "stops");
        if (stops == null) {
            throw Refusal.input("stops", BEDDING, "The count of stops is missing.", "Count them.");
        }
        builds.bed(
                act,
                operationId,
                new Builds.Bedding(
                        text(fields, "brake").isEmpty()
                                ? null
                                : Keyed.one(BuildRecord.Brake.class, "brake", BEDDING, text(fields, "brake")),
                        stops,
                        figure(fields, "kmh", BEDDING),
                        stops(fields, "askedStops"),
                        figure(fields, "askedKmh", BEDDING),
                        fields.get("source"),
                        fields.containsKey("clear")));
        return back(operationId);
    }

    private static @Nullable Integer stops(Map<String, String> fields, String field) {
        String typed = text(fields, field);
        if (typed.isEmpty()) {
            return null;
        }
        if (!typed.matches("[0-9]{1,4}")) {
            throw Refusal.input(field, BEDDING, "“" + typed + "” is no count of stops.", "Enter a whole number.");
        }
        return Integer.valueOf(typed);
    }

    @PostMapping("/ride")
    String ride(Act act, @PathVariable long operationId, SignedOn who, @RequestParam Map<String, String> fields) {
        String rider = text(fields, "rider");
        if (!rider.matches("[1-9][0-9]{0,17}")) {
            throw Refusal.input("rider", "The ride was not recorded.", "Nobody was chosen.", "Choose who rode.");
        }
        long person = Long.parseLong(rider);
        signatures.sign(person, fields.getOrDefault("pin", ""), who.deviceId());
        builds.ride(act, operationId, person, fields.containsKey("good"), fields.get("words"));
        return back(operationId);
    }

    @PostMapping("/items")
    String item(
            Act act,
            @PathVariable long operationId,
            @RequestParam @Nullable String item,
            @RequestParam(defaultValue = "false") boolean there) {
        builds.item(act, operationId, item, there);
        return back(operationId);
    }

    @PostMapping("/pack")
    String pack(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        builds.pack(act, operationId, text(fields, "frame"), text(fields, "box"), text(fields, "paper"));
        return back(operationId);
    }

    private static @Nullable BigDecimal figure(Map<String, String> fields, String field, String deed) {
        return Keyed.figureOrNone(field, deed, fields.get(field));
    }

    private static String text(Map<String, String> fields, String field) {
        return fields.getOrDefault(field, "").strip();
    }

    private static String back(long operationId) {
        return "redirect:/builds/" + operationId;
    }
}
