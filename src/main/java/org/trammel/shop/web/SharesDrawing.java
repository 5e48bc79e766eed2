package org.trammel.shop.web;

/** Shares from none to all: a point for each on a thin line from end to end of its interval, the figure at its right. */
final class SharesDrawing {

    private static final double WIDTH = 760;
    private static final double LEFT = 250;
    private static final double RIGHT = 70;
    private static final double TOP = 12;
    private static final double ROW = 32;
    private static final double BOTTOM = 42;
    private static final double LETTERS = 15;
    private static final int LONGEST = 26;

    private final Formats formats;
    private final SharesView view;
    private final Svg svg;

    private SharesDrawing(Formats formats, SharesView view) {
        this.formats = formats;
        this.view = view;
        this.svg = Svg.labelled("errors", WIDTH, bottom() + BOTTOM, view.finding());
    }

    static String of(Formats formats, SharesView view) {
        return new SharesDrawing(formats, view).drawn();
    }

    private double bottom() {
        return TOP + view.rows().size() * ROW;
    }

    private static double x(double share) {
        return LEFT + share * (WIDTH - LEFT - RIGHT);
    }

    private String drawn() {
        for (int i = 0; i <= 4; i++) {
            double x = x(i / 4.0);
            svg.line(x, TOP, x, bottom() + 6, "var(--rule)", 1, null);
            svg.text(x, bottom() + 8 + LETTERS, String.valueOf(25 * i), LETTERS, "middle", Svg.INK_2, false);
        }
        svg.line(LEFT, bottom(), x(1), bottom(), Svg.INK, 1, null);
        svg.text(x(1), bottom() + BOTTOM - 2, "of 100 frames", LETTERS, "end", Svg.INK_2, false);
        double y = TOP + ROW / 2;
        for (SharesView.Row row : view.rows()) {
            String name = row.name().length() > LONGEST ? row.name().substring(0, LONGEST - 1) + "…" : row.name();
            svg.text(LEFT - 12, y + 5, name, LETTERS, "end", Svg.INK, false);
            svg.line(x(row.low()), y, x(row.high()), y, Svg.INK, 2, null);
            svg.line(x(row.low()), y - 6, x(row.low()), y + 6, Svg.INK, 2, null);
            svg.line(x(row.high()), y - 6, x(row.high()), y + 6, Svg.INK, 2, null);
            svg.circle(x(row.share()), y, 6, Svg.BLUE);
            svg.text(WIDTH - RIGHT + 14, y + 5, formats.number(100 * row.share(), 1), LETTERS, "start", Svg.INK, true);
            y += ROW;
        }
        return svg.done();
    }
}
