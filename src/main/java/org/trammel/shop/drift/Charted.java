package org.trammel.shop.drift;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.ControlChart;
import org.trammel.calc.statistics.ControlChart.Alarm;
import org.trammel.calc.statistics.ControlChart.Kind;

/**
 * A stretch of the readings of a series on its charts. What the charts say holds over all readings, whatever stretch is
 * looked at: they go on from where they stood before it.
 *
 * @param rows the charted readings of the stretch, oldest first
 * @param charts of the stretch: individuals, weighted mean, cumulative sum; none without a base or a reading
 * @param first the first alarm of each chart over all readings
 * @param inBase how many charted readings the base was taken from, counted from the very first
 * @param left the newest of those that cannot be charted, each with the reason
 */
record Charted(
        Standing standing,
        List<KeptRow> rows,
        List<ControlChart> charts,
        Map<Kind, Alarm> first,
        int inBase,
        List<Left> left) {

    /** A point that cannot be charted. */
    record Left(Point point, String why) {}

    public Series series() {
        return standing.series();
    }

    public @Nullable Base base() {
        return standing.base();
    }

    Standing.Stand stand() {
        return standing.stand();
    }

    /** How many charted readings stand before the stretch. */
    int offset() {
        return rows.isEmpty() ? 0 : rows.get(0).state().number() - 1;
    }

    /** How many charted readings there are in all. */
    public int total() {
        return standing.kept().charted();
    }

    List<Point> points() {
        return rows.stream().map(KeptRow::point).toList();
    }

    /** What the charts show of each. */
    List<Double> values() {
        return rows.stream().map(KeptRow::value).toList();
    }

    /** Alarms of the stretch, by reading. */
    List<Alarm> alarms() {
        return charts.stream()
                .flatMap(chart -> chart.alarms().stream())
                .sorted(Comparator.comparingInt(Alarm::index))
                .toList();
    }

    /** Place, from 0, of the reading the drift that goes on now began at; below 0 if none does. */
    int driftsSince() {
        Integer since = standing.kept().driftsSince();
        return since == null ? -1 : since - 1;
    }
}
