package org.trammel.shop.web;

/** Values one after the other about their middle; nothing is judged by it, so no limit is drawn. */
final class TrendDrawing {

    private static final double WIDTH = 700;
    private static final double HEIGHT = 120;
    private static final double LEFT = 60;
    private static final double RIGHT = 620;
    private static final double TOP = 16;
    private static final double BOTTOM = 100;

    private TrendDrawing() {}

    static String of(Formats formats, TrendView view) {
        Svg svg = Svg.labelled("trend", WIDTH, HEIGHT, view.finding());
        double least =
                view.values().stream().mapToDouble(Double::doubleValue).min().orElse(0);
        double most =
                view.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        double mean = view.values().stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElse(0);
        double span = Math.max(most - least, 1e-9);
        double step = (RIGHT - LEFT) / Math.max(1, view.values().size() - 1);
        double middle = y(mean, least, span);
        svg.line(LEFT, middle, RIGHT, middle, Svg.INK_3, 1, Svg.CHAIN);
        svg.text(LEFT - 8, middle + 4, formats.signed(mean, 2), 12, "end", Svg.INK_2, false);
        if (Math.abs(middle - TOP) > 16) {
            svg.text(LEFT - 8, TOP + 4, formats.signed(most, 2), 12, "end", Svg.INK_2, false);
        }
        if (Math.abs(middle - BOTTOM) > 16) {
            svg.text(LEFT - 8, BOTTOM + 4, formats.signed(least, 2), 12, "end", Svg.INK_2, false);
        }
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < view.values().size(); i++) {
            path.append(i == 0 ? "M" : "L")
                    .append(Svg.n(LEFT + i * step))
                    .append(' ')
                    .append(Svg.n(y(view.values().get(i), least, span)));
        }
        svg.path(path.toString(), "none", Svg.INK, 1.4);
        for (int i = 0; i < view.values().size(); i++) {
            boolean ours = view.last() && i == view.values().size() - 1;
            double x = LEFT + i * step;
            double y = y(view.values().get(i), least, span);
            svg.circle(x, y, ours ? 5 : 4, ours ? Svg.BLUE : Svg.INK);
            if (ours) {
                svg.text(x + 10, y + 5, view.frames().get(i), 14, "start", Svg.BLUE, true);
            }
        }
        return svg.done();
    }

    private static double y(double value, double least, double span) {
        return BOTTOM - (value - least) / span * (BOTTOM - TOP);
    }
}
