package org.trammel.shop.assembly;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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

/** The torque sheet of a frame at a tablet, and on paper. */
@Controller
@RequestMapping("/torques/{operationId}")
class TorquePages {

    private static final String DEED = "The bolt was not recorded.";

    private final Torques torques;
    private final Insertions insertions;
    private final TorqueTurn turn;
    private final TorqueTools tools;
    private final Signatures signatures;
    private final Crew crew;

    TorquePages(
            Torques torques,
            Insertions insertions,
            TorqueTurn turn,
            TorqueTools tools,
            Signatures signatures,
            Crew crew) {
        this.torques = torques;
        this.insertions = insertions;
        this.turn = turn;
        this.tools = tools;
        this.signatures = signatures;
        this.crew = crew;
    }

    /** @param of a fastener chosen before its turn, as PART-FASTENER */
    @GetMapping
    String sheet(@PathVariable long operationId, @RequestParam @Nullable String of, SignedOn who, Model model) {
        TorqueTurn.At at = turn.of(operationId);
        TorqueSheet sheet = at.sheet();
        TorqueSheet.Line line = of == null ? first(sheet) : chosen(sheet, of);
        model.addAttribute("at", at);
        model.addAttribute("sheet", sheet);
        model.addAttribute("line", line);
        model.addAttribute("posts", insertions.of(operationId));
        model.addAttribute("names", crew.names());
        model.addAttribute("works", works(at, operationId, who));
        model.addAttribute(
                "tools",
                line == null || line.next() == null
                        ? Map.of()
                        : tools.usable(line.next().set_Nm()));
        model.addAttribute("tool", lastTool(sheet));
        model.addAttribute("witnesses", witnesses(sheet, who));
        return "assembly/torques";
    }

    @GetMapping("/paper")
    String paper(@PathVariable long operationId, Model model) {
        TorqueTurn.At at = turn.of(operationId);
        model.addAttribute("at", at);
        model.addAttribute("sheet", at.sheet());
        model.addAttribute("names", crew.names());
        return "assembly/torque-paper";
    }

    private static boolean works(TorqueTurn.At at, long operationId, SignedOn who) {
        return who.person().mayWork()
                && at.head().state().open()
                && at.head().currentOperationId() != null
                && at.head().currentOperationId() == operationId;
    }

    /** What is to be done first: a fastener that went wrong, then the next one in turn. */
    private static TorqueSheet.@Nullable Line first(TorqueSheet sheet) {
        return sheet.lines().stream()
                .filter(line -> line.state() == TorqueSheet.State.AGAIN || line.state() == TorqueSheet.State.IN_WORK)
                .findFirst()
                .orElseGet(sheet::next);
    }

    private static TorqueSheet.@Nullable Line chosen(TorqueSheet sheet, String of) {
        return sheet.lines().stream()
                .filter(line -> key(line).equals(of))
                .findFirst()
                .orElseGet(() -> first(sheet));
    }

    static String key(TorqueSheet.Line line) {
        return line.part().id() + "-" + line.fastener().id();
    }

    private static String lastTool(TorqueSheet sheet) {
        return sheet.lines().stream()
                .map(TorqueSheet.Line::last)
                .filter(java.util.Objects::nonNull)
                .max(java.util.Comparator.comparing(Bolt::at))
                .map(Bolt::gauge)
                .orElse("");
    }

    /** Whoever may sign and tightened none of what is to be looked at; a second person at this tablet stands first. */
    private Map<Long, String> witnesses(TorqueSheet sheet, SignedOn who) {
        List<Set<Long>> doers = sheet.toWitness().stream().map(Torques::doers).toList();
        Map<Long, String> may = new LinkedHashMap<>();
        may.put(0L, "choose who looked");
        Person second = who.second();
        crew.active().stream()
                .filter(Person::maySign)
                .filter(person -> doers.stream().anyMatch(set -> !set.contains(person.id())))
                .sorted((a, b) -> Boolean.compare(
                        second != null && b.id() == second.id(), second != null && a.id() == second.id()))
                .forEach(person -> may.put(person.id(), crew.names().get(person.id())));
        return may;
    }

    @PostMapping("/bolts")
    String tighten(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        Of of = of(text(fields, "of"));
        TorqueSheet sheet = torques.tighten(
                act,
                operationId,
                new Torques.Tightened(
                        of.partId(),
                        of.fastenerId(),
                        whole(fields, "round"),
                        whole(fields, "pass"),
                        whole(fields, "bolt"),
                        text(fields, "gauge"),
                        Keyed.figureOrNone("target", DEED, fields.get("target")),
                        Keyed.figureOrNone("reading", DEED, fields.get("reading"))));
        boolean more = sheet.line(of.partId(), of.fastenerId()).next() != null;
        return back(operationId) + (more ? "?of=" + text(fields, "of") : "");
    }

    @PostMapping("/again")
    String again(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        Of of = of(text(fields, "of"));
        torques.again(act, operationId, of.partId(), of.fastenerId(), fields.get("words"));
        return back(operationId) + "?of=" + text(fields, "of");
    }

    @PostMapping("/insertion")
    String insertion(Act act, @PathVariable long operationId, @RequestParam Map<String, String> fields) {
        String deed = "The seatpost was not recorded.";
        String part = text(fields, "part");
        if (!part.matches("[1-9][0-9]{0,17}")) {
            throw Refusal.input("part", deed, "It is not said which seatpost.", "Open the torque sheet again.");
        }
        insertions.measure(
                act, operationId, Long.parseLong(part), Keyed.figureOrNone("inserted", deed, fields.get("inserted")));
        return back(operationId);
    }

    @PostMapping("/witness")
    String witness(Act act, @PathVariable long operationId, SignedOn who, @RequestParam Map<String, String> fields) {
        String deed = "Nothing was witnessed.";
        String signer = text(fields, "signer");
        if (!signer.matches("[1-9][0-9]{0,17}")) {
            throw Refusal.input("signer", deed, "Nobody was chosen.", "Tap the name of whoever looked.");
        }
        long person = Long.parseLong(signer);
        List<Torques.Seen> seen = new ArrayList<>();
        fields.keySet().stream().filter(field -> field.startsWith("seen-")).forEach(field -> {
            Of of = of(field.substring("seen-".length()));
            seen.add(new Torques.Seen(of.partId(), of.fastenerId(), round(fields.get(field))));
        });
        signatures.sign(person, fields.getOrDefault("pin", ""), who.deviceId());
        torques.witness(act, operationId, person, seen);
        return back(operationId);
    }

    /** The box of a fastener bears the round that was shown. */
    private static int round(String box) {
        if (!box.matches("[0-9]{1,4}")) {
            throw Refusal.input(
                    "seen",
                    "Nothing was witnessed.",
                    "It is not said what was looked at.",
                    "Open the torque sheet of the frame again.");
        }
        return Integer.parseInt(box);
    }

    /** A fastener by its component on the frame. */
    private record Of(long partId, long fastenerId) {}

    private static Of of(String key) {
        if (!key.matches("[0-9]{1,18}-[0-9]{1,18}")) {
            throw Refusal.input(
                    "of", DEED, "It is not said which fastener.", "Open the torque sheet of the frame again.");
        }
        int dash = key.indexOf('-');
        return new Of(Long.parseLong(key.substring(0, dash)), Long.parseLong(key.substring(dash + 1)));
    }

    private static int whole(Map<String, String> fields, String field) {
        String typed = text(fields, field);
        if (!typed.matches("[0-9]{1,4}")) {
            throw Refusal.input(
                    field, DEED, "It is not said which " + field + " it was.", "Open the torque sheet again.");
        }
        return Integer.parseInt(typed);
    }

    private static String text(Map<String, String> fields, String field) {
        return fields.getOrDefault(field, "").strip();
    }

    private static String back(long operationId) {
        return "redirect:/torques/" + operationId;
    }
}
