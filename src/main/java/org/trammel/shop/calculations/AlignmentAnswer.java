package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.metrology.Alignment;
import org.trammel.calc.metrology.Budget;
import org.trammel.calc.metrology.DatumFit;
import org.trammel.calc.metrology.Deviation;
import org.trammel.calc.metrology.ErrorKind;
import org.trammel.calc.metrology.MeasuredDeviation;

/** Deviations of a frame in mm or degrees, plus to the drive side. */
record AlignmentAnswer(
        @Schema(description = "how well the shell's faces give the datum; null where they were not read") @Nullable
        Fit datum,

        List<Told> deviations,

        @Schema(description = "the others, each with what it needs")
        List<Missing> missing,

        @Schema(description = "of deviations that share more than a hundredth")
        List<Together> correlations) {

    record Fit(double widthMm, double residualMm, double rmsMm, String farthest, double withinMm, boolean clean) {}

    record Told(
            Deviation what,
            String unit,
            BigDecimal value,

            @Schema(description = "standard uncertainty with all that readings share")
            BigDecimal u,

            @Schema(description = "as if nothing were shared")
            double uIndependent,

            List<Line> budget) {}

    record Line(
            ErrorKind kind,
            double u,
            double uIndependent,
            @Schema(description = "of u squared, 0 to 1") double share) {}

    record Missing(Deviation what, String why) {}

    record Together(Deviation one, Deviation other, double r) {}

    static AlignmentAnswer of(Alignment alignment) {
        DatumFit fit = alignment.datum();
        return new AlignmentAnswer(
                fit == null
                        ? null
                        : new Fit(
                                fit.width_mm(),
                                fit.residual_mm(),
                                fit.rms_mm(),
                                fit.farthest(),
                                fit.within_mm(),
                                fit.clean()),
                alignment.deviations().stream().map(AlignmentAnswer::told).toList(),
                alignment.missing().stream()
                        .map(one -> new Missing(one.what(), one.gap().words()))
                        .toList(),
                alignment.correlations().stream()
                        .map(one -> new Together(one.one(), one.other(), one.r()))
                        .toList());
    }

    private static Told told(MeasuredDeviation measured) {
        Budget budget = measured.statedBudget();
        return new Told(
                measured.what(),
                measured.what().unit(),
                measured.judgedValue(),
                measured.judgedUncertainty(),
                budget.uIndependent(),
                budget.lines().stream()
                        .map(line -> new Line(line.kind(), line.u(), line.uIndependent(), line.share()))
                        .toList());
    }
}
