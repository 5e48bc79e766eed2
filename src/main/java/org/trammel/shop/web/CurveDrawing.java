package org.trammel.shop.web;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** A curve between two axes of round figures: one wide line, its marks with a chain line down to the axis. */
final class CurveDrawing {

    private static final double WIDTH = 640;
    private static final double HEIGHT = 300;
    private static final double LEFT = 58;
    private static final double RIGHT = 24;
    private static final double TOP = 34;
    private static final double BOTTOM = 50;
    private static final double SIZE = 14;
    /** A curve flatter than this share of its height is not blown up to fill the sheet. */
    private static final double LEAST_SPAN = 0.1;

    private final Formats formats;
    private final CurveView view;
    private final RoundScale across;
    private final RoundScale upward;
    private final Svg svg;

    private CurveDrawing(Formats formats, CurveView view) {
        this.formats = formats;
        this.view = view;
        this.across = scale(view.points(), CurveView.Point::x, 0);
        this.upward = scale(view.points(), CurveView.Point::y, LEAST_SPAN);
        this.svg = Svg.labelled("curve", WIDTH, HEIGHT, view.finding());
    }

    static String of(Formats formats, CurveView view) {
        return new CurveDrawing(formats, view).drawn();
    }

    private static RoundScale scale(
            List<CurveView.Point> points, ToDoubleFunction<CurveView.Point> value, double leastSpan) {
        double least = points.stream().mapToDouble(value).min().orElse(0);
        double most = points.stream().mapToDouble(value).max().orElse(1);
        double missing = Math.max(leastSpan * Math.abs(most), 1e-6) - (most - least);
        return missing > 0 ? RoundScale.of(least - missing / 2, most + missing / 2) : RoundScale.of(least, most);
    }

    private String drawn() {
        for (int i = 0; i <= across.steps(); i++) {
            double value = across.from() + i * across.step();
            svg.line(x(value), HEIGHT - BOTTOM, x(value), HEIGHT - BOTTOM + 6, Svg.INK, 1, null);
            svg.text(
                    x(value),
                    HEIGHT - BOTTOM + 22,
                    formats.number(value, across.decimals()),
                    SIZE,
                    "middle",
                    Svg.INK_2,
                    false);
        }
        for (int i = 0; i <= upward.steps(); i++) {
            double value = upward.from() + i * upward.step();
            svg.line(LEFT, y(value), WIDTH - RIGHT, y(value), "var(--rule)", 1, null);
            svg.text(LEFT - 8, y(value) + 5, formats.number(value, upward.decimals()), SIZE, "end", Svg.INK_2, false);
        }
        svg.line(LEFT, HEIGHT - BOTTOM, WIDTH - RIGHT, HEIGHT - BOTTOM, Svg.INK, 1, null);
        svg.text(WIDTH - RIGHT, HEIGHT - 8, view.across(), SIZE, "end", Svg.INK_2, false);
        svg.text(4, 16, view.upward(), SIZE, "start", Svg.INK_2, false);
        StringBuilder path = new StringBuilder();
        for (CurveView.Point point : view.points()) {
            path.append(path.isEmpty() ? "M" : "L")
                    .append(Svg.n(x(point.x())))
                    .append(' ')
                    .append(Svg.n(y(point.y())));
        }
        svg.path(path.toString(), "none", Svg.INK, 2);
        view.marks().forEach(this::mark);
        return svg.done();
    }

    private void mark(CurveView.Mark mark) {
        double x = x(mark.x());
        double y = y(mark.y());
        svg.line(x, y, x, HEIGHT - BOTTOM, Svg.INK, 1, Svg.CHAIN);
        svg.circle(x, y, 4, Svg.INK);
        double half = Svg.wide(mark.name(), SIZE) / 2;
        double middle = Math.max(LEFT + half, Math.min(WIDTH - RIGHT - half, x));
        svg.text(middle, Math.max(TOP - 4, y - 12), mark.name(), SIZE, "middle", Svg.INK, true);
    }

    private double x(double value) {
        return LEFT + across.share(value) * (WIDTH - LEFT - RIGHT);
    }

    private double y(double value) {
        return HEIGHT - BOTTOM - upward.share(value) * (HEIGHT - TOP - BOTTOM);
    }
}
