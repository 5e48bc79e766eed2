package org.trammel.shop.web;

import org.jspecify.annotations.Nullable;

/**
 * Bars of counts over the classes of a value, limits as tall dashed lines with word and figure, the mean as a chain line.
 */
final class HistogramDrawing {

    private static final double WIDTH = 760;
    private static final double HEIGHT = 330;
    private static final double LEFT = 56;
    private static final double RIGHT = 40;
    private static final double TOP = 52;
    private static final double BOTTOM = 56;
    private static final double LETTERS = 15;

    private final Formats formats;
    private final HistogramView view;
    private final RoundScale across;
    private final int most;
    private final Svg svg;

    private HistogramDrawing(Formats formats, HistogramView view) {
        this.formats = formats;
        this.view = view;
        double low = view.classes().get(0).from();
        double high = view.classes().get(view.classes().size() - 1).to();
        Double lower = view.lower();
        Double upper = view.upper();
        double least = lower == null ? low : Math.min(low, lower);
        double greatest = upper == null ? high : Math.max(high, upper);
        double room = (greatest - least) * 0.04;
        this.across = RoundScale.of(least - room, greatest + room);
        this.most =
                view.classes().stream().mapToInt(HistogramView.Bar::count).max().orElse(1);
        this.svg = Svg.labelled("errors", WIDTH, HEIGHT, view.finding());
    }

    static String of(Formats formats, HistogramView view) {
        return new HistogramDrawing(formats, view).drawn();
    }

    private double x(double value) {
        return LEFT + across.share(value) * (WIDTH - LEFT - RIGHT);
    }

    private double y(double count) {
        return HEIGHT - BOTTOM - count / Math.max(1, most) * (HEIGHT - TOP - BOTTOM);
    }

    private String drawn() {
        double base = HEIGHT - BOTTOM;
        for (HistogramView.Bar bar : view.classes()) {
            if (bar.count() > 0) {
                String d = "M" + Svg.n(x(bar.from())) + " " + Svg.n(base) + "V" + Svg.n(y(bar.count())) + "H"
                        + Svg.n(x(bar.to())) + "V" + Svg.n(base);
                svg.path(d, "var(--blue-wash)", Svg.INK, 1.5);
                if (x(bar.to()) - x(bar.from()) >= Svg.wide(String.valueOf(bar.count()), LETTERS) + 4
                        && base - y(bar.count()) >= LETTERS + 6) {
                    svg.text(
                            (x(bar.from()) + x(bar.to())) / 2,
                            y(bar.count()) + LETTERS + 2,
                            String.valueOf(bar.count()),
                            LETTERS,
                            "middle",
                            Svg.INK,
                            false);
                }
            }
        }
        svg.line(LEFT, base, WIDTH - RIGHT, base, Svg.INK, 1, null);
        for (int i = 0; i <= across.steps(); i++) {
            double x = x(across.at(i));
            svg.line(x, base, x, base + 6, Svg.INK, 1, null);
            svg.text(
                    x,
                    base + 8 + LETTERS,
                    formats.signed(across.at(i), across.decimals()),
                    LETTERS,
                    "middle",
                    Svg.INK_2,
                    false);
        }
        svg.text(WIDTH - RIGHT, HEIGHT - 10, view.unit(), LETTERS, "end", Svg.INK_2, false);
        limit(view.lower(), "lower limit");
        limit(view.upper(), "upper limit");
        svg.line(x(view.mean()), TOP - 6, x(view.mean()), base, Svg.BLUE, 2, Svg.CHAIN);
        svg.text(
                x(view.mean()),
                TOP - 32,
                "mean " + formats.signed(view.mean(), view.decimals()),
                LETTERS,
                "middle",
                Svg.BLUE,
                true);
        return svg.done();
    }

    private void limit(@Nullable Double value, String word) {
        if (value != null) {
            svg.line(x(value), TOP - 4, x(value), HEIGHT - BOTTOM, Svg.INK, 2, Svg.DASHED);
            double half = Svg.wide(word, LETTERS) / 2;
            double middle = Math.max(half + 4, Math.min(WIDTH - half - 4, x(value)));
            svg.text(middle, TOP - 12, word, LETTERS, "middle", Svg.INK, false);
        }
    }
}
