package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.assembly.ComponentKind;
import org.trammel.shop.assembly.NewComponent;
import org.trammel.shop.assembly.NewFastener;

/** The components of the invented workshop with invented sheets. Their bands lie within those that makers print for such parts. */
final class DemoComponents {

    private DemoComponents() {}

    /**
     * A component.
     *
     * @param place where it is fitted, empty where the frame has one of it
     */
    record Sheet(String code, String place, NewComponent content) {

        Sheet(ComponentKind kind, String code, String what, String place, Bolted... fasteners) {
            this(
                    code,
                    place,
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
                                    .toList()));
        }
    }

    /** Those of the hardtail in titanium, in the order in which they are torqued. */
    static List<Sheet> all() {
        List<Sheet> all = new ArrayList<>();
        all.add(new Sheet(
                ComponentKind.SHELL_CUPS,
                "KO-CUPS",
                "Threaded cups, shell 73",
                "",
                bolt("drive cup", "180-4", 35, 42, 50).greased().leftHand(),
                bolt("non-drive cup", "180-4", 35, 42, 50).greased()));
        all.add(new Sheet(
                ComponentKind.CRANKS,
                "KO-CRANK",
                "Cranks 170",
                "",
                bolt("drive arm", "180-5", 40, 47, 54),
                bolt("non-drive arm", "180-5", 40, 47, 54)));
        for (String place : List.of("front", "rear")) {
            all.add(new Sheet(
                    ComponentKind.AXLE,
                    "KO-AXLE-" + place,
                    "Through axle, " + place,
                    place,
                    bolt("axle", "180-8", 10, 11.5, 13).greased().afterRide()));
        }
        all.add(new Sheet(
                ComponentKind.DERAILLEUR,
                "KO-DER",
                "Rear derailleur",
                "",
                bolt("hanger bolt", "180-9", 8, 9, 10),
                bolt("cable bolt", null, 6, 7, 8)));
        all.add(new Sheet(
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
                        .afterRide()));
        all.add(new Sheet(
                ComponentKind.SEAT_CLAMP,
                "KO-CLAMP",
                "Seat clamp 34,9",
                "",
                bolt("clamp bolt", "180-3", 5, 5.5, 6).thread(5).clamps()));
        for (String place : List.of("front", "rear")) {
            all.add(new Sheet(
                    ComponentKind.ROTOR,
                    "KO-ROTOR-" + place,
                    "Brake rotor, " + place,
                    place,
                    bolt("rotor bolts", "180-7", 5.5, 6, 6.5)
                            .bolts(6, true)
                            .thread(5)
                            .afterRide()));
        }
        for (String place : List.of("front", "rear")) {
            all.add(new Sheet(
                    ComponentKind.BRAKE,
                    "KO-CALIPER-" + place,
                    "Brake caliper, " + place,
                    place,
                    bolt("caliper bolts", "180-6", 6, 7, 8)
                            .bolts(2, false)
                            .thread(6)
                            .afterRide()));
        }
        all.add(new Sheet(
                ComponentKind.BRAKE,
                "KO-LEVERS",
                "Brake levers",
                "",
                bolt("drive lever clamp", null, 3, 4, 5).bolts(2, false),
                bolt("non-drive lever clamp", null, 3, 4, 5).bolts(2, false)));
        all.add(new Sheet(
                ComponentKind.PEDALS,
                "KO-PEDALS",
                "Pedals",
                "",
                bolt("drive pedal", "180-10", 31, 35, 39).greased(),
                bolt("non-drive pedal", "180-10", 31, 35, 39).greased().leftHand()));
        all.add(new Sheet(
                ComponentKind.SADDLE,
                "KO-SADDLE",
                "Clamp of the saddle",
                "",
                bolt("clamp bolts", "180-11", 8, 10, 12).bolts(2, false).afterRide()));
        all.add(new Sheet(ComponentKind.SHIFTER, "KO-SHIFT", "Shifter", "", bolt("clamp", null, 3, 4, 5)));
        all.add(new Sheet(
                ComponentKind.OTHER,
                "KO-CAGE",
                "Bottle cage",
                "",
                bolt("cage bolts", null, 2, 2.5, 3).bolts(2, false)));
        return all;
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
