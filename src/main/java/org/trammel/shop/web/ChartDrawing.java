package org.trammel.shop.web;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Control charts: a chain line at the centre, dashed drift limits, the base shaded, readings as dots on a line, an alarm as
 * a larger point downward with the word at the first of a run. Tolerances belong to one frame and are not drawn.
 */
final class ChartDrawing {

    private static final double WIDTH = 760;
    private static final double LEFT = 84;
    private static final double RIGHT = 104;
    private static final double TOP = 30;
    private static final double PANEL = 190;
    private static final double APART = 46;
    private static final double BOTTOM = 30;
    private static final double LETTERS = 15;
    private static final double LABELS_APART = 18;

    private final Formats formats;
    private final ChartView view;
    private final Svg svg;

    private ChartDrawing(Formats formats, ChartView view) {
        this.formats = formats;
        this.view = view;
        double height = TOP + view.panels().size() * (PANEL + APART) - APART + BOTTOM;
        this.svg = Svg.labelled("errors", WIDTH, height, view.finding());
    }

    static String of(Formats formats, ChartView view) {
        return new ChartDrawing(formats, view).drawn();
    }

    private String drawn() {
        for (int i = 0; i < view.panels().size(); i++) {
            new Panel(view.panels().get(i), TOP + i * (PANEL + APART), i == 0).drawn();
        }
        numbers();
        return svg.done();
    }

    private double x(double index) {
        double step = (WIDTH - LEFT - RIGHT) / view.readings();
        return LEFT + (index - view.before() + 0.5) * step;
    }

    /** Numbers of readings below the lowest panel, as many as have room. */
    private void numbers() {
        double y = TOP + view.panels().size() * (PANEL + APART) - APART;
        double free = 0;
        for (int i = view.before(); i < view.before() + view.readings(); i++) {
            String figure = Integer.toString(i + 1);
            double half = Svg.wide(figure, LETTERS) / 2;
            if (x(i) - half >= free) {
                svg.text(x(i), y + 6 + LETTERS, figure, LETTERS, "middle", Svg.INK_2, false);
                free = x(i) + half + 8;
            }
        }
    }

    /** One panel. */
    private final class Panel {

        private final ChartView.Panel panel;
        private final double top;
        private final boolean first;
        private final double least;
        private final double most;
        private final List<double[]> labels = new ArrayList<>();

        private Panel(ChartView.Panel panel, double top, boolean first) {
            this.panel = panel;
            this.top = top;
            this.first = first;
            double low = panel.centre();
            double high = panel.centre();
            for (ChartView.Point point :
                    panel.traces().stream().flatMap(t -> t.points().stream()).toList()) {
                low = Math.min(low, Math.min(point.value(), point.lower()));
                high = Math.max(high, Math.max(point.value(), point.upper()));
            }
            double room = high > low ? (high - low) * 0.06 : 1;
            this.least = low - room;
            this.most = high + room;
        }

        private double y(double value) {
            return top + (most - value) / (most - least) * PANEL;
        }

        private void drawn() {
            int inBase = Math.min(view.inBase(), view.before() + view.readings());
            if (inBase > view.before()) {
                double left = x(view.before() - 0.5);
                svg.rect(left, top, x(inBase - 0.5) - left, PANEL, "var(--sheet-2)");
                if (first) {
                    svg.text(
                            WIDTH - RIGHT,
                            top - 9,
                            "shaded: base period, readings 1 to " + view.inBase(),
                            LETTERS,
                            "end",
                            Svg.INK_2,
                            false);
                }
            }
            svg.text(LEFT, top - 9, panel.name(), LETTERS, "start", Svg.INK, true);
            svg.line(LEFT, y(panel.centre()), WIDTH - RIGHT, y(panel.centre()), Svg.INK, 1, Svg.CHAIN);
            label(panel.centre(), "");
            for (ChartView.Trace trace : panel.traces()) {
                limit(trace, ChartView.Point::upper);
                limit(trace, ChartView.Point::lower);
            }
            panel.traces().forEach(this::line);
        }

        private void label(double value, String words) {
            double y = y(value);
            if (labels.stream().anyMatch(taken -> Math.abs(taken[0] - y) < LABELS_APART)) {
                return;
            }
            labels.add(new double[] {y});
            svg.text(
                    LEFT - 8,
                    y + LETTERS / 3,
                    formats.signed(BigDecimal.valueOf(value), panel.decimals()),
                    LETTERS,
                    "end",
                    Svg.INK_2,
                    false);
            if (!words.isEmpty()) {
                svg.text(WIDTH - RIGHT + 8, y + LETTERS / 3, words, LETTERS, "start", Svg.INK_2, false);
            }
        }

        /** A limit that opens as readings gather goes up in steps; one that is the centre itself is none. */
        private void limit(ChartView.Trace trace, ToDoubleFunction<ChartView.Point> of) {
            List<ChartView.Point> points = trace.points();
            if (points.isEmpty() || points.stream().allMatch(point -> of.applyAsDouble(point) == panel.centre())) {
                return;
            }
            StringBuilder path = new StringBuilder("M");
            for (ChartView.Point point : points) {
                double y = y(of.applyAsDouble(point));
                path.append(path.length() == 1 ? "" : "L").append(at(x(point.index() - 0.5), y));
                path.append('L').append(at(x(point.index() + 0.5), y));
            }
            svg.dashed(path.toString(), Svg.INK_2, 1.5, Svg.DASHED);
            label(of.applyAsDouble(points.get(points.size() - 1)), "drift limit");
        }

        private void line(ChartView.Trace trace) {
            List<ChartView.Point> points = trace.points();
            if (points.isEmpty()) {
                return;
            }
            StringBuilder path = new StringBuilder("M");
            points.forEach(
                    point -> path.append(path.length() == 1 ? "" : "L").append(at(x(point.index()), y(point.value()))));
            svg.path(path.toString(), "none", Svg.INK, 1.5);
            boolean before = false;
            for (ChartView.Point point : points) {
                mark(point, !before);
                before = point.alarm();
            }
        }

        private void mark(ChartView.Point point, boolean begins) {
            double x = x(point.index());
            double y = y(point.value());
            boolean last = point.index() == view.before() + view.readings() - 1;
            if (point.alarm()) {
                svg.path("M" + at(x, y + 7) + "l-8 -14h16z", "var(--red)", Svg.SHEET, 1);
                if (begins) {
                    svg.text(x, roomAbove(point, y) ? y - 13 : y + 24, "alarm", LETTERS, "middle", "var(--red)", true);
                }
            } else {
                svg.circle(x, y, last ? 5.5 : 4, last ? Svg.BLUE : Svg.INK);
            }
            if (last && first && !view.newest().isEmpty()) {
                double at = y + LETTERS / 3;
                boolean taken = labels.stream().anyMatch(label -> Math.abs(label[0] - y) < LABELS_APART);
                if (!taken) {
                    svg.text(WIDTH - RIGHT + 8, at, view.newest(), LETTERS, "start", Svg.BLUE, true);
                }
            }
        }

        /** Whether a word above a point stays inside the panel and off the limit it went over. */
        private boolean roomAbove(ChartView.Point point, double y) {
            double limit = y(point.upper());
            return y - 14 - LETTERS > top && (limit < y - 18 - LETTERS || limit > y - 8);
        }
    }

    private static String at(double x, double y) {
        return Svg.n(x) + " " + Svg.n(y);
    }
}
