package org.trammel.shop.web;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Errors of a gauge over the values it was set to: the permissible band about zero, a line through the errors, a point
 * at each, those that are over solid and with their figure. The figures stand in a table beside it.
 */
final class ErrorsDrawing {

    private static final double WIDTH = 700;
    private static final double HEIGHT = 250;
    private static final double LEFT = 84;
    private static final double RIGHT = 22;
    private static final double TOP = 20;
    private static final double BOTTOM = 48;
    private static final double LETTERS = 15;
    /** How much of the height the greatest figure takes, so that no point stands on the edge. */
    private static final double REACH = 0.88;

    private final Formats formats;
    private final ErrorsView view;
    private final Svg svg;
    private final double from;
    private final double to;
    private final double greatest;

    private ErrorsDrawing(Formats formats, ErrorsView view) {
        this.formats = formats;
        this.view = view;
        List<ErrorsView.Point> points = view.points();
        double first = points.get(0).at().doubleValue();
        double last = points.get(points.size() - 1).at().doubleValue();
        double apart = last > first ? (last - first) * 0.06 : 1;
        this.from = first - apart;
        this.to = last + apart;
        this.greatest = points.stream()
                .mapToDouble(p ->
                        Math.max(p.error().abs().doubleValue(), p.permissible().doubleValue()))
                .max()
                .orElseThrow();
        this.svg = Svg.labelled("errors", WIDTH, HEIGHT, view.finding());
    }

    static String of(Formats formats, ErrorsView view) {
        return new ErrorsDrawing(formats, view).drawn();
    }

    private String drawn() {
        band();
        svg.line(LEFT, y(0), WIDTH - RIGHT, y(0), Svg.INK, 1, null);
        svg.line(LEFT, TOP, LEFT, HEIGHT - BOTTOM, Svg.INK, 1, null);
        scale();
        svg.path(
                view.points().stream()
                        .map(p -> place(p.at(), p.error().doubleValue()))
                        .collect(Collectors.joining("L", "M", "")),
                "none",
                Svg.INK,
                2);
        view.points().forEach(this::point);
        values();
        svg.text(
                WIDTH - RIGHT,
                HEIGHT - 6,
                "value set, " + view.unit() + "; error upward: reads too high",
                LETTERS,
                "end",
                Svg.INK_2,
                false);
        return svg.done();
    }

    /** What is permitted between two points lies on the straight line between theirs. */
    private void band() {
        List<ErrorsView.Point> points = view.points();
        StringBuilder edge = new StringBuilder("M");
        ErrorsView.Point first = points.get(0);
        ErrorsView.Point last = points.get(points.size() - 1);
        edge.append(at(LEFT, first.permissible().doubleValue()));
        points.forEach(
                p -> edge.append('L').append(place(p.at(), p.permissible().doubleValue())));
        edge.append('L').append(at(WIDTH - RIGHT, last.permissible().doubleValue()));
        edge.append('L').append(at(WIDTH - RIGHT, -last.permissible().doubleValue()));
        for (int i = points.size() - 1; i >= 0; i--) {
            edge.append('L')
                    .append(place(
                            points.get(i).at(), -points.get(i).permissible().doubleValue()));
        }
        edge.append('L').append(at(LEFT, -first.permissible().doubleValue())).append('z');
        svg.path(edge.toString(), "var(--green-wash)", Svg.INK_3, 1);
    }

    private void scale() {
        BigDecimal permissible = view.points().get(0).permissible();
        if (y(0) - y(permissible.doubleValue()) > LETTERS) {
            written(BigDecimal.ZERO);
        }
        written(permissible);
        written(permissible.negate());
    }

    private void written(BigDecimal error) {
        double at = y(error.doubleValue());
        svg.line(LEFT - 7, at, LEFT, at, Svg.INK, 1, null);
        String figure = error.signum() == 0
                ? "0"
                : formats.signed(error, Math.max(error.stripTrailingZeros().scale(), 0));
        svg.text(LEFT - 11, at + LETTERS / 3, figure, LETTERS, "end", Svg.INK_2, false);
    }

    private void point(ErrorsView.Point p) {
        double x = x(p.at());
        double y = y(p.error().doubleValue());
        if (!p.over()) {
            svg.ring(x, y, 5, Svg.SHEET, Svg.INK, 2);
            return;
        }
        svg.circle(x, y, 6.5, "var(--red)");
        String figure = formats.signed(
                p.error(), Math.max(p.error().stripTrailingZeros().scale(), 0));
        boolean high = p.error().signum() > 0;
        double beside = high ? Math.max(y + 5, TOP + LETTERS) : Math.min(y + 5, HEIGHT - BOTTOM);
        boolean room = x + 12 + Svg.wide(figure, LETTERS) < WIDTH - RIGHT;
        svg.text(room ? x + 12 : x - 12, beside, figure, LETTERS, room ? "start" : "end", "var(--red)", true);
    }

    /** Values below the axis, those left out that another would run into. */
    private void values() {
        double free = 0;
        for (ErrorsView.Point p : view.points()) {
            double x = x(p.at());
            svg.line(x, HEIGHT - BOTTOM, x, HEIGHT - BOTTOM + 6, Svg.INK, 1, null);
            String figure = formats.number(p.at());
            double half = Svg.wide(figure, LETTERS) / 2;
            if (x - half >= free) {
                svg.text(x, HEIGHT - BOTTOM + 6 + LETTERS, figure, LETTERS, "middle", Svg.INK_2, false);
                free = x + half + 6;
            }
        }
    }

    private String place(BigDecimal value, double error) {
        return at(x(value), error);
    }

    private String at(double x, double error) {
        return Svg.n(x) + " " + Svg.n(y(error));
    }

    private double x(BigDecimal value) {
        return LEFT + (value.doubleValue() - from) / (to - from) * (WIDTH - LEFT - RIGHT);
    }

    private double y(double error) {
        double half = (HEIGHT - TOP - BOTTOM) / 2;
        return TOP + half - error / greatest * half * REACH;
    }
}
