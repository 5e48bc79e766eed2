package org.trammel.calc.statistics;

import java.util.List;
import org.trammel.calc.units.Answer;

/**
 * The frozen figures of an earlier base period that the limits of a chart are made of; they stay until somebody takes
 * another base.
 *
 * <pre>
 * single readings    x̄ = mean of the readings,       σ = mean of |xᵢ − xᵢ₋₁| / d₂(2)
 * groups, by ranges  x̄ = mean of the groups' means,  σ = R̄ / d₂(n)
 * groups, by s       x̄ = mean of the groups' means,  σ = s̄ / c₄(n)
 * </pre>
 *
 * Short-term spread is taken, neighbour from neighbour or inside a group, so that a shift within the base does not widen
 * the limits meant to find it. Validity: independent readings of a process that stood still; groups of one size, 2 to
 * 25. Twenty readings or groups are the usual least; fewer give limits, and {@link BaseDoubts} says so.
 *
 * <p>Source: W. A. Shewhart's charts as ISO 7870-2 and NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.1 (groups)
 * and 6.3.2.2 (individuals), have them.
 *
 * @param mean centre of the charts
 * @param sigma σ of a single reading; above 0
 * @param count how many readings or groups the base had; 0 if all was given as a setting
 * @param size readings in a group; 1 for single readings
 * @param origin where σ comes from
 */
public record Baseline(double mean, double sigma, int count, int size, Origin origin) {

    /** Fewer readings or groups than these leave limits doubtful; common practice. */
    public static final int USUAL_LEAST = 20;

    /** Where a σ comes from. */
    public enum Origin {
        MOVING_RANGES,
        RANGES,
        DEVIATIONS,
        GIVEN
    }

    /** From single readings, in the order they were taken. */
    public static Answer<Baseline> ofReadings(List<Double> readings) {
        return Summary.of(readings).then(summary -> {
            double[] x = Summary.numbers(readings);
            double sum = 0;
            for (int i = 1; i < x.length; i++) {
                sum += Math.abs(x[i] - x[i - 1]);
            }
            double sigma = sum / (x.length - 1) / ControlConstants.forSize(2).d2();
            return taken(summary.mean(), sigma, x.length, 1, Origin.MOVING_RANGES);
        });
    }

    /** Centred on the readings of a base period, with a σ known from elsewhere; one reading will do. */
    public static Answer<Baseline> ofReadings(List<Double> readings, double sigma) {
        Asked asked = new Asked();
        asked.numbers("readings", "Reading", readings);
        asked.holds(!readings.isEmpty(), "readings", "There is no reading to centre the chart on.");
        asked.above0("sigma", "standard deviation", sigma);
        if (!asked.met()) {
            return asked.refusal();
        }
        double mean = readings.stream().mapToDouble(each -> each).average().orElse(0);
        return Answer.of(new Baseline(mean, sigma, readings.size(), 1, Origin.GIVEN));
    }

    /** Centre and σ as settings, where there is no history yet. */
    public static Answer<Baseline> given(double centre, double sigma) {
        Asked asked = new Asked();
        asked.number("centre", "centre", centre);
        asked.above0("sigma", "standard deviation", sigma);
        return asked.met() ? Answer.of(new Baseline(centre, sigma, 0, 1, Origin.GIVEN)) : asked.refusal();
    }

    /** From groups, by their ranges. */
    public static Answer<Baseline> byRanges(List<List<Double>> groups) {
        return Groups.of(groups).then(each -> {
            double sigma =
                    each.meanRange() / ControlConstants.forSize(each.size()).d2();
            return taken(each.mean(), sigma, groups.size(), each.size(), Origin.RANGES);
        });
    }

    /** From groups, by their standard deviations. */
    public static Answer<Baseline> byDeviations(List<List<Double>> groups) {
        return Groups.of(groups).then(each -> {
            double sigma =
                    each.meanDeviation() / ControlConstants.forSize(each.size()).c4();
            return taken(each.mean(), sigma, groups.size(), each.size(), Origin.DEVIATIONS);
        });
    }

    private static Answer<Baseline> taken(double mean, double sigma, int count, int size, Origin origin) {
        return Asked.spread(sigma, Math.abs(mean))
                ? Answer.of(new Baseline(mean, sigma, count, size, origin))
                : Answer.none(
                        "readings",
                        size == 1
                                ? "All readings of the base are the same, " + Written.plain(mean)
                                        + ": without spread there are no limits. A finer gauge or a given standard"
                                        + " deviation would give some."
                                : "The readings inside every group are the same: without spread there are no limits.");
    }

    /** What a baseline that was kept must still hold. */
    void ask(Asked asked, int size) {
        asked.number("baseline", "centre of the base", mean);
        asked.above0("baseline", "standard deviation of the base", sigma);
        asked.holds(
                this.size == size || origin == Origin.GIVEN,
                "baseline",
                "The base was taken from "
                        + (this.size == 1 ? "single readings" : "groups of " + this.size)
                        + ", what is charted comes " + (size == 1 ? "singly." : "in groups of " + size + "."));
    }
}
