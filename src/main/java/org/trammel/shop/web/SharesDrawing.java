package org.trammel.shop.web;

import java.util.ArrayList;
import java.util.List;

/** Shares from none to all: a point for each on a thin line from end to end of its interval, the figure at its right. */
final class SharesDrawing {

    private static final double WIDTH = 760;
    private static final double LEFT = 250;
    private static final double RIGHT = 70;
    private static final double TOP = 12;
    private static final double ROW = 32;
    private static final double BOTTOM = 42;
    private static final double LETTERS = 15;
    private static final double ROOM = LEFT - 24;
    private static final double LINE = 17;

    private final Formats formats;
    private final SharesView view;
    private final Svg svg;
    /** As high as the longest name wants it. */
    private final double row;

    private SharesDrawing(Formats formats, SharesView view) {
        this.formats = formats;
        this.view = view;
        this.row = ROW
                + LINE
                        * (view.rows().stream()
                                        .mapToInt(each -> lines(each.name()).size())
                                        .max()
                                        .orElse(1)
                                - 1);
        this.svg = Svg.labelled("errors", WIDTH, bottom() + BOTTOM, view.finding());
    }

    static String of(Formats formats, SharesView view) {
        return new SharesDrawing(formats, view).drawn();
    }

    private double bottom() {
        return TOP + view.rows().size() * row;
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
        double y = TOP + row / 2;
        for (SharesView.Row each : view.rows()) {
            List<String> name = lines(each.name());
            double at = y + 5 - LINE * (name.size() - 1) / 2;
            for (String line : name) {
                svg.text(LEFT - 12, at, line, LETTERS, "end", Svg.INK, false);
                at += LINE;
            }
            svg.line(x(each.low()), y, x(each.high()), y, Svg.INK, 2, null);
            svg.line(x(each.low()), y - 6, x(each.low()), y + 6, Svg.INK, 2, null);
            svg.line(x(each.high()), y - 6, x(each.high()), y + 6, Svg.INK, 2, null);
            svg.circle(x(each.share()), y, 6, Svg.BLUE);
            svg.text(WIDTH - RIGHT + 14, y + 5, formats.number(100 * each.share(), 1), LETTERS, "start", Svg.INK, true);
            y += row;
        }
        return svg.done();
    }

    /** A name goes on in the next line where it is too wide, and is never cut. */
    private static List<String> lines(String name) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : name.split(" ")) {
            if (!line.isEmpty() && Svg.wide(line + " " + word, LETTERS) > ROOM) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
