package org.trammel.calc.metrology;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * How a deviation is judged; see {@link ConformityDecision}.
 *
 * @param limits in mm, or degrees for an angle
 * @param rule the characteristic asks for
 * @param factor guard band in standard uncertainties, such as 1.65
 * @param resolution step in which values are stored, such as 0.001
 * @param setU standard uncertainty that the shop has set for this characteristic, in the unit of the limits; null to
 *     judge by the budget of the measurement
 */
public record Judging(
        Limits limits,
        DecisionRule rule,
        BigDecimal factor,
        BigDecimal resolution,
        @Nullable BigDecimal setU) {

    public Judging {
        if (factor.signum() <= 0 || resolution.signum() <= 0) {
            throw new IllegalArgumentException("Factor and resolution are greater than zero");
        }
    }

    /** The usual: guarded, 1.65 u, thousandths, by the budget. */
    public static Judging guarded(Limits limits) {
        return new Judging(limits, DecisionRule.GUARDED, new BigDecimal("1.65"), new BigDecimal("0.001"), null);
    }

    /** Judges what was measured. */
    public ConformityDecision judge(MeasuredDeviation measured) {
        return judge(measured.judgedValue(), setU == null ? measured.judgedUncertainty() : setU);
    }

    /** Judges a value by an uncertainty, whatever is set. */
    public ConformityDecision judge(BigDecimal value, @Nullable BigDecimal u) {
        return ConformityDecision.of(value, limits, rule, u, factor, resolution);
    }
}
