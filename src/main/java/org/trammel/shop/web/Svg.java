package org.trammel.shop.web;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A drawing as text: coordinates to a tenth, colours as tokens so that the night sheet and the print follow, text
 * escaped.
 */
final class Svg {

    static final String INK = "var(--ink)";
    static final String INK_2 = "var(--ink-2)";
    static final String INK_3 = "var(--ink-3)";
    static final String SHEET = "var(--sheet)";
    static final String BLUE = "var(--blue)";
    static final String PLATE = "var(--plate)";
    static final String PLATE_EDGE = "var(--plate-edge)";

    /** Work to come, hidden edges. */
    static final String DASHED = "8 4";
    /** Centre lines, datums, nominals. */
    static final String CHAIN = "10 3 2 3";

    /** B612 is this wide on average, in parts of its size; bold a little wider. */
    private static final double ADVANCE = 0.6;

    private final StringBuilder out = new StringBuilder(600);

    private Svg() {}

    /** A drawing with a finding that is read out. */
    static Svg labelled(String css, double width, double height, String finding) {
        Svg svg = new Svg();
        svg.out
                .append("<svg class=\"")
                .append(css)
                .append("\" viewBox=\"0 0 ")
                .append(n(width))
                .append(' ');
        svg.out
                .append(n(height))
                .append("\" role=\"img\" aria-label=\"")
                .append(escaped(finding))
                .append("\">");
        return svg;
    }

    /** A drawing beside words that say the same. */
    static Svg silent(String css, double width, double height) {
        Svg svg = new Svg();
        svg.out
                .append("<svg class=\"")
                .append(css)
                .append("\" viewBox=\"0 0 ")
                .append(n(width))
                .append(' ');
        svg.out.append(n(height)).append("\" aria-hidden=\"true\">");
        return svg;
    }

    Svg line(double x1, double y1, double x2, double y2, String stroke, double width, @Nullable String dash) {
        out.append("<path d=\"M")
                .append(n(x1))
                .append(' ')
                .append(n(y1))
                .append('L')
                .append(n(x2))
                .append(' ');
        out.append(n(y2))
                .append("\" stroke=\"")
                .append(stroke)
                .append("\" stroke-width=\"")
                .append(n(width));
        out.append('"');
        if (dash != null) {
            out.append(" stroke-dasharray=\"").append(dash).append('"');
        }
        out.append("/>");
        return this;
    }

    Svg rect(double x, double y, double width, double height, String fill) {
        if (width > 0 && height > 0) {
            out.append("<path d=\"M")
                    .append(n(x))
                    .append(' ')
                    .append(n(y))
                    .append('h')
                    .append(n(width))
                    .append('v');
            out.append(n(height))
                    .append('h')
                    .append(n(-width))
                    .append("z\" fill=\"")
                    .append(fill)
                    .append("\"/>");
        }
        return this;
    }

    Svg path(String d, String fill, @Nullable String stroke, double width) {
        return path(d, fill, stroke, width, null);
    }

    Svg path(String d, String fill, @Nullable String stroke, double width, @Nullable String dash) {
        out.append("<path d=\"").append(d).append("\" fill=\"").append(fill).append('"');
        if (stroke != null) {
            out.append(" stroke=\"")
                    .append(stroke)
                    .append("\" stroke-width=\"")
                    .append(n(width))
                    .append('"');
        }
        if (dash != null && !dash.isEmpty()) {
            out.append(" stroke-dasharray=\"").append(dash).append('"');
        }
        out.append("/>");
        return this;
    }

    /** An open line that is not drawn through. */
    Svg dashed(String d, String stroke, double width, String dash) {
        out.append("<path d=\"").append(d).append("\" fill=\"none\" stroke=\"").append(stroke);
        out.append("\" stroke-width=\"").append(n(width)).append("\" stroke-dasharray=\"");
        out.append(dash).append("\"/>");
        return this;
    }

    Svg circle(double x, double y, double r, String fill) {
        out.append("<circle cx=\"")
                .append(n(x))
                .append("\" cy=\"")
                .append(n(y))
                .append("\" r=\"")
                .append(n(r));
        out.append("\" fill=\"").append(fill).append("\"/>");
        return this;
    }

    Svg ring(double x, double y, double r, String fill, String stroke, double width) {
        out.append("<circle cx=\"")
                .append(n(x))
                .append("\" cy=\"")
                .append(n(y))
                .append("\" r=\"")
                .append(n(r));
        out.append("\" fill=\"").append(fill).append("\" stroke=\"").append(stroke);
        out.append("\" stroke-width=\"").append(n(width)).append("\"/>");
        return this;
    }

    /** Text turned clockwise about its point by so many degrees; anchor is start, middle or end. */
    Svg turned(double x, double y, double degrees, String words, double size, String anchor, String fill) {
        out.append("<g transform=\"translate(")
                .append(n(x))
                .append(' ')
                .append(n(y))
                .append(") rotate(");
        out.append(n(degrees)).append(")\">");
        text(0, 0, words, size, anchor, fill, false);
        out.append("</g>");
        return this;
    }

    /** Text; anchor is start, middle or end. */
    Svg text(double x, double y, String words, double size, String anchor, String fill, boolean bold) {
        out.append("<text x=\"")
                .append(n(x))
                .append("\" y=\"")
                .append(n(y))
                .append("\" font-size=\"")
                .append(n(size));
        out.append("\" text-anchor=\"")
                .append(anchor)
                .append("\" fill=\"")
                .append(fill)
                .append('"');
        if (bold) {
            out.append(" font-weight=\"700\"");
        }
        out.append('>').append(escaped(words)).append("</text>");
        return this;
    }

    /** Text that a small screen leaves out, because something else says it too. */
    Svg aside(double x, double y, String words, double size, String anchor) {
        out.append("<g class=\"aside\">");
        text(x, y, words, size, anchor, INK_2, false);
        out.append("</g>");
        return this;
    }

    String done() {
        return out.append("</svg>").toString();
    }

    /** About how wide a text of this size is. */
    static double wide(String words, double size) {
        return words.length() * size * ADVANCE;
    }

    static String n(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        text = text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
        return text.equals("-0") ? "0" : text;
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
