package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.GaugeStudy.Ranges;
import org.trammel.calc.units.Answer;

/**
 * A gauge study by average and range.
 *
 * <pre>
 * repeatability    R̄/d₂*(r, p a)         reproducibility  √( (X̄ diff/d₂*(a, 1))² − repeatability²/(p r) )
 * parts            Rₚ/d₂*(p, 1)          d₂*(m, g) = √(d₂² + d₃²/g) for g ≤ 15 ranges of m, d₂ for more
 * </pre>
 *
 * R̄ mean range of repeats, X̄ diff between the largest and the smallest mean of an appraiser, Rₚ the same of parts; a
 * difference below 0 under the root counts as 0. 1/d₂* are the K₁, K₂, K₃ of printed forms. Validity: as for ranges, up
 * to 25 parts, appraisers, trials.
 *
 * <p>Source: AIAG, Measurement Systems Analysis, 4th edition (2010), chapter III B and appendix C; d₂* as A. J. Duncan,
 * Quality Control and Industrial Statistics, table D3, has it (from memory).
 */
final class StudyByRanges {

    private static final int MANY_RANGES = 15;

    private StudyByRanges() {}

    static Answer<GaugeStudy> of(Crossed crossed, @Nullable Double tolerance) {
        int p = crossed.parts().size();
        int a = crossed.appraisers().size();
        int r = crossed.trials();
        Asked asked = new Asked();
        asked.holds(
                Math.max(p, Math.max(a, r)) <= ControlConstants.LARGEST,
                "readings",
                "By ranges up to " + ControlConstants.LARGEST
                        + " parts, appraisers and trials can be studied: take the analysis of variance.");
        if (!asked.met()) {
            return asked.refusal();
        }
        double sum = 0;
        for (int i = 0; i < p; i++) {
            for (int j = 0; j < a; j++) {
                sum += Groups.range(Summary.ofNumbers(crossed.values()[i][j]));
            }
        }
        double mean = sum / p / a;
        double limit = ControlConstants.forSize(r).rangeUpper() * mean;
        double repeatability = mean / expected(r, p * a);
        double appraisers = range(a, crossed::appraiserMean) / expected(a, 1);
        double reproducibility =
                Math.sqrt(Math.max(0, appraisers * appraisers - repeatability * repeatability / p / r));
        double parts = range(p, crossed::partMean) / expected(p, 1);
        return crossed.spread(repeatability)
                .then(there -> there.study(
                        repeatability,
                        reproducibility,
                        parts,
                        tolerance,
                        null,
                        new Ranges(mean, limit, beyond(crossed, limit, mean))));
    }

    private static List<String> beyond(Crossed crossed, double limit, double mean) {
        List<String> beyond = new ArrayList<>();
        for (int j = 0; j < crossed.appraisers().size(); j++) {
            for (int i = 0; i < crossed.parts().size(); i++) {
                double range = Groups.range(Summary.ofNumbers(crossed.values()[i][j]));
                if (range > limit) {
                    beyond.add("Part " + crossed.parts().get(i) + " by "
                            + crossed.appraisers().get(j) + " repeats within " + Written.to(range, mean)
                            + ", more than the " + Written.to(limit, mean)
                            + " that chance explains: measure it again.");
                }
            }
        }
        return beyond;
    }

    private static double range(int count, java.util.function.IntToDoubleFunction mean) {
        Summary summary = Summary.ofNumbers(
                java.util.stream.IntStream.range(0, count).mapToDouble(mean).toArray());
        return Groups.range(summary);
    }

    /** What a mean of g ranges of m readings is in units of σ, so that its square is right. */
    private static double expected(int m, int g) {
        ControlConstants of = ControlConstants.forSize(m);
        return g > MANY_RANGES ? of.d2() : Math.sqrt(of.d2() * of.d2() + of.d3() * of.d3() / g);
    }
}
