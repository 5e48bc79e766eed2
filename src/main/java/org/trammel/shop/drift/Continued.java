package org.trammel.shop.drift;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.ChartedBefore;
import org.trammel.calc.statistics.ControlChart;
import org.trammel.calc.statistics.RunRule;
import org.trammel.calc.units.Answer;

/**
 * Readings charted after those that are kept.
 *
 * @param rows to be kept of them
 * @param stand of the series after them
 */
record Continued(List<KeptRow> rows, KeptStand stand) {

    /** How many charted readings before are looked at. */
    static final int REACH = ChartedBefore.MEMORY;

    /**
     * Goes on.
     *
     * @param before where the series stood; its alarms and drift are those of the last row
     * @param place of the first reading added
     * @param last the charted readings before it, oldest first
     */
    static Continued after(
            Series series, @Nullable Base base, KeptStand before, int place, List<KeptRow> last, List<Point> added) {
        List<Double> values = new ArrayList<>();
        for (Point point : added) {
            if (charts(base, point) && point.charted(series.scaled()) instanceof Answer.Determined<Double> shown) {
                values.add(shown.value());
            }
        }
        List<ControlChart> charts = base == null || values.isEmpty() ? List.of() : charts(base, last, values);
        KeptRow.After after = last.isEmpty() ? null : last.get(last.size() - 1).state();
        Walk walk = new Walk(charts, after == null ? new KeptRow.After(0, 0, 0, 0, 0, null) : after);
        List<KeptRow> rows = new ArrayList<>();
        int older = before.before();
        int left = before.left();
        for (Point point : added) {
            Double shown =
                    point.charted(series.scaled()) instanceof Answer.Determined<Double> there ? there.value() : null;
            KeptRow.After state = null;
            if (shown == null) {
                left++;
            } else if (!charts(base, point)) {
                older++;
            } else {
                state = walk.next();
            }
            rows.add(new KeptRow(place + rows.size(), point, shown, state));
        }
        return new Continued(
                rows,
                new KeptStand(
                        series.id(),
                        walk.now.number(),
                        older,
                        left,
                        walk.now.alarms(),
                        walk.now.driftsSince(),
                        first(before.firstOfReadings(), charts, 0),
                        first(before.firstOfMeans(), charts, 1),
                        first(before.firstOfSums(), charts, 2),
                        false));
    }

    private static boolean charts(@Nullable Base base, Point point) {
        return base == null || base.charts(point.at());
    }

    private static @Nullable Integer first(@Nullable Integer known, List<ControlChart> charts, int place) {
        return known != null || charts.isEmpty()
                ? known
                : charts.get(place).first().map(alarm -> alarm.index() + 1).orElse(null);
    }

    /**
     * Individuals, weighted mean and cumulative sum of readings that go on after kept ones.
     *
     * @param last the charted readings before, oldest first: as many as a pattern reaches back to, or all
     */
    static List<ControlChart> charts(Base base, List<KeptRow> last, List<Double> values) {
        ChartedBefore before = ChartedBefore.nothing(base.baseline());
        if (!last.isEmpty()) {
            KeptRow.After after = last.get(last.size() - 1).state();
            before = new ChartedBefore(
                    after.number(),
                    after.mean(),
                    after.above(),
                    after.below(),
                    last.stream().map(KeptRow::value).toList());
        }
        return List.of(
                drawn(ControlChart.individuals(before, values, base.baseline(), RunRule.WESTERN_ELECTRIC)),
                drawn(ControlChart.weightedMean(before, values, base.baseline(), base.weightedMean())),
                drawn(ControlChart.cumulativeSum(before, values, base.baseline(), base.cumulativeSum())));
    }

    /** A base is kept only if charts can be drawn over it, so an answer without one is a fault of ours. */
    private static ControlChart drawn(Answer<ControlChart> answer) {
        if (!(answer instanceof Answer.Determined<ControlChart> drawn)) {
            throw new IllegalStateException(
                    ((Answer.NotDeterminable<ControlChart>) answer).gaps().toString());
        }
        return drawn.value();
    }

    /** Goes from one charted reading to the next. */
    private static final class Walk {

        private final List<ControlChart> charts;
        private final Set<Integer> alarmed = new HashSet<>();
        private KeptRow.After now;
        private int taken;

        private Walk(List<ControlChart> charts, KeptRow.After before) {
            this.charts = charts;
            this.now = before;
            charts.forEach(chart -> chart.alarms().forEach(alarm -> alarmed.add(alarm.index() + 1)));
        }

        private KeptRow.After next() {
            int number = now.number() + 1;
            boolean alarm = alarmed.contains(number);
            Integer since = !alarm ? null : now.driftsSince() == null ? Integer.valueOf(number) : now.driftsSince();
            now = new KeptRow.After(number, at(1, 0), at(2, 0), at(2, 1), now.alarms() + (alarm ? 1 : 0), since);
            taken++;
            return now;
        }

        private double at(int chart, int trace) {
            return charts.isEmpty()
                    ? 0
                    : charts.get(chart).traces().get(trace).points().get(taken).value();
        }
    }
}
