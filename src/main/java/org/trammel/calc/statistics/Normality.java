package org.trammel.calc.statistics;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.trammel.calc.units.Answer;

/**
 * Whether readings speak against a normal distribution: the test of Anderson and Darling with mean and deviation taken
 * from the readings.
 *
 * <pre>
 * A² = −n − Σ (2i − 1)(ln Φ(zᵢ) + ln(1 − Φ(zₙ₊₁₋ᵢ)))/n,   z = (x − x̄)/s in order
 * A* = A² (1 + 0.75/n + 2.25/n²)
 * p  = exp(1.2937 − 5.709 A* + 0.0186 A*²)      A* ≥ 0.6
 *      exp(0.9177 − 4.279 A* − 1.38 A*²)        0.34 ≤ A* < 0.6
 *      1 − exp(−8.318 + 42.796 A* − 59.938 A*²) 0.2 ≤ A* < 0.34
 *      1 − exp(−13.436 + 101.14 A* − 223.73 A*²)        A* < 0.2
 * </pre>
 *
 * Validity: eight readings or more, each to finer than a fifth or so of s (many ties speak against any distribution). A
 * large p proves nothing: few readings hide much.
 *
 * <p>Source: R. B. D'Agostino, M. A. Stephens (eds.), Goodness-of-Fit Techniques (1986), table 4.9 (as statistical
 * software documents it).
 *
 * @param statistic A*
 * @param probability p of a statistic as large if the readings are normal, 0 to 1
 */
public record Normality(double statistic, double probability) {

    /** Fewer than these the test is not made for. */
    public static final int FEWEST = 8;

    /** Beyond it the first formula turns up again. */
    private static final double FORMULA_ENDS = 13;

    /** Tests readings. */
    public static Answer<Normality> of(List<Double> readings) {
        Asked asked = new Asked();
        asked.numbers("readings", "Reading", readings);
        asked.holds(
                readings.size() >= FEWEST,
                "readings",
                "There are " + readings.size() + " readings: from " + FEWEST
                        + " on can be asked whether they are spread as a normal distribution is.");
        if (!asked.met()) {
            return asked.refusal();
        }
        double[] x = Summary.numbers(readings);
        Summary of = Summary.ofNumbers(x);
        if (of.deviation() == 0) {
            return Answer.none("readings", "All readings are the same: they are spread like nothing.");
        }
        Arrays.sort(x);
        NormalDistribution normal = new NormalDistribution(of.mean(), of.deviation());
        int n = x.length;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double below = Math.max(Double.MIN_NORMAL, normal.cumulativeProbability(x[i]));
            double above = Math.max(Double.MIN_NORMAL, normal.cumulativeProbability(2 * of.mean() - x[n - 1 - i]));
            sum += (2 * i + 1) * (Math.log(below) + Math.log(above));
        }
        double statistic = (-n - sum / n) * (1 + 0.75 / n + 2.25 / n / n);
        return Answer.of(new Normality(statistic, probability(statistic)));
    }

    static double probability(double statistic) {
        double a = Math.min(statistic, FORMULA_ENDS);
        if (a >= 0.6) {
            return Math.exp(1.2937 - 5.709 * a + 0.0186 * a * a);
        }
        if (a >= 0.34) {
            return Math.exp(0.9177 - 4.279 * a - 1.38 * a * a);
        }
        return a >= 0.2
                ? 1 - Math.exp(-8.318 + 42.796 * a - 59.938 * a * a)
                : 1 - Math.exp(-13.436 + 101.14 * a - 223.73 * a * a);
    }

    /** A sentence, at 5 %. */
    public String words() {
        return probability < 1 - Interval.LEVEL
                ? "The readings are not spread as a normal distribution is: indices that take them so mislead."
                : "Nothing speaks against a normal distribution.";
    }
}
