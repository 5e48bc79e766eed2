package org.trammel.calc.statistics;

/**
 * Between which figures something lies at 95 %.
 *
 * @param low may be below what is possible where the formula says so
 * @param high not below {@code low}
 */
public record Interval(double low, double high) {

    /** Share of intervals, made so time and again, that hold what they are about. */
    public static final double LEVEL = 0.95;

    static final double TAIL = (1 - LEVEL) / 2;

    /** Standard normal quantile at 1 − (1 − LEVEL)/2, 1.959964 to the digits of printed tables. */
    static final double Z =
            new org.hipparchus.distribution.continuous.NormalDistribution().inverseCumulativeProbability(1 - TAIL);

    boolean holds(double figure) {
        return figure >= low && figure <= high;
    }
}
