package org.trammel.shop.web;

import java.util.ArrayList;
import java.util.List;

/**
 * Readings as dots over one axis: a row for each group, its mean as a tall tick, dots of like value one above the other;
 * limits, where there are any, as tall dashed lines with their word.
 */
final class DotsDrawing {

    private static final double WIDTH = 760;
    private static final double LEFT = 170;
    private static final double RIGHT = 40;
    private static final double TOP = 30;
    private static final double ROW = 58;
    private static final double BOTTOM = 44;
    private static final double LETTERS = 15;
    private static final double RADIUS = 4;
    /** Dots nearer than this stand one above the other. */
    private static final double APART = 8.5;
    /** So many find room above each other; more lie on the topmost. */
    private static final int HIGHEST = 5;

    private static final int LONGEST = 16;

    private final Formats formats;
    private final DotsView view;
    private final RoundScale scale;
    private final Svg svg;

    private DotsDrawing(Formats formats, DotsView view) {
        this.formats = formats;
        this.view = view;
        List<Double> all = new ArrayList<>();
        view.groups().forEach(group -> all.addAll(group.values()));
        if (view.lower() != null) {
            all.add(view.lower());
        }
        if (view.upper() != null) {
            all.add(view.upper());
        }
        double least = all.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double most = all.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        double room = most > least ? (most - least) * 0.05 : Math.max(1e-3, Math.abs(most) * 0.1);
        this.scale = RoundScale.of(least - room, most + room);
        this.svg = Svg.labelled("errors", WIDTH, bottom() + BOTTOM, view.finding());
    }

    static String of(Formats formats, DotsView view) {
        return new DotsDrawing(formats, view).drawn();
    }

    private double bottom() {
        return TOP + view.groups().size() * ROW;
    }

    private double x(double value) {
        return LEFT + scale.share(value) * (WIDTH - LEFT - RIGHT);
    }

    private String drawn() {
        for (int i = 0; i <= scale.steps(); i++) {
            double x = x(scale.at(i));
            svg.line(x, TOP, x, bottom() + 6, "var(--rule)", 1, null);
            svg.text(
                    x,
                    bottom() + 8 + LETTERS,
                    formats.signed(scale.at(i), scale.decimals()),
                    LETTERS,
                    "middle",
                    Svg.INK_2,
                    false);
        }
        svg.text(WIDTH - RIGHT, bottom() + BOTTOM - 4, view.unit(), LETTERS, "end", Svg.INK_2, false);
        svg.line(LEFT, bottom(), WIDTH - RIGHT, bottom(), Svg.INK, 1, null);
        limit(view.lower(), "lower limit");
        limit(view.upper(), "upper limit");
        for (int i = 0; i < view.groups().size(); i++) {
            row(view.groups().get(i), TOP + (i + 1) * ROW);
        }
        return svg.done();
    }

    private void limit(@org.jspecify.annotations.Nullable Double value, String word) {
        if (value != null) {
            svg.line(x(value), TOP - 4, x(value), bottom(), Svg.INK, 2, Svg.DASHED);
            svg.text(x(value), TOP - 10, word, LETTERS, "middle", Svg.INK, false);
        }
    }

    private void row(DotsView.Group group, double base) {
        String name = group.name().length() > LONGEST ? group.name().substring(0, LONGEST - 1) + "…" : group.name();
        svg.text(LEFT - 12, base - 16, name, LETTERS, "end", Svg.INK, true);
        svg.line(LEFT, base, WIDTH - RIGHT, base, "var(--rule-2)", 1, null);
        List<Double> sorted = group.values().stream().sorted().toList();
        double before = Double.NEGATIVE_INFINITY;
        int above = 0;
        for (double value : sorted) {
            double x = x(value);
            above = x - before < APART ? Math.min(HIGHEST - 1, above + 1) : 0;
            before = above == 0 ? x : before;
            svg.circle(above == 0 ? x : before, base - 7 - above * APART, RADIUS, Svg.INK);
        }
        double mean = sorted.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        svg.line(x(mean), base - ROW + 8, x(mean), base + 3, Svg.BLUE, 3, null);
    }
}
