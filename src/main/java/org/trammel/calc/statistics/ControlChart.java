package org.trammel.calc.statistics;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.trammel.calc.units.Answer;

/**
 * A control chart, computed: one or two traces over the same readings, their limits, and every alarm. Ready to be drawn
 * or told.
 *
 * <p>Limits of a control chart come from what the process did, never from the tolerance.
 *
 * @param kind which chart
 * @param baseline what its limits were made of
 * @param traces in the order they stand, the first one above
 * @param alarms in the order of readings, those of one reading by trace and rule
 */
public record ControlChart(Kind kind, Baseline baseline, List<Trace> traces, List<Alarm> alarms) {

    public ControlChart {
        traces = List.copyOf(traces);
        alarms = List.copyOf(alarms);
    }

    /** Which chart. */
    public enum Kind {
        INDIVIDUALS,
        WEIGHTED_MEAN,
        CUMULATIVE_SUM,
        MEANS_AND_RANGES,
        MEANS_AND_DEVIATIONS
    }

    /** What a trace shows; its words as a sentence goes on. */
    public enum Plotted {
        READING("Reading", "reading"),
        MOVING_RANGE("Reading", "step from the reading before"),
        WEIGHTED_MEAN("Reading", "weighted mean"),
        SUM_ABOVE("Reading", "sum above the centre"),
        SUM_BELOW("Reading", "sum below the centre"),
        MEAN("Group", "mean of the group"),
        RANGE("Group", "range of the group"),
        DEVIATION("Group", "standard deviation of the group");

        private final String noun;
        private final String words;

        Plotted(String noun, String words) {
            this.noun = noun;
            this.words = words;
        }

        /** What stands at its place in what was given, as a sentence begins. */
        String noun() {
            return noun;
        }

        public String words() {
            return words;
        }
    }

    /**
     * A line of points with its limits.
     *
     * @param centre centre line
     * @param points one for each reading or group; a moving range has none for the first reading
     */
    public record Trace(Plotted plotted, double centre, List<Point> points) {

        public Trace {
            points = List.copyOf(points);
        }
    }

    /**
     * A point.
     *
     * @param index place of its reading or group in what was given, from 0
     * @param value what is plotted
     * @param lower lower control limit there; 0 for ranges, deviations and sums that have none
     * @param upper upper control limit there; 0 for the sum below
     */
    public record Point(int index, double value, double lower, double upper) {}

    /**
     * A point that a process standing still would seldom show.
     *
     * @param index place of its reading or group in what was given, from 0
     * @param value what is plotted there
     * @param bound the limit it is beyond, or the centre line of the pattern it completes
     * @param sigma standard deviation of readings or means, to which the words round
     */
    public record Alarm(int index, Plotted plotted, RunRule rule, double value, double bound, double sigma) {

        /** The alarm as a sentence; its figures have the decimals they want, both alike, as a column has. */
        public String words() {
            int decimals = Written.fewest(sigma, value, bound);
            String what = plotted.noun() + " " + (index + 1) + ": the " + plotted.words() + ", "
                    + Written.decimals(value, decimals);
            String line = Written.decimals(bound, decimals) + ".";
            if (rule != RunRule.BEYOND_LIMITS) {
                return what + ", completes " + rule.found() + " of the centre line " + line;
            }
            return what + (value > bound ? ", is above its upper limit " : ", is below its lower limit ") + line;
        }
    }

    /** The first alarm, after which somebody should have looked. */
    public Optional<Alarm> first() {
        return alarms.stream().findFirst();
    }

    /**
     * Single readings and the steps between neighbours.
     *
     * @param rules which patterns are looked for among the readings; steps are held against their limit only
     */
    public static Answer<ControlChart> individuals(List<Double> readings, Baseline baseline, Set<RunRule> rules) {
        return individuals(ChartedBefore.nothing(baseline), readings, baseline, rules);
    }

    /** The same of readings that go on after others; places count from the very first. */
    public static Answer<ControlChart> individuals(
            ChartedBefore before, List<Double> readings, Baseline baseline, Set<RunRule> rules) {
        return ShewhartChart.individuals(before, readings, baseline, rules);
    }

    /** The exponentially weighted moving mean, which finds small lasting shifts. */
    public static Answer<ControlChart> weightedMean(
            List<Double> readings, Baseline baseline, WeightedMeanSetting setting) {
        return weightedMean(ChartedBefore.nothing(baseline), readings, baseline, setting);
    }

    /** The same of readings that go on after others. */
    public static Answer<ControlChart> weightedMean(
            ChartedBefore before, List<Double> readings, Baseline baseline, WeightedMeanSetting setting) {
        return WeightedMeanChart.of(before, readings, baseline, setting);
    }

    /** The two-sided cumulative sum, which finds a shift of a chosen size soonest. */
    public static Answer<ControlChart> cumulativeSum(
            List<Double> readings, Baseline baseline, CumulativeSumSetting setting) {
        return cumulativeSum(ChartedBefore.nothing(baseline), readings, baseline, setting);
    }

    /** The same of readings that go on after others. */
    public static Answer<ControlChart> cumulativeSum(
            ChartedBefore before, List<Double> readings, Baseline baseline, CumulativeSumSetting setting) {
        return CumulativeSumChart.of(before, readings, baseline, setting);
    }

    /** Means of groups and their ranges. */
    public static Answer<ControlChart> meansAndRanges(
            List<List<Double>> groups, Baseline baseline, Set<RunRule> rules) {
        return ShewhartChart.meansAndRanges(groups, baseline, rules);
    }

    /** Means of groups and their standard deviations; better than ranges for groups above ten. */
    public static Answer<ControlChart> meansAndDeviations(
            List<List<Double>> groups, Baseline baseline, Set<RunRule> rules) {
        return ShewhartChart.meansAndDeviations(groups, baseline, rules);
    }
}
