package org.trammel.shop.bench;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.ClockKind;
import org.trammel.shop.routes.ClockSheet;
import org.trammel.shop.routes.OperationSheet;
import org.trammel.shop.routes.Point;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.routes.StepSheet;

/** A route of five operations at stations of a test's own, long enough to fill every sheet. */
final class BenchRoute {

    static final String WELD = "3";
    static final String TABLE = "4";

    private BenchRoute() {}

    /** Wash, weld, align and cold-set, stress relief outside, pack. */
    static RouteSheet route() {
        return new RouteSheet(
                0,
                "BENCH",
                "route of the station sheet",
                "A",
                "AL6061",
                "HARDTAIL",
                List.of(wash(), weld(), align(), relief(), pack()),
                List.of(
                        new ClockSheet(
                                "CLEAN", "cleanliness window", ClockKind.WINDOW, 240, "050", List.of("070"), "test"),
                        new ClockSheet("COLD-SET", "cold-set window", ClockKind.WINDOW, 240, "070", List.of(), "test")),
                List.of());
    }

    private static OperationSheet wash() {
        return new OperationSheet(
                "050",
                "Clean and bag",
                "2",
                Point.NONE,
                List.of(),
                null,
                true,
                false,
                false,
                false,
                null,
                "Gloves from here.",
                List.of(step("Wiped, brushed, bagged", "One way only. New cloth for every tube.")),
                List.of());
    }

    private static OperationSheet weld() {
        return new OperationSheet(
                "070",
                "Weld out",
                WELD,
                Point.NONE,
                List.of(),
                null,
                false,
                false,
                false,
                false,
                2,
                "Eyes and skin covered. Local ventilation rules apply.",
                List.of(
                        step("Down tube to shell", "First side, then the opposite side. Fill the crater."),
                        step("Seat tube to shell", "Under 120 °C before the next node."),
                        step("Down tube to head tube", ""),
                        step("Top tube to head tube", "")),
                List.of());
    }

    private static OperationSheet align() {
        return new OperationSheet(
                "100",
                "Look over and align, A2",
                TABLE,
                Point.HOLD,
                List.of(Signer.SECOND, Signer.QA),
                null,
                false,
                false,
                false,
                false,
                2,
                "Cold-set only before ageing.",
                List.of(step("Set on the table", "Shell on the pins, drive side up.")),
                List.of(
                        read(
                                "100-1",
                                "Twist, head tube to seat tube",
                                "°",
                                3,
                                "0",
                                "-0.30",
                                "0.30",
                                List.of("twist"),
                                true,
                                false,
                                "TWIST",
                                Rule.GUARDED,
                                Reduction.SINGLE,
                                "COLD-SET"),
                        read(
                                "100-2",
                                "Head tube centre offset",
                                "mm",
                                2,
                                "0",
                                "-0.8",
                                "0.8",
                                List.of("mandrel low", "mandrel high"),
                                true,
                                false,
                                "DIAL",
                                Rule.PLAIN,
                                Reduction.MEAN,
                                null),
                        read(
                                "100-3",
                                "Shell width",
                                "mm",
                                2,
                                "73",
                                "-0.10",
                                "0.20",
                                List.of("place 1", "place 2", "place 3", "place 4"),
                                false,
                                false,
                                "CALLIPER",
                                Rule.PLAIN,
                                Reduction.WORST,
                                null),
                        read(
                                "100-4",
                                "Reach, read back",
                                "mm",
                                1,
                                "458.0",
                                "-0.3",
                                "0.3",
                                List.of("reach"),
                                false,
                                true,
                                "CALLIPER",
                                Rule.PLAIN,
                                Reduction.SINGLE,
                                null)));
    }

    private static OperationSheet relief() {
        return new OperationSheet(
                "105",
                "Stress relief",
                "5",
                Point.WITNESS,
                List.of(Signer.SECOND),
                null,
                false,
                true,
                false,
                false,
                null,
                "",
                List.of(step("Relieved", "By the certificate of whoever runs the oven.")),
                List.of());
    }

    private static OperationSheet pack() {
        return new OperationSheet(
                "200",
                "Pack",
                "9",
                Point.NONE,
                List.of(),
                null,
                false,
                false,
                false,
                false,
                null,
                "",
                List.of(step("Packed, serial against the address", "")),
                List.of());
    }

    private static StepSheet step(String text, String instruction) {
        return new StepSheet(text, instruction, false, false, null, null, null);
    }

    private static CharacteristicSheet read(
            String code,
            String name,
            String unit,
            int decimals,
            String nominal,
            String lower,
            String upper,
            List<String> points,
            boolean sided,
            boolean blind,
            String gauge,
            Rule rule,
            Reduction reduction,
            @Nullable String clock) {
        return new CharacteristicSheet(
                code,
                name,
                unit,
                decimals,
                false,
                new BigDecimal(nominal),
                new BigDecimal(lower),
                new BigDecimal(upper),
                gauge,
                points,
                reduction,
                rule,
                List.of(Signer.WORKER),
                sided,
                blind,
                blind,
                true,
                clock,
                clock == null ? 0 : 2,
                null,
                clock == null ? null : new BigDecimal("1.0"),
                "test");
    }
}
