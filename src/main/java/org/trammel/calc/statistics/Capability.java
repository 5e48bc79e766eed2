package org.trammel.calc.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * How what the process does fits between its limits.
 *
 * <pre>
 * Pp  = (U − L)/(X₉₉.₈₆₅ − X₀.₁₃₅)         normal: (U − L)/6s
 * Ppk = min( (U − X₅₀)/(X₉₉.₈₆₅ − X₅₀), (X₅₀ − L)/(X₅₀ − X₀.₁₃₅) )   normal: min(U − x̄, x̄ − L)/3s
 * normal, 95 %:  Pp √(χ²(0.025; n − 1)/(n − 1)) … Pp √(χ²(0.975; n − 1)/(n − 1))
 *                Ppk ∓ z √( 1/(9n) + Ppk²/(2(n − 1)) )
 * other shapes:  between the 2.5 and 97.5 percentiles of the index over samples drawn from the readings, 1000 or, of
 *                many readings, down to 200
 * </pre>
 *
 * s overall standard deviation, z = 1.96; X percentiles of the shape. Validity: a process that stood still while the
 * readings were taken (a chart says so), independent readings, twenty or more; with fewer the index says more than the
 * readings do and is refused. The interval of Ppk is an approximation, fair from about thirty readings on; drawn
 * samples of fewer than fifty readings give an interval rather too narrow.
 *
 * <p>Source: indices by percentiles as ISO 22514-2 has them (from memory); interval of Pp by the distribution of s²; of
 * Ppk: A. F. Bissell, How reliable is your capability index?, Applied Statistics 39 (1990) 331, as NIST/SEMATECH
 * e-Handbook of Statistical Methods, 6.1.6; drawn samples: B. Efron, R. J. Tibshirani, An Introduction to the Bootstrap
 * (1993), chapter 13.
 *
 * @param count n
 * @param mean x̄
 * @param deviation s
 * @param pp Pp, or null if one side only is limited
 * @param ppk Ppk
 */
public record Capability(
        Tolerance tolerance,
        Shape shape,
        int count,
        double mean,
        double deviation,
        Shape.Percentiles percentiles,
        @Nullable Index pp,
        Index ppk) {

    /** With fewer readings no index is given; common practice. */
    public static final int FEWEST = 20;

    private static final int MOST_DRAWN = 1000;
    private static final int LEAST_DRAWN = 200;
    private static final int READINGS_DRAWN = 5_000_000;

    /** One question, one answer: samples are drawn from this on. */
    private static final long SEED = 22514;

    /** An index and where it may lie. */
    public record Index(double value, Interval interval) {}

    /**
     * Reckons the indices.
     *
     * @param shape how the readings are taken to be distributed
     */
    public static Answer<Capability> of(List<Double> readings, Tolerance tolerance, Shape shape) {
        Asked asked = new Asked();
        asked.numbers("readings", "Reading", readings);
        tolerance.asked(asked);
        asked.holds(
                readings.size() >= FEWEST,
                "readings",
                readings.size() + (readings.size() == 1 ? " reading is" : " readings are")
                        + " too few for an index, which begins to mean something at " + FEWEST
                        + ": look at the readings themselves.");
        if (!asked.met()) {
            return asked.refusal();
        }
        double[] x = Summary.numbers(readings);
        Summary summary = Summary.ofNumbers(x);
        asked.holds(
                summary.deviation() > 0,
                "readings",
                "All " + readings.size() + " readings are the same, " + Written.plain(summary.mean())
                        + ": without spread there is no index. The gauge may be too coarse.");
        shape.asked(asked, x);
        if (!asked.met()) {
            return asked.refusal();
        }
        Shape.Percentiles percentiles = shape.percentiles(x);
        if (!percentiles.apart()) {
            return Answer.none(
                    "readings",
                    "Half of the readings and more are the same as the outermost on one side: the gauge is too coarse for an"
                            + " index.");
        }
        double spread = pp(tolerance, percentiles);
        double worst = ppk(tolerance, percentiles);
        Index pp = null;
        Index ppk;
        if (shape == Shape.NORMAL) {
            pp = tolerance.lower() == null || tolerance.upper() == null ? null : byChiSquare(spread, x.length);
            double half = Interval.Z * Math.sqrt(1.0 / 9 / x.length + worst * worst / 2 / (x.length - 1));
            ppk = new Index(worst, new Interval(worst - half, worst + half));
        } else {
            double[][] drawn = drawn(x, tolerance, shape);
            pp = tolerance.lower() == null || tolerance.upper() == null ? null : between(spread, drawn[0]);
            ppk = between(worst, drawn[1]);
        }
        return Answer.of(
                new Capability(tolerance, shape, x.length, summary.mean(), summary.deviation(), percentiles, pp, ppk));
    }

    private static double pp(Tolerance tolerance, Shape.Percentiles of) {
        return tolerance.lower() == null || tolerance.upper() == null
                ? 0
                : (tolerance.upper() - tolerance.lower()) / (of.high() - of.low());
    }

    private static double ppk(Tolerance tolerance, Shape.Percentiles of) {
        double above = tolerance.upper() == null
                ? Double.POSITIVE_INFINITY
                : (tolerance.upper() - of.median()) / (of.high() - of.median());
        double below = tolerance.lower() == null
                ? Double.POSITIVE_INFINITY
                : (of.median() - tolerance.lower()) / (of.median() - of.low());
        return Math.min(above, below);
    }

    private static Index byChiSquare(double value, int n) {
        ChiSquaredDistribution chi = new ChiSquaredDistribution(n - 1);
        return new Index(
                value,
                new Interval(
                        value * Math.sqrt(chi.inverseCumulativeProbability(Interval.TAIL) / (n - 1)),
                        value * Math.sqrt(chi.inverseCumulativeProbability(1 - Interval.TAIL) / (n - 1))));
    }

    private static double[][] drawn(double[] x, Tolerance tolerance, Shape shape) {
        SplittableRandom random = new SplittableRandom(SEED);
        int draws = Math.max(LEAST_DRAWN, Math.min(MOST_DRAWN, READINGS_DRAWN / x.length));
        double[][] indices = new double[2][draws];
        double[] sample = new double[x.length];
        for (int k = 0; k < draws; k++) {
            Shape.Percentiles of;
            do {
                do {
                    for (int i = 0; i < x.length; i++) {
                        sample[i] = x[random.nextInt(x.length)];
                    }
                } while (Summary.ofNumbers(sample).deviation() == 0);
                of = shape.percentiles(sample);
            } while (!of.apart());
            indices[0][k] = pp(tolerance, of);
            indices[1][k] = ppk(tolerance, of);
        }
        return indices;
    }

    private static Index between(double value, double[] drawn) {
        Arrays.sort(drawn);
        int out = (int) Math.round(drawn.length * Interval.TAIL);
        return new Index(value, new Interval(drawn[out - 1], drawn[drawn.length - out]));
    }

    /**
     * What may be said, as a sentence.
     *
     * @param wanted the index that is asked for, such as 1.33
     */
    public String words(double wanted) {
        String sentence = "Ppk " + Written.decimals(ppk.value(), 2) + ", at 95 % between "
                + Written.decimals(ppk.interval().low(), 2) + " and "
                + Written.decimals(ppk.interval().high(), 2) + ": ";
        String goal = Written.plain(wanted);
        if (ppk.interval().low() >= wanted) {
            return sentence + "proven to be " + goal + " or more.";
        }
        String verdict =
                ppk.interval().high() < wanted ? "proven to be below " + goal : "not proven to be " + goal + " or more";
        return sentence + verdict + centring() + ".";
    }

    private String centring() {
        if (shape != Shape.NORMAL || pp == null || tolerance.lower() == null || tolerance.upper() == null) {
            return "";
        }
        double move = (tolerance.lower() + tolerance.upper()) / 2 - mean;
        return pp.value() - ppk.value() < 0.005
                ? ""
                : "; moving the mean by " + (move > 0 ? "+" : "") + Written.to(move, 10 * deviation)
                        + " to the middle alone would raise it to " + Written.decimals(pp.value(), 2);
    }
}
