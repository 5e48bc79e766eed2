package org.trammel.shop.routes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** Everything a draft must be before it is released. */
final class RouteCheck {

    /** A caution longer than this is not read at arm's length. */
    static final int CAUTION_WORDS = 12;

    /** Lots that lay a film on the frame. */
    private static final Set<String> COATS = Set.of("POWDER", "PAINT");

    /**
     * What the shop has that a route names.
     *
     * @param stations codes of the stations in use
     * @param aids gauge kinds whose gauges have no stated uncertainty
     */
    record Shop(Set<String> stations, Set<String> aids) {}

    private final RouteSheet route;
    private final Shop shop;
    private final List<Finding> findings = new ArrayList<>();

    private RouteCheck(RouteSheet route, Shop shop) {
        this.route = route;
        this.shop = shop;
    }

    /** What is wrong with the draft, in the order of the route; empty if nothing is. */
    static List<Finding> of(RouteSheet route, Shop shop) {
        RouteCheck check = new RouteCheck(route, shop);
        check.codes();
        check.gates();
        check.joins();
        check.serial();
        route.operations().forEach(check::operation);
        check.findings.addAll(ClockCheck.of(route));
        return List.copyOf(check.findings);
    }

    private void finds(String place, String why, String instead) {
        findings.add(new Finding(place, why, instead));
    }

    private boolean stationCheck() {
        return route.kind().equals(Kinds.STATION_CHECK);
    }

    private void codes() {
        if (route.operations().isEmpty()) {
            finds("", "The route has no operation.", "Add the first operation.");
        }
        Set<String> operations = new HashSet<>();
        Set<String> characteristics = new HashSet<>();
        for (OperationSheet operation : route.operations()) {
            if (!operations.add(operation.code())) {
                finds(operation.code(), "Two operations have this code.", "Give one of them another code.");
            }
            Set<String> nodes = new HashSet<>();
            operation.steps().stream()
                    .filter(step -> step.irreversible() && !nodes.add(step.text()))
                    .findFirst()
                    .ifPresent(step -> finds(
                            operation.code(),
                            "Two steps that cannot be undone have the same words, “" + step.text() + "”.",
                            "Tell them apart: what is recorded of one is no record of the other."));
            for (CharacteristicSheet characteristic : operation.characteristics()) {
                if (!characteristics.add(characteristic.code())) {
                    finds(
                            characteristic.code(),
                            "Two characteristics have this code.",
                            "Give one of them another code.");
                }
            }
        }
    }

    /** What cannot be undone stands between gates: somebody signs before joining metal and after the last of it. */
    private void gates() {
        List<OperationSheet> all = route.operations();
        if (stationCheck() || all.isEmpty()) {
            return;
        }
        int lastHold = last(all, operation -> operation.point() == Point.HOLD);
        if (lastHold < 0) {
            finds("", "The route has no hold point.", "Make the gate of at least one operation a hold point.");
            return;
        }
        int lastIrreversible = last(all, OperationSheet::irreversible);
        if (lastIrreversible > lastHold) {
            finds(
                    all.get(lastIrreversible).code(),
                    "It cannot be undone and no hold point follows it, so nobody decides what it left.",
                    "Make its gate a hold point, or put a hold point after it.");
        }
        int firstHold = first(all, operation -> operation.point() == Point.HOLD);
        int firstJoint = first(all, RouteCheck::joinsMetal);
        if (firstJoint >= 0 && firstHold >= firstJoint) {
            finds(
                    all.get(firstJoint).code(),
                    "Metal is joined here and no hold point stands before it.",
                    "Put the tack check before it as a hold point.");
        }
    }

    private void joins() {
        List<String> joining = route.operations().stream()
                .filter(OperationSheet::joins)
                .map(OperationSheet::code)
                .toList();
        if (joining.size() > 1) {
            finds(
                    joining.get(1),
                    "The parts are joined at " + joining.get(0) + " already.",
                    "Let one operation join the parts.");
        }
        if (joining.isEmpty() && !route.children().isEmpty()) {
            finds(
                    "",
                    "The route has parts and no operation joins them.",
                    "Mark the operation at which they are joined.");
        }
        if (!joining.isEmpty() && route.children().isEmpty()) {
            finds(joining.get(0), "It joins parts and the route names none.", "Add the parts with their routes.");
        }
    }

    /** A serial is struck into bare metal and read back after it is there. */
    private void serial() {
        boolean coated = false;
        boolean struck = false;
        for (OperationSheet operation : route.operations()) {
            for (StepSheet step : operation.steps()) {
                coated |= step.lotKind() != null && COATS.contains(step.lotKind());
                if (step.proof() == Proof.SERIAL_STRUCK) {
                    struck = true;
                    if (coated) {
                        finds(
                                operation.code(),
                                "The serial is struck after the coat, which cracks there and hides it.",
                                "Put the step before the first powder or paint.");
                    }
                }
                if (step.proof() == Proof.SERIAL_READ && !struck) {
                    finds(
                            operation.code(),
                            "The serial is read back before any step strikes it.",
                            "Put the step that strikes it first.");
                }
            }
        }
    }

    private void operation(OperationSheet operation) {
        String code = operation.code();
        if (operation.steps().isEmpty() && operation.characteristics().isEmpty()) {
            finds(code, "It has no step and no characteristic.", "Add what is done there, or retire the operation.");
        }
        if (!operation.station().isEmpty() && !shop.stations().contains(operation.station())) {
            finds(code, "There is no station " + operation.station() + ".", "Choose a station that is in use.");
        }
        if (operation.station().isEmpty()) {
            finds(code, "No station is named.", "Choose the station that does it; a waiting time is a clock.");
        }
        if (words(operation.caution()) > CAUTION_WORDS) {
            finds(
                    code,
                    "The caution has " + words(operation.caution()) + " words.",
                    "Say it in " + CAUTION_WORDS + " words or fewer.");
        }
        signers(operation);
        operation.characteristics().forEach(this::characteristic);
    }

    private void signers(OperationSheet operation) {
        if (operation.point() == Point.NONE) {
            if (!operation.signers().isEmpty()) {
                finds(operation.code(), "Signers are named and there is no gate.", "Make it a hold or witness point.");
            }
            return;
        }
        if (operation.signers().isEmpty()) {
            finds(operation.code(), "Its gate names nobody who signs.", "Name who signs.");
        } else if (operation.point() == Point.HOLD && operation.signers().equals(List.of(Signer.WORKER))) {
            finds(
                    operation.code(),
                    "Its hold point is signed by whoever did the work and nobody else.",
                    "Add a second person, the aligner, the QA lead or the owner.");
        }
    }

    private void characteristic(CharacteristicSheet c) {
        String code = c.code();
        if (c.lowerDeviation() == null && c.upperDeviation() == null) {
            finds(code, "It has no limit.", "Give a lower or an upper limit.");
        }
        if (c.lowerDeviation() != null
                && c.upperDeviation() != null
                && c.lowerDeviation().compareTo(c.upperDeviation()) >= 0) {
            finds(
                    code,
                    "Its lower limit " + c.lowerDeviation().toPlainString() + " is not below its upper limit "
                            + c.upperDeviation().toPlainString() + ".",
                    "Exchange or correct the limits.");
        }
        if (c.rule() == Rule.GUARDED && shop.aids().contains(c.gaugeKind())) {
            finds(
                    code,
                    "The guarded rule needs an uncertainty, and gauges of kind " + c.gaugeKind() + " have none.",
                    "Choose a gauge kind with uncertainty, or the plain rule.");
        }
        if (c.reduction() == Reduction.SINGLE && c.points().size() > 1) {
            finds(
                    code,
                    "It has " + c.points().size() + " sample points and takes a single value.",
                    "Say how the points become one value.");
        }
        if (c.reduction() == Reduction.SPAN && c.points().size() < 2) {
            finds(code, "A span needs two sample points.", "Add a sample point, or take the single value.");
        }
        if (CharacteristicSheet.isAnswered(c.unit())
                && (c.rule() != Rule.PLAIN
                        || c.reduction() != Reduction.LEAST
                        || c.nominal() != null
                        || c.fromDesign())) {
            finds(
                    code,
                    "It is answered with yes or no.",
                    "Let the least answer decide by the plain rule, lower limit 1, without a nominal.");
        }
        if (c.reduction() == Reduction.COAXIAL && c.points().size() != 2) {
            finds(code, "A coaxiality is read in two directions.", "Give it two sample points, square to each other.");
        }
        boolean share = c.reduction() == Reduction.ALL_BUT_FIFTH || c.reduction() == Reduction.ALL_BUT_UNDER_FIFTH;
        if (share && c.upperDeviation() != null) {
            finds(
                    code,
                    "It sets the least readings aside, which says nothing about an upper limit.",
                    "Leave the upper limit to a characteristic of its own, by the greatest.");
        }
        if (c.signers().isEmpty()) {
            finds(code, "Nobody signs its verdict.", "Name who signs.");
        }
        if (c.secondPerson() && !c.signers().contains(Signer.SECOND)) {
            finds(code, "Two people read it and no second person signs.", "Add the second person to its signers.");
        }
        if (c.readBack() && !c.fromDesign() && c.nominal() == null) {
            finds(
                    code,
                    "It is read back blind and has no nominal to compare with.",
                    "Take the nominal from the design.");
        }
        coldSet(c);
        if (c.source().isBlank()) {
            finds(code, "Its limits have no source.", "Say where they come from.");
        }
    }

    private void coldSet(CharacteristicSheet c) {
        if (c.coldSetClock() == null) {
            return;
        }
        if (!c.deciding()) {
            finds(
                    c.code(),
                    "A cold-set is allowed where the reading does not decide.",
                    "Allow it at the deciding operation only.");
        }
        if (c.coldSetAttempts() < 1
                || c.coldSetAmount() == null
                || c.coldSetAmount().signum() <= 0) {
            finds(
                    c.code(),
                    "A cold-set is allowed without a number of attempts and a greatest amount.",
                    "Give both, or allow no cold-set.");
        }
    }

    private static boolean joinsMetal(OperationSheet operation) {
        return operation.irreversible() && operation.steps().stream().anyMatch(step -> "FILLER".equals(step.lotKind()));
    }

    private static int first(List<OperationSheet> all, Predicate<OperationSheet> wanted) {
        return IntStream.range(0, all.size())
                .filter(i -> wanted.test(all.get(i)))
                .findFirst()
                .orElse(-1);
    }

    private static int last(List<OperationSheet> all, Predicate<OperationSheet> wanted) {
        return IntStream.range(0, all.size())
                .filter(i -> wanted.test(all.get(i)))
                .reduce((earlier, later) -> later)
                .orElse(-1);
    }

    static int words(String text) {
        return (int) text.lines()
                .flatMap(line -> Arrays.stream(line.trim().split("\\s+")))
                .filter(word -> word.matches(".*[\\p{L}\\p{N}].*"))
                .count();
    }
}
