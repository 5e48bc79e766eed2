package org.trammel.shop.outside;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

/** Routes of frames that are written in bulk. */
public final class WrittenRoutes {

    private WrittenRoutes() {}

    /** Without gates: the first operation is ticked for two frames together, then steps and readings in turn. */
    public static RouteSheet forKills() {
        return route(
                "KILLS",
                List.of(
                        operation("010", "Blast", "1", true, 3, 0, null),
                        operation("020", "Weld out", "1", false, 6, 2, null),
                        operation("030", "Look over", "1", false, 4, 3, null)),
                List.of());
    }

    /** A short history: ten operations at the nine stations, some with a gate, and clocks between them. */
    public static RouteSheet forHistory() {
        List<OperationSheet> operations = new ArrayList<>();
        for (int i = 1; i <= 10; i++) {
            operations.add(operation(
                    String.format(Locale.ROOT, "%02d0", i),
                    "Operation of many words, number " + i,
                    String.valueOf((i - 1) % 9 + 1),
                    false,
                    4,
                    2,
                    i % 3 == 0 ? Signer.SECOND : null));
        }
        return route(
                "HISTORY",
                operations,
                List.of(
                        new ClockSheet("CLEAN", "Clean to weld", ClockKind.WINDOW, 480, "020", List.of("030"), "test"),
                        new ClockSheet("AGE", "Natural ageing", ClockKind.WAIT, 5, "040", List.of("050"), "test")));
    }

    /**
     * An operation that is all readings, and one after it. What is read is the nominal: in the middle of its limits of
     * 0 ± 0.3, but for the last, where its own is near the lower of them.
     */
    public static RouteSheet forReadings(int readings, BigDecimal last) {
        OperationSheet all = operation("080", "Measure", "1", false, 0, readings, null);
        List<CharacteristicSheet> toRead = new ArrayList<>(all.characteristics());
        CharacteristicSheet end = toRead.remove(readings - 1);
        toRead.add(characteristic(
                end.code(),
                end.name(),
                last,
                new BigDecimal("-0.3").subtract(last),
                new BigDecimal("0.3").subtract(last)));
        OperationSheet measured = new OperationSheet(
                all.code(),
                all.name(),
                all.station(),
                all.point(),
                all.signers(),
                all.qualification(),
                all.together(),
                all.outside(),
                all.irreversible(),
                all.joins(),
                all.repeatLimit(),
                all.caution(),
                all.steps(),
                toRead);
        return route("READINGS", List.of(measured, operation("090", "Pack", "1", false, 1, 0, null)), List.of());
    }

    /** Nothing but steps, four to an operation, all at the last station: for acts that are timed. */
    public static RouteSheet forTicks() {
        List<OperationSheet> operations = new ArrayList<>();
        for (int i = 1; i <= 11; i++) {
            operations.add(
                    operation(String.format(Locale.ROOT, "%02d0", i), "Operation number " + i, "9", false, 4, 0, null));
        }
        return route("TICKS", operations, List.of());
    }

    private static RouteSheet route(String code, List<OperationSheet> operations, List<ClockSheet> clocks) {
        return new RouteSheet(
                0, code, "Route of frames in bulk", "A", "AL6061", "HARDTAIL", operations, clocks, List.of());
    }

    private static OperationSheet operation(
            String code,
            String name,
            String station,
            boolean together,
            int steps,
            int characteristics,
            @Nullable Signer signer) {
        List<StepSheet> toTick = new ArrayList<>();
        for (int i = 1; i <= steps; i++) {
            toTick.add(new StepSheet(
                    "Step " + i + " of " + name,
                    "First side, then the opposite side. Fill the crater.",
                    signer != null && i == steps,
                    false,
                    null,
                    null,
                    null));
        }
        List<CharacteristicSheet> toRead = new ArrayList<>();
        for (int i = 1; i <= characteristics; i++) {
            toRead.add(characteristic(
                    code + "-" + i,
                    "Offset " + i + " of " + name,
                    BigDecimal.ZERO,
                    new BigDecimal("-0.3"),
                    new BigDecimal("0.3")));
        }
        return new OperationSheet(
                code,
                name,
                station,
                signer == null ? Point.NONE : Point.HOLD,
                signer == null ? List.of() : List.of(signer),
                null,
                together,
                false,
                false,
                false,
                null,
                "Eyes and skin covered. Local ventilation rules apply.",
                toTick,
                toRead);
    }

    private static CharacteristicSheet characteristic(
            String code, String name, BigDecimal nominal, BigDecimal lower, BigDecimal upper) {
        return new CharacteristicSheet(
                code,
                name,
                WrittenShop.UNIT,
                2,
                false,
                nominal,
                lower,
                upper,
                WrittenShop.KIND,
                List.of("at the seat"),
                Reduction.SINGLE,
                Rule.GUARDED,
                List.of(Signer.WORKER),
                true,
                false,
                false,
                true,
                null,
                0,
                null,
                null,
                "test");
    }
}
