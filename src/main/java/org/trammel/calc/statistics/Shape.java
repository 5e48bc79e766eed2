package org.trammel.calc.statistics;

import java.util.Arrays;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.stat.descriptive.rank.Percentile;

/**
 * How readings are taken to be distributed when their outer percentiles are reckoned.
 *
 * <pre>
 * NORMAL      x̄ ∓ 3 s
 * LOG_NORMAL  exp(m ∓ 3 d),  m and d mean and deviation of ln x
 * WEIBULL     b (−ln(1 − p))^(1/k),  largest likelihood:  Σ xᵏ ln x / Σ xᵏ − 1/k = mean of ln x,  b = (mean of xᵏ)^(1/k)
 * AS_READ     ordered reading at place p (n + 1), between two by proportion
 * </pre>
 *
 * p = Φ(−3) = 0.00135, a half, Φ(3). Validity: LOG_NORMAL and WEIBULL for readings above 0, such as run-out or a gap, that
 * cannot fall below it; AS_READ from 740 readings on, below which the outer percentiles lie beyond the readings. The
 * choice is the QA lead's: {@link Normality} helps, and no shape can be told from few readings.
 *
 * <p>Source: N. L. Johnson, S. Kotz, N. Balakrishnan, Continuous Univariate Distributions 1 (1994), chapters 14 and 21
 * (from memory of the chapters); places by p (n + 1): NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.2.
 */
public enum Shape {
    NORMAL,
    LOG_NORMAL,
    WEIBULL,
    AS_READ;

    /** Below these the reading at the place 0.00135 (n + 1) does not exist. */
    public static final int FEWEST_AS_READ = 740;

    /**
     * Percentiles of a shape.
     *
     * @param low 0.135 of a hundred lie below
     * @param median half lie below
     * @param high 0.135 of a hundred lie above; both as far out as 3 σ of a normal distribution
     */
    public record Percentiles(double low, double median, double high) {

        /** Whether both sides have a width. */
        boolean apart() {
            return low < median && median < high;
        }
    }

    /** Φ(−3). */
    private static final double OUTER = 0.0013498980316301;

    /** Whether a shape fits what the readings can be at all. */
    boolean asked(Asked asked, double[] readings) {
        if (this == AS_READ) {
            return asked.holds(
                    readings.length >= FEWEST_AS_READ,
                    "shape",
                    "The outer percentiles can be read off " + FEWEST_AS_READ + " readings or more, there are "
                            + readings.length + ": choose a shape instead.");
        }
        return this == NORMAL
                || asked.holds(
                        Arrays.stream(readings).allMatch(each -> each > 0),
                        "shape",
                        "A reading is 0 or below, where this shape has none: choose another shape.");
    }

    /** Percentiles of the shape laid through readings that it was asked of. */
    Percentiles percentiles(double[] readings) {
        return switch (this) {
            case NORMAL -> normal(readings);
            case LOG_NORMAL -> {
                Percentiles of = normal(Arrays.stream(readings).map(Math::log).toArray());
                yield new Percentiles(Math.exp(of.low()), Math.exp(of.median()), Math.exp(of.high()));
            }
            case WEIBULL -> {
                double k = exponent(readings);
                double b = scale(readings, k);
                yield new Percentiles(
                        b * Math.pow(-Math.log1p(-OUTER), 1 / k),
                        b * Math.pow(Math.log(2), 1 / k),
                        b * Math.pow(-Math.log(OUTER), 1 / k));
            }
            case AS_READ -> {
                Percentile places = new Percentile().withEstimationType(Percentile.EstimationType.R_6);
                places.setData(readings);
                yield new Percentiles(
                        places.evaluate(100 * OUTER), places.evaluate(50), places.evaluate(100 * (1 - OUTER)));
            }
        };
    }

    private static Percentiles normal(double[] readings) {
        Summary of = Summary.ofNumbers(readings);
        return new Percentiles(of.mean() - 3 * of.deviation(), of.mean(), of.mean() + 3 * of.deviation());
    }

    /** The left side of the likelihood's condition rises with k from far below 0 to above it. */
    private static double exponent(double[] readings) {
        double largest = Arrays.stream(readings).max().orElse(1);
        double[] logs =
                Arrays.stream(readings).map(each -> Math.log(each / largest)).toArray();
        double mean = Arrays.stream(logs).average().orElse(0);
        double low = 1;
        while (condition(logs, mean, low) > 0) {
            low /= 2;
        }
        double high = 2 * low;
        while (condition(logs, mean, high) < 0) {
            high *= 2;
        }
        return new BracketingNthOrderBrentSolver(1e-13, 1e-13, 5).solve(200, k -> condition(logs, mean, k), low, high);
    }

    private static double condition(double[] logs, double mean, double k) {
        double weighted = 0;
        double weights = 0;
        for (double log : logs) {
            double weight = Math.exp(k * log);
            weighted += weight * log;
            weights += weight;
        }
        return weighted / weights - 1 / k - mean;
    }

    private static double scale(double[] readings, double k) {
        double largest = Arrays.stream(readings).max().orElse(1);
        double mean = Arrays.stream(readings)
                .map(each -> Math.pow(each / largest, k))
                .average()
                .orElse(1);
        return largest * Math.pow(mean, 1 / k);
    }
}
