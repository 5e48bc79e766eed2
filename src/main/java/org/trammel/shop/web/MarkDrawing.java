package org.trammel.shop.web;

import org.trammel.calc.marks.PunchMark;
import org.trammel.calc.marks.ScribeMark;

/** Marks that tell frames, people and metals apart without reading. */
final class MarkDrawing {

    private MarkDrawing() {}

    /** The scribe mark: a line stepped off from a punch in four equal lengths, with a cut or none at each. */
    static String scribe(ScribeMark mark) {
        Svg svg = Svg.labelled("scr", 46, 30, "scribe mark: " + mark.words());
        svg.circle(4.6, 15, 3.8, "currentColor");
        StringBuilder path = new StringBuilder("M5 15H46");
        for (int step = 0; step < mark.cuts().size(); step++) {
            String x = Svg.n(14 + step * 8.5);
            switch (mark.cuts().get(step)) {
                case UP -> path.append('M').append(x).append(" 15V2");
                case DOWN -> path.append('M').append(x).append(" 15V28");
                case THROUGH -> path.append('M').append(x).append(" 2V28");
                case NONE -> {}
            }
        }
        return svg.path(path.toString(), "none", "currentColor", 4.2).done();
    }

    /** A worker's punch: a dot with three short cuts. It stands beside the name, never for it. */
    static String punch(PunchMark mark) {
        Svg svg = Svg.silent("punch", 32, 32).circle(16, 16, 3.6, "currentColor");
        StringBuilder path = new StringBuilder();
        for (int place : mark.places()) {
            double sine = Math.sin(place * 2 * Math.PI / PunchMark.PLACES);
            double cosine = Math.cos(place * 2 * Math.PI / PunchMark.PLACES);
            path.append('M').append(Svg.n(16 + 7.5 * sine)).append(' ').append(Svg.n(16 - 7.5 * cosine));
            path.append('L').append(Svg.n(16 + 14 * sine)).append(' ').append(Svg.n(16 - 14 * cosine));
        }
        return svg.path(path.toString(), "none", "currentColor", 4).done();
    }

    /** The metal by pattern: stripes for aluminium, dots for steel, solid for titanium, empty if it is none of them. */
    static String swatch(String metal) {
        String fill = metal.startsWith("AL")
                ? "url(#p-aluminium)"
                : metal.startsWith("ST") ? "url(#p-steel)" : metal.startsWith("TI") ? Svg.INK : Svg.SHEET;
        return Svg.silent("metal", 64, 18)
                .rect(0, 0, 64, 18, fill)
                .path("M.75.75h62.5v16.5H.75z", "none", Svg.INK, 1.5)
                .done();
    }

    /** Three arcs stepped off on a centre line, under the balloon of the plate. */
    static String steppedOff() {
        Svg svg = Svg.silent("stepoff", 64, 104);
        svg.line(32, 0, 32, 104, "var(--on-plate)", 1, "18 4 2 4");
        for (int arc = 0; arc < 3; arc++) {
            double y = 20 + arc * 26;
            svg.path("M14 " + Svg.n(y) + "A46 46 0 0 0 50 " + Svg.n(y), "none", "var(--on-plate)", 1);
        }
        return svg.done();
    }

    /** Strokes side by side, the fifth across the four before it; more than twenty are drawn as twenty. */
    static String tally(int figure) {
        int strokes = Math.max(0, Math.min(20, figure));
        int groups = (strokes + 4) / 5;
        Svg svg = Svg.silent("strokes", Math.max(1, groups) * 30, 18);
        for (int stroke = 0; stroke < strokes; stroke++) {
            double start = stroke / 5 * 30.0;
            if (stroke % 5 == 4) {
                svg.line(start, 15, start + 23, 3, "currentColor", 2, null);
            } else {
                double at = start + 2 + stroke % 5 * 6;
                svg.line(at, 2, at, 16, "currentColor", 2, null);
            }
        }
        return svg.done();
    }

    /** A characteristic's letter in its flag with a cut corner. */
    static String letter(String letter) {
        return Svg.silent("letter", 64, 64)
                .path("M2 2h40l20 20v40H2z", "none", "currentColor", 3)
                .text(32, 43, letter, 32, "middle", "currentColor", true)
                .done();
    }
}
