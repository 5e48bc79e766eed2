package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.ExpectedMass;
import org.trammel.calc.geometry.MassCause;
import org.trammel.calc.geometry.MassComparison;

/** What a frame should weigh, and how a weighed one compares. */
record MassAnswer(
        double massKg,

        @Schema(description = "standard uncertainty of that")
        double uKg,

        List<Line> lines,

        @Schema(description = "where a weighed mass was given") @Nullable
        Comparison comparison) {

    private static final int NEAREST = 20;

    static MassAnswer of(ExpectedMass expected, @Nullable MassComparison comparison) {
        return new MassAnswer(
                expected.mass_kg(),
                expected.u_kg(),
                expected.lines().stream()
                        .map(line -> new Line(line.part().name(), line.mass_kg(), line.u_kg()))
                        .toList(),
                comparison == null ? null : Comparison.of(comparison));
    }

    record Line(String name, double massKg, double uKg) {}

    record Comparison(
            @Schema(description = "weighed less expected") double differenceKg,

            @Schema(description = "standard uncertainty of the difference")
            double uKg,

            double differenceInU,

            @Schema(description = "beyond the limit: to be looked at before the frame goes on")
            boolean flagged,

            @Schema(description = "single causes that come nearest, at most 20; places to look, no findings")
            List<Cause> causes) {

        static Comparison of(MassComparison comparison) {
            return new Comparison(
                    comparison.difference_kg(),
                    comparison.u_kg(),
                    comparison.differenceInU(),
                    comparison.flagged(),
                    comparison.causes().stream().limit(NEAREST).map(Cause::of).toList());
        }
    }

    enum CauseKind {
        OTHER_WALL,
        MISSING,
        DOUBLED,
        OTHER_WELD
    }

    record Cause(
            CauseKind kind,
            String part,

            @Schema(description = "OTHER_WALL: the wall it would have") @Nullable
            Double wallMm,

            @Schema(description = "OTHER_WALL: how many of the tubes alike") @Nullable
            Integer count,

            @Schema(description = "OTHER_WELD: as much as would be there") @Nullable
            Double weldKg,

            double changeKg,
            double leftOverKg,

            @Schema(description = "whether what is left over lies within the limit")
            boolean explains) {

        static Cause of(MassComparison.RankedCause ranked) {
            MassCause cause = ranked.cause();
            if (cause instanceof MassCause.OtherWall wall) {
                return of(CauseKind.OTHER_WALL, wall.tube().name(), wall.wall_mm(), wall.count(), null, ranked);
            }
            if (cause instanceof MassCause.Missing missing) {
                return of(CauseKind.MISSING, missing.pieces().name(), null, null, null, ranked);
            }
            if (cause instanceof MassCause.Doubled doubled) {
                return of(CauseKind.DOUBLED, doubled.pieces().name(), null, null, null, ranked);
            }
            MassCause.OtherWeld weld = (MassCause.OtherWeld) cause;
            return of(CauseKind.OTHER_WELD, weld.weld().name(), null, null, weld.mass_kg(), ranked);
        }

        private static Cause of(
                CauseKind kind,
                String part,
                @Nullable Double wallMm,
                @Nullable Integer count,
                @Nullable Double weldKg,
                MassComparison.RankedCause ranked) {
            return new Cause(
                    kind, part, wallMm, count, weldKg, ranked.change_kg(), ranked.leftOver_kg(), ranked.explains());
        }
    }
}
