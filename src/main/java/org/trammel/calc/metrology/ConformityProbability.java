package org.trammel.calc.metrology;

import java.math.BigDecimal;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.jspecify.annotations.Nullable;

/**
 * Probability that the true value lies within the limits, given one reading.
 *
 * <pre>p = Φ((UL − y) / u) − Φ((LL − y) / u)</pre>
 *
 * with y the reading, u its standard uncertainty, Φ the standard normal distribution; the term of an open side is 1 or
 * 0. Valid where the knowledge after the reading is normal about it, which it is with little knowledge before it; a
 * process known to be good raises p.
 *
 * <p>Source: JCGM 106:2012, 7.2 to 7.4. Accuracy: that of the distribution in double precision, about 1e-14.
 */
public sealed interface ConformityProbability {

    /**
     * The probability is known.
     *
     * @param probability 0 to 1
     */
    record Determined(double probability) implements ConformityProbability {

        /** Whole percent, never 0 or 100 while there is a doubt: "29 %", "under 1 %", "over 99 %". */
        public String words() {
            if (probability < 0.01) {
                return "under 1 %";
            }
            return probability > 0.99 ? "over 99 %" : Math.round(probability * 100) + " %";
        }
    }

    /** Without an uncertainty there is no probability. */
    record NotDeterminable(String reason) implements ConformityProbability {}

    /**
     * Computes the probability.
     *
     * @param value the reading y
     * @param u its standard uncertainty in the same unit, or null if not known
     */
    static ConformityProbability of(BigDecimal value, Limits limits, @Nullable BigDecimal u) {
        if (u == null || u.signum() <= 0) {
            return new NotDeterminable("The measurement uncertainty is not known.");
        }
        NormalDistribution standard = new NormalDistribution();
        double below = limits.lower() == null
                ? Double.NEGATIVE_INFINITY
                : limits.lower().subtract(value).doubleValue() / u.doubleValue();
        double above = limits.upper() == null
                ? Double.POSITIVE_INFINITY
                : limits.upper().subtract(value).doubleValue() / u.doubleValue();
        // Far out on the upper side both terms are near 1 and their difference loses its digits; mirrored it keeps
        // them.
        double p = below > 0
                ? standard.cumulativeProbability(-below) - standard.cumulativeProbability(-above)
                : standard.cumulativeProbability(above) - standard.cumulativeProbability(below);
        return new Determined(Math.min(1, Math.max(0, p)));
    }
}
