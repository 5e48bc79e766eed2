package org.trammel.shop.drift;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.ControlChart;
import org.trammel.calc.statistics.ControlChart.Alarm;
import org.trammel.calc.statistics.RunRule;
import org.trammel.calc.units.Answer;

/**
 * A series over its base: what is charted, the charts and every alarm on them.
 *
 * @param base null while none was taken
 * @param points that are charted, by time
 * @param values what the charts show of each
 * @param before points older than what the base charts
 * @param left points that cannot be charted, each with the reason
 * @param charts individuals, weighted mean, cumulative sum; none without a base or a point
 * @param alarms of all charts, in the order of readings
 */
record Charted(
        Series series,
        @Nullable Base base,
        List<Point> points,
        List<Double> values,
        List<Point> before,
        List<Left> left,
        List<ControlChart> charts,
        List<Alarm> alarms) {

    /** A point that cannot be charted. */
    record Left(Point point, String why) {}

    static Charted of(Series series, @Nullable Base base, List<Point> all) {
        List<Point> points = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        List<Point> before = new ArrayList<>();
        List<Left> left = new ArrayList<>();
        for (Point point : all) {
            Answer<Double> shown = point.charted(series.scaled());
            if (shown instanceof Answer.NotDeterminable<Double> none) {
                left.add(new Left(point, none.gaps().get(0).words()));
            } else if (base != null && !base.charts(point.at())) {
                before.add(point);
            } else {
                points.add(point);
                values.add(((Answer.Determined<Double>) shown).value());
            }
        }
        List<ControlChart> charts = new ArrayList<>();
        if (base != null && !points.isEmpty()) {
            add(charts, ControlChart.individuals(values, base.baseline(), RunRule.WESTERN_ELECTRIC));
            add(charts, ControlChart.weightedMean(values, base.baseline(), base.weightedMean()));
            add(charts, ControlChart.cumulativeSum(values, base.baseline(), base.cumulativeSum()));
        }
        List<Alarm> alarms = charts.stream()
                .flatMap(chart -> chart.alarms().stream())
                .sorted(Comparator.comparingInt(Alarm::index))
                .toList();
        return new Charted(series, base, points, values, before, left, charts, alarms);
    }

    /** A base is kept only if charts can be drawn over it, so an answer without one is a fault of ours. */
    private static void add(List<ControlChart> charts, Answer<ControlChart> answer) {
        if (!(answer instanceof Answer.Determined<ControlChart> drawn)) {
            throw new IllegalStateException(
                    ((Answer.NotDeterminable<ControlChart>) answer).gaps().toString());
        }
        charts.add(drawn.value());
    }

    /** Where a series stands. */
    enum Stand {
        DRIFTS("drifts"),
        DRIFTED("drifted, within again"),
        NO_BASE("no base yet"),
        EMPTY("nothing read"),
        STILL("no drift");

        private final String word;

        Stand(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        /** The sign beside the word. */
        public String mark() {
            return switch (this) {
                case DRIFTS -> "not-conforming";
                case DRIFTED, NO_BASE -> "undecided";
                case EMPTY -> "waiting";
                case STILL -> "conforming";
            };
        }
    }

    Stand stand() {
        if (points.isEmpty()) {
            return Stand.EMPTY;
        }
        if (base == null) {
            return Stand.NO_BASE;
        }
        TreeSet<Integer> at = alarmed();
        return at.isEmpty() ? Stand.STILL : at.last() == points.size() - 1 ? Stand.DRIFTS : Stand.DRIFTED;
    }

    private TreeSet<Integer> alarmed() {
        TreeSet<Integer> at = new TreeSet<>();
        alarms.forEach(alarm -> at.add(alarm.index()));
        return at;
    }

    /** Place, from 0, of the reading the drift that goes on now began at; below 0 if none does. */
    int driftsSince() {
        TreeSet<Integer> at = alarmed();
        int since = points.size() - 1;
        if (!at.contains(since)) {
            return -1;
        }
        while (at.contains(since - 1)) {
            since--;
        }
        return since;
    }

    /** The alarm of the reading the drift that goes on now began at. */
    @Nullable
    Alarm began() {
        int since = driftsSince();
        return alarms.stream()
                .filter(alarm -> alarm.index() == since)
                .findFirst()
                .orElse(null);
    }

    List<Alarm> alarmsOf(int index) {
        return alarms.stream().filter(alarm -> alarm.index() == index).toList();
    }

    /** How many charted points the base was taken from, counted from the first. */
    int inBase() {
        Base of = base;
        return of == null
                ? 0
                : (int) points.stream().filter(point -> of.holds(point.at())).count();
    }
}
