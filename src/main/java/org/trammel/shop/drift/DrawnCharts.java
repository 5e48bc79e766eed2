package org.trammel.shop.drift;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.trammel.calc.statistics.ControlChart;
import org.trammel.calc.statistics.ControlChart.Alarm;
import org.trammel.calc.statistics.ControlChart.Kind;
import org.trammel.calc.statistics.ControlChart.Plotted;
import org.trammel.calc.statistics.ControlChart.Trace;
import org.trammel.shop.web.ChartView;
import org.trammel.shop.web.Formats;

/** Makes what is drawn and told of the charts of a series. */
@Component
class DrawnCharts {

    private static final Map<Kind, String> TITLES = Map.of(
            Kind.INDIVIDUALS, "Readings and steps between them",
            Kind.WEIGHTED_MEAN, "Weighted mean",
            Kind.CUMULATIVE_SUM, "Cumulative sum");

    private static final Map<Plotted, String> NAMES = Map.of(
            Plotted.READING, "Readings",
            Plotted.MOVING_RANGE, "Step from the reading before",
            Plotted.WEIGHTED_MEAN, "Weighted mean",
            Plotted.SUM_ABOVE, "Sums above and below the centre");

    private final Formats formats;

    DrawnCharts(Formats formats) {
        this.formats = formats;
    }

    /** A chart as a page shows it. */
    record Drawn(String title, String finding, ChartView view) {}

    /** All of a series; without a base its readings over time, about no deviation, without limits. */
    List<Drawn> of(Charted charted, Welders welders) {
        if (charted.base() == null && !charted.rows().isEmpty()) {
            return List.of(overTime(charted, welders));
        }
        return charted.charts().stream()
                .map(chart -> drawn(charted, chart, welders))
                .toList();
    }

    private Drawn overTime(Charted charted, Welders welders) {
        double size = charted.values().stream().mapToDouble(Math::abs).max().orElse(0);
        List<ChartView.Point> points = new ArrayList<>();
        for (double value : charted.values()) {
            points.add(new ChartView.Point(charted.offset() + points.size(), value, 0, 0, false));
        }
        String finding = readings(charted) + " over time; no base, so no limits.";
        return new Drawn(
                "Readings over time",
                finding,
                new ChartView(
                        named(charted, welders) + ": " + finding,
                        List.of(new ChartView.Panel(
                                NAMES.get(Plotted.READING),
                                0,
                                size > 0 ? decimals(size / 10) : 2,
                                List.of(new ChartView.Trace(points)))),
                        charted.offset(),
                        points.size(),
                        0,
                        newest(charted)));
    }

    private static String named(Charted charted, Welders welders) {
        return welders.of(charted.series()) + ", " + charted.series().name();
    }

    /** What the last reading that is drawn is called. */
    private String newest(Charted charted) {
        Point last = charted.rows().get(charted.rows().size() - 1).point();
        String newest = last.earlier() ? last.frame() : formats.mark(last.frame());
        boolean ends = charted.offset() + charted.rows().size() == charted.total();
        return newest.length() > 10 ? ends ? "newest" : "" : newest;
    }

    private static String readings(Charted charted) {
        int count = charted.total();
        String all = count == 1 ? "1 reading" : count + " readings";
        int from = charted.offset() + 1;
        return charted.rows().size() == count
                ? all
                : all + ", " + from + " to "
                        + (charted.offset() + charted.rows().size()) + " of them drawn";
    }

    private Drawn drawn(Charted charted, ControlChart chart, Welders welders) {
        int decimals = decimals(charted.base().sigma().doubleValue());
        Set<String> alarmed = new HashSet<>();
        chart.alarms().forEach(alarm -> alarmed.add(alarm.plotted() + " " + alarm.index()));
        List<ChartView.Panel> panels = new ArrayList<>();
        if (chart.kind() == Kind.CUMULATIVE_SUM) {
            panels.add(panel(
                    NAMES.get(Plotted.SUM_ABOVE),
                    0,
                    decimals,
                    chart.traces().stream().map(t -> trace(t, alarmed)).toList()));
        } else {
            chart.traces()
                    .forEach(t -> panels.add(
                            panel(NAMES.get(t.plotted()), t.centre(), decimals, List.of(trace(t, alarmed)))));
        }
        String finding = finding(charted, chart);
        return new Drawn(
                TITLES.get(chart.kind()),
                finding,
                new ChartView(
                        named(charted, welders) + ", "
                                + TITLES.get(chart.kind()).toLowerCase(java.util.Locale.ROOT) + ": " + finding,
                        panels,
                        charted.offset(),
                        charted.rows().size(),
                        charted.inBase(),
                        newest(charted)));
    }

    /** Its figures are the centre and where the limits end. */
    private static ChartView.Panel panel(String name, double centre, int most, List<ChartView.Trace> traces) {
        List<Double> figures = new ArrayList<>(List.of(centre));
        for (ChartView.Trace trace : traces) {
            trace.points().stream().reduce((former, later) -> later).ifPresent(last -> {
                figures.add(last.lower());
                figures.add(last.upper());
            });
        }
        figures.removeIf(figure -> !Double.isFinite(figure));
        return new ChartView.Panel(name, centre, fewest(figures, most), traces);
    }

    /** A step cannot be below 0, so that its lower limit, 0, is none and is not drawn. */
    private static ChartView.Trace trace(Trace trace, Set<String> alarmed) {
        return new ChartView.Trace(trace.points().stream()
                .map(p -> new ChartView.Point(
                        p.index(),
                        p.value(),
                        trace.plotted() == Plotted.MOVING_RANGE ? trace.centre() : p.lower(),
                        p.upper(),
                        alarmed.contains(trace.plotted() + " " + p.index())))
                .toList());
    }

    /** What a chart says, in a sentence: of all readings, whichever are drawn. */
    private String finding(Charted charted, ControlChart chart) {
        Alarm first = charted.first().get(chart.kind());
        return first == null
                ? readings(charted) + ", no alarm."
                : "First alarm at reading " + (first.index() + 1) + " of "
                        + readings(charted).replaceFirst(" readings?", "") + ". " + words(first);
    }

    String words(Alarm alarm) {
        return formats.sentence(alarm.words());
    }

    /** As many decimals as tell a hundredth of a standard deviation apart. */
    static int decimals(double sigma) {
        return Math.max(0, Math.min(6, 2 - (int) Math.floor(Math.log10(sigma))));
    }

    /** As many decimals as the figures of a column want, all alike, and no more than are told apart. */
    static int fewest(Collection<? extends Number> figures, int most) {
        return figures.stream()
                .mapToInt(figure -> new BigDecimal(figure.toString())
                        .setScale(most, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .scale())
                .reduce(0, Math::max);
    }
}
