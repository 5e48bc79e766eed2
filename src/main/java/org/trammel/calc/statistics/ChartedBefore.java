package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.units.Answer;

/**
 * Where the charts of single readings stand after those that were charted before, so that they go on without them: each
 * chart carries all of its past in one figure or in its last few readings.
 *
 * @param count how many there were
 * @param mean the weighted mean after them
 * @param above the sum above the centre after them, {@code below} the one below
 * @param recent the last of them, oldest first: {@link #MEMORY}, or all where there are fewer
 */
public record ChartedBefore(int count, double mean, double above, double below, List<Double> recent) {

    /** The longest pattern is fifteen in a row within one standard deviation, the newest included. */
    public static final int MEMORY = 14;

    public ChartedBefore {
        recent = List.copyOf(recent);
    }

    /** Nothing was charted yet. */
    public static ChartedBefore nothing(Baseline baseline) {
        return new ChartedBefore(0, baseline.mean(), 0, 0, List.of());
    }

    /** The last readings once others were charted. */
    public List<Double> recentAfter(List<Double> readings) {
        List<Double> all = new ArrayList<>(recent);
        all.addAll(readings);
        return List.copyOf(all.subList(Math.max(0, all.size() - MEMORY), all.size()));
    }

    /** What is asked of every chart of single readings. */
    Asked ask(List<Double> readings, Baseline baseline) {
        Asked asked = new Asked();
        asked.numbers("readings", "Reading", readings);
        asked.holds(!readings.isEmpty(), "readings", "There is no reading to chart.");
        baseline.ask(asked, 1);
        boolean remembered = count >= 0 && recent.size() == Math.min(count, MEMORY);
        asked.holds(remembered, "before", "What was charted before is not told as far back as a pattern reaches.");
        if (asked.numbers("before", "Reading before", recent)) {
            asked.number("before", "weighted mean before", mean);
            asked.number("before", "sum above before", above);
            asked.number("before", "sum below before", below);
        }
        return asked;
    }

    /** The end of a chart's answer: refused, or made. */
    static Answer<ControlChart> answer(Asked asked, java.util.function.Supplier<ControlChart> made) {
        return asked.met() ? Answer.of(made.get()) : asked.refusal();
    }
}
