package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.assembly.BuildRulesBook;
import org.trammel.shop.assembly.ComponentKind;
import org.trammel.shop.assembly.Components;
import org.trammel.shop.assembly.FrameComponents;
import org.trammel.shop.assembly.NewBuildRules;
import org.trammel.shop.assembly.NewComponent;
import org.trammel.shop.assembly.NewFastener;
import org.trammel.shop.assembly.OffsetShares;
import org.trammel.shop.assembly.TorqueSheet;
import org.trammel.shop.assembly.TorqueSheets;
import org.trammel.shop.assembly.Torques;

/**
 * The components of the hardtail in titanium, with invented sheets, and its first nine torques of twenty-two; next is the face
 * plate of its stem. The bands lie within those that makers print for such parts.
 */
@Component
@Profile("demo")
class DemoTorques {

    /** Fasteners that are whole when the day begins. */
    private static final int DONE = 9;

    private static final String FITTER = "DO";

    private final DemoActs acts;
    private final DemoClock clock;
    private final Components components;
    private final FrameComponents frames;
    private final Torques torques;
    private final TorqueSheets sheets;
    private final BuildRulesBook rules;

    DemoTorques(
            DemoActs acts,
            DemoClock clock,
            Components components,
            FrameComponents frames,
            Torques torques,
            TorqueSheets sheets,
            BuildRulesBook rules) {
        this.acts = acts;
        this.clock = clock;
        this.components = components;
        this.frames = frames;
        this.torques = torques;
        this.sheets = sheets;
        this.rules = rules;
    }

    /** What joining, final check and packing ask for from the evening before on. */
    private void rules() {
        rules.putInForce(
                acts.by("TR"),
                new NewBuildRules(
                        List.of("170"),
                        List.of("170", "180"),
                        List.of("190"),
                        List.of("200"),
                        new OffsetShares(
                                new BigDecimal("0.3"),
                                new BigDecimal("0.3"),
                                new BigDecimal("0.1"),
                                new BigDecimal("0.2")),
                        20,
                        new BigDecimal("25"),
                        NewBuildRules.items(
                                "* | manual, weight limit, tightness label\nSE | bell\nSE | reflectors front, rear, pedals\nDE | lights front and rear"),
                        "invented procedure of the shop; the law of each country as its QA lead reads it"));
    }

    /** Gives the frame its components and torques as far as it is. */
    void tell(long travellerId, long operationId) {
        rules();
        give(
                travellerId,
                ComponentKind.SHELL_CUPS,
                "KO-CUPS",
                "Threaded cups, shell 73",
                "",
                bolt("drive cup", "180-4", 35, 42, 50).greased().leftHand(),
                bolt("non-drive cup", "180-4", 35, 42, 50).greased());
        give(
                travellerId,
                ComponentKind.CRANKS,
                "KO-CRANK",
                "Cranks 170",
                "",
                bolt("drive arm", "180-5", 40, 47, 54),
                bolt("non-drive arm", "180-5", 40, 47, 54));
        for (String place : List.of("front", "rear")) {
            give(
                    travellerId,
                    ComponentKind.AXLE,
                    "KO-AXLE-" + place,
                    "Through axle, " + place,
                    place,
                    bolt("axle", "180-8", 10, 11.5, 13).greased().afterRide());
        }
        give(
                travellerId,
                ComponentKind.DERAILLEUR,
                "KO-DER",
                "Rear derailleur",
                "",
                bolt("hanger bolt", "180-9", 8, 9, 10),
                bolt("cable bolt", null, 6, 7, 8));
        give(
                travellerId,
                ComponentKind.STEM,
                "KO-STEM",
                "Stem 50 mm",
                "",
                bolt("steerer bolts", "180-1", 4.5, 5, 5.5)
                        .bolts(2, false)
                        .thread(5)
                        .afterRide(),
                bolt("face plate", "180-2", 4.5, 5, 5.5)
                        .bolts(4, true)
                        .thread(5)
                        .afterRide());
        give(
                travellerId,
                ComponentKind.SEAT_CLAMP,
                "KO-CLAMP",
                "Seat clamp 34,9",
                "",
                bolt("clamp bolt", "180-3", 5, 5.5, 6).thread(5).clamps());
        for (String place : List.of("front", "rear")) {
            give(
                    travellerId,
                    ComponentKind.ROTOR,
                    "KO-ROTOR-" + place,
                    "Brake rotor, " + place,
                    place,
                    bolt("rotor bolts", "180-7", 5.5, 6, 6.5)
                            .bolts(6, true)
                            .thread(5)
                            .afterRide());
        }
        for (String place : List.of("front", "rear")) {
            give(
                    travellerId,
                    ComponentKind.BRAKE,
                    "KO-CALIPER-" + place,
                    "Brake caliper, " + place,
                    place,
                    bolt("caliper bolts", "180-6", 6, 7, 8)
                            .bolts(2, false)
                            .thread(6)
                            .afterRide());
        }
        give(
                travellerId,
                ComponentKind.BRAKE,
                "KO-LEVERS",
                "Brake levers",
                "",
                bolt("drive lever clamp", null, 3, 4, 5).bolts(2, false),
                bolt("non-drive lever clamp", null, 3, 4, 5).bolts(2, false));
        give(
                travellerId,
                ComponentKind.PEDALS,
                "KO-PEDALS",
                "Pedals",
                "",
                bolt("drive pedal", "180-10", 31, 35, 39).greased(),
                bolt("non-drive pedal", "180-10", 31, 35, 39).greased().leftHand());
        give(
                travellerId,
                ComponentKind.SADDLE,
                "KO-SADDLE",
                "Clamp of the saddle",
                "",
                bolt("clamp bolts", "180-11", 8, 10, 12).bolts(2, false).afterRide());
        give(travellerId, ComponentKind.SHIFTER, "KO-SHIFT", "Shifter", "", bolt("clamp", null, 3, 4, 5));
        give(
                travellerId,
                ComponentKind.OTHER,
                "KO-CAGE",
                "Bottle cage",
                "",
                bolt("cage bolts", null, 2, 2.5, 3).bolts(2, false));
        tighten(operationId);
    }

    private void give(
            long travellerId, ComponentKind kind, String code, String what, String place, Bolted... fasteners) {
        clock.pass(Duration.ofSeconds(20));
        String letter = components
                .draft(
                        acts.by(FITTER),
                        code,
                        new NewComponent(
                                kind,
                                what,
                                "180",
                                "190",
                                false,
                                null,
                                "invented sheet of the component",
                                "2026-01",
                                List.of(fasteners).stream()
                                        .map(bolted -> bolted.fastener(place.isEmpty()))
                                        .toList()))
                .letter();
        components.putInForce(acts.by("TR"), code, letter);
        frames.give(acts.by("ME"), travellerId, code, place);
    }

    private void tighten(long operationId) {
        TorqueSheet sheet = sheets.of(operationId);
        for (TorqueSheet.Line line : sheet.lines().subList(0, DONE)) {
            TorqueSheet.Line now = line;
            while (now.next() != null) {
                clock.pass(Duration.ofSeconds(15));
                TorqueSheet.Next next = Objects.requireNonNull(now.next());
                sheet = torques.tighten(
                        acts.by(FITTER),
                        operationId,
                        new Torques.Tightened(
                                now.part().id(),
                                now.fastener().id(),
                                now.round(),
                                next.pass(),
                                next.bolt(),
                                next.set_Nm().compareTo(BigDecimal.valueOf(14)) > 0 ? "TW-2" : "TW-1",
                                null,
                                null));
                now = same(sheet, now);
            }
        }
        clock.pass(Duration.ofMinutes(2));
        torques.witness(
                acts.by(FITTER),
                operationId,
                acts.id("JA"),
                sheet.toWitness().stream()
                        .map(line -> new Torques.Seen(
                                line.part().id(), line.fastener().id()))
                        .toList());
    }

    private static TorqueSheet.Line same(TorqueSheet sheet, TorqueSheet.Line line) {
        return sheet.lines().stream()
                .filter(one -> one.part().id() == line.part().id()
                        && one.fastener().id() == line.fastener().id())
                .findFirst()
                .orElseThrow();
    }

    private static Bolted bolt(String name, @Nullable String answers, double least, double target, double most) {
        return new Bolted(name, answers, least, target, most, 1, false, false, false, false, null, null);
    }

    /** A fastener as it is told. */
    private record Bolted(
            String name,
            @Nullable String answers,
            double least_Nm,
            double target_Nm,
            double most_Nm,
            int count,
            boolean crosswise,
            boolean grease,
            boolean left,
            boolean ride,
            @Nullable Integer thread_mm,
            @Nullable ComponentKind clamped) {

        Bolted bolts(int many, boolean cross) {
            return new Bolted(
                    name, answers, least_Nm, target_Nm, most_Nm, many, cross, grease, left, ride, thread_mm, clamped);
        }

        Bolted greased() {
            return new Bolted(
                    name, answers, least_Nm, target_Nm, most_Nm, count, crosswise, true, left, ride, thread_mm,
                    clamped);
        }

        Bolted leftHand() {
            return new Bolted(
                    name, answers, least_Nm, target_Nm, most_Nm, count, crosswise, grease, true, ride, thread_mm,
                    clamped);
        }

        Bolted afterRide() {
            return new Bolted(
                    name, answers, least_Nm, target_Nm, most_Nm, count, crosswise, grease, left, true, thread_mm,
                    clamped);
        }

        Bolted thread(int mm) {
            return new Bolted(
                    name, answers, least_Nm, target_Nm, most_Nm, count, crosswise, grease, left, ride, mm, clamped);
        }

        Bolted clamps() {
            return new Bolted(
                    name,
                    answers,
                    least_Nm,
                    target_Nm,
                    most_Nm,
                    count,
                    crosswise,
                    grease,
                    left,
                    ride,
                    thread_mm,
                    ComponentKind.SEATPOST);
        }

        /** @param everyPlace whether there is but one such component, which then has all of what the route asks for */
        NewFastener fastener(boolean everyPlace) {
            return new NewFastener(
                    name,
                    count,
                    BigDecimal.valueOf(least_Nm),
                    BigDecimal.valueOf(target_Nm),
                    BigDecimal.valueOf(most_Nm),
                    grease,
                    null,
                    thread_mm == null ? null : BigDecimal.valueOf(thread_mm),
                    crosswise,
                    crosswise ? List.of(60, 100) : List.of(),
                    left,
                    null,
                    ride,
                    clamped,
                    answers,
                    everyPlace);
        }
    }
}
