package org.trammel.calc.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Every place between two ends where a smooth function is 0. The span is sampled evenly; a change of sign is narrowed
 * down by Ridders's method, a smallest magnitude without one is looked at for two places close together, and where the
 * function ends the end is looked at too. Two places closer than a sample that are not a smallest magnitude are missed.
 *
 * <p>Source: C. Ridders, IEEE Transactions on Circuits and Systems 26 (1979) 979 (from memory). Accuracy: the last
 * digits of a double, as far as the function itself has them.
 */
final class Roots {

    private static final double GOLDEN = (3 - Math.sqrt(5)) / 2;

    private final DoubleUnaryOperator function;
    private final List<Double> found = new ArrayList<>();

    private Roots(DoubleUnaryOperator function) {
        this.function = function;
    }

    /** The places, rising; the function may have no value (be not a number) on parts of the span. */
    static List<Double> of(DoubleUnaryOperator function, double from, double to, int samples) {
        Roots roots = new Roots(function);
        roots.sample(from, to, samples);
        roots.found.sort(null);
        return roots.found;
    }

    private void sample(double from, double to, int samples) {
        double[] x = new double[3];
        double[] y = {Double.NaN, Double.NaN, Double.NaN};
        for (int i = 0; i <= samples; i++) {
            double next = from + (to - from) * i / samples;
            double there = function.applyAsDouble(next);
            if (i > 0 && Double.isNaN(there) != Double.isNaN(y[2])) {
                double edge = edge(Double.isNaN(there) ? x[2] : next, Double.isNaN(there) ? next : x[2]);
                double atEdge = function.applyAsDouble(edge);
                if (Double.isNaN(there)) {
                    step(x, y, edge, atEdge);
                } else {
                    step(x, y, x[2], Double.NaN);
                    step(x, y, edge, atEdge);
                }
            }
            step(x, y, next, there);
        }
        step(x, y, to, Double.NaN);
    }

    private void step(double[] x, double[] y, double next, double there) {
        x[0] = x[1];
        y[0] = y[1];
        x[1] = x[2];
        y[1] = y[2];
        x[2] = next;
        y[2] = there;
        if (y[1] == 0) {
            add(x[1]);
        } else if (y[1] * there < 0) {
            add(between(x[1], y[1], next, there));
        } else if (y[0] * y[1] > 0
                && y[1] * there > 0
                && Math.abs(y[1]) <= Math.abs(y[0])
                && Math.abs(y[1]) <= Math.abs(there)) {
            touching(x, y[1] > 0 ? 1 : -1);
        } else if (Double.isNaN(there) && Math.abs(y[1]) < 1e-6 || Double.isNaN(y[0]) && Math.abs(y[1]) < 1e-6) {
            add(x[1]);
        }
    }

    private void add(double place) {
        if (found.stream().noneMatch(other -> Math.abs(other - place) <= 1e-9 * Math.max(1e-3, Math.abs(place)))) {
            found.add(place);
        }
    }

    /** The last place with a value on the way to one without. */
    private double edge(double with, double without) {
        for (int i = 0; i < 60; i++) {
            double middle = (with + without) / 2;
            if (Double.isNaN(function.applyAsDouble(middle))) {
                without = middle;
            } else {
                with = middle;
            }
        }
        return with;
    }

    /** Goes down to the smallest magnitude between three samples and takes what lies on its both sides, or itself. */
    private void touching(double[] x, int sign) {
        double low = x[0];
        double high = x[2];
        double one = low + GOLDEN * (high - low);
        double two = high - GOLDEN * (high - low);
        double atOne = sign * function.applyAsDouble(one);
        double atTwo = sign * function.applyAsDouble(two);
        for (int i = 0; i < 60 && atOne > 0 && atTwo > 0; i++) {
            if (atOne < atTwo) {
                high = two;
                two = one;
                atTwo = atOne;
                one = low + GOLDEN * (high - low);
                atOne = sign * function.applyAsDouble(one);
            } else {
                low = one;
                one = two;
                atOne = atTwo;
                two = high - GOLDEN * (high - low);
                atTwo = sign * function.applyAsDouble(two);
            }
        }
        double least = atOne < atTwo ? one : two;
        double atLeast = function.applyAsDouble(least);
        if (atLeast * sign < 0) {
            add(between(x[0], function.applyAsDouble(x[0]), least, atLeast));
            add(between(least, atLeast, x[2], function.applyAsDouble(x[2])));
        } else if (Math.abs(atLeast) < 1e-9) {
            add(least);
        }
    }

    private double between(double a, double atA, double b, double atB) {
        for (int i = 0; i < 100; i++) {
            double middle = (a + b) / 2;
            double atMiddle = function.applyAsDouble(middle);
            double root = Math.sqrt(atMiddle * atMiddle - atA * atB);
            if (!(root > 0)) {
                return middle;
            }
            double next = middle + (middle - a) * Math.signum(atA - atB) * atMiddle / root;
            double there = function.applyAsDouble(next);
            if (there == 0 || !(Math.abs(b - a) > 4 * Math.ulp(middle))) {
                return next;
            }
            if (atMiddle * there < 0) {
                a = middle;
                atA = atMiddle;
                b = next;
                atB = there;
            } else if (atA * there < 0) {
                b = next;
                atB = there;
            } else {
                a = next;
                atA = there;
            }
            if (Math.abs(b - a) <= 4 * Math.ulp(middle)) {
                break;
            }
        }
        return Math.abs(atA) < Math.abs(atB) ? a : b;
    }
}
