package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.units.Answer;

/**
 * How often readings fall into classes of one width.
 *
 * <pre>width  the range over 1 + log₂ n, up to the next of 1, 2, 5 times a power of ten</pre>
 *
 * Classes begin at whole multiples of the width; each holds its lower bound and not its upper. Readings that are all the
 * same stand in one class. Validity: to be looked at; nothing is judged by it.
 *
 * <p>Source: number of classes: H. A. Sturges, The Choice of a Class Interval, Journal of the American Statistical
 * Association 21 (1926) 65; round widths: common practice.
 *
 * @param width of a class, in the unit of the readings
 * @param classes side by side, the lowest first, empty ones between others too
 */
public record Histogram(double width, List<Bin> classes) {

    /** A share of a width within which a reading stands on a bound: decimals are not exact in binary. */
    private static final double ON_BOUND = 1e-9;

    public Histogram {
        classes = List.copyOf(classes);
    }

    /** A class from a value up to another. */
    public record Bin(double from, double to, int count) {}

    /** Counts readings. */
    public static Answer<Histogram> of(List<Double> readings) {
        Asked asked = new Asked();
        asked.numbers("readings", "Reading", readings);
        asked.holds(!readings.isEmpty(), "readings", "There is no reading.");
        if (!asked.met()) {
            return asked.refusal();
        }
        double[] x = Summary.numbers(readings);
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double each : x) {
            least = Math.min(least, each);
            most = Math.max(most, each);
        }
        double size = Math.max(Math.abs(least), Math.abs(most));
        if (most - least <= size * 1e-12) {
            double width = size == 0 ? 1 : round(size / 10);
            return Answer.of(counted(x, width, least, least));
        }
        double width = round((most - least) / (1 + Math.log(x.length) / Math.log(2)));
        return Answer.of(counted(x, width, least, most));
    }

    private static double round(double raw) {
        double ten = Math.pow(10, Math.floor(Math.log10(raw)));
        double share = raw / ten;
        return ten * (share <= 1 + ON_BOUND ? 1 : share <= 2 + ON_BOUND ? 2 : share <= 5 + ON_BOUND ? 5 : 10);
    }

    private static Histogram counted(double[] x, double width, double least, double most) {
        long first = place(least, width);
        int[] counts = new int[(int) (place(most, width) - first) + 1];
        for (double each : x) {
            counts[(int) (place(each, width) - first)]++;
        }
        List<Bin> classes = new ArrayList<>();
        for (int i = 0; i < counts.length; i++) {
            classes.add(new Bin((first + i) * width, (first + i + 1) * width, counts[i]));
        }
        return new Histogram(width, classes);
    }

    private static long place(double value, double width) {
        return (long) Math.floor(value / width + ON_BOUND);
    }
}
