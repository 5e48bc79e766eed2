package org.trammel.shop.web;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.metrology.Limits;
import org.trammel.calc.metrology.ToleranceScale;

/**
 * The tolerance scale: dashed axis, wide bar between the limits, tall ticks at them, chain line at the nominal, green
 * field where a reading conforms, hatched guard band on both sides of each limit, scriber point at the reading.
 */
final class ScaleDrawing {

    /** Sizes of one variant: the tall one stands alone, the small one in a row of a table. */
    private record Size(
            String css,
            double width,
            double height,
            double margin,
            double axis,
            double field,
            double tick,
            double figures) {}

    private static final Size TALL = new Size("scale", 700, 88, 26, 52, 22, 30, 18);
    private static final Size SMALL = new Size("scale small", 132, 44, 8, 25, 12, 16, 13);

    private final Formats formats;
    private final ScaleView view;
    private final Size size;
    private final ToleranceScale places;
    private final Svg svg;
    private final List<double[]> written = new ArrayList<>();

    private ScaleDrawing(Formats formats, ScaleView view, Size size) {
        this.formats = formats;
        this.view = view;
        this.size = size;
        this.places = ToleranceScale.of(
                new Limits(view.lower(), view.upper()),
                view.nominal(),
                view.guard() == null ? BigDecimal.ZERO : view.guard(),
                view.value());
        this.svg = Svg.labelled(size.css(), size.width(), size.height(), finding());
    }

    static String tall(Formats formats, ScaleView view) {
        return new ScaleDrawing(formats, view, TALL).drawn();
    }

    static String small(Formats formats, ScaleView view) {
        return new ScaleDrawing(formats, view, SMALL).drawn();
    }

    private boolean isSmall() {
        return size == SMALL;
    }

    private String drawn() {
        double y = size.axis();
        places.conforming().ifPresent(field -> field(field, "var(--green-wash)"));
        places.lowerBand().ifPresent(this::band);
        places.upperBand().ifPresent(this::band);
        double margin = isSmall() ? 4 : size.margin();
        svg.line(margin, y, size.width() - margin, y, Svg.INK, 1, isSmall() ? "6 3" : Svg.DASHED);
        double left = x(places.lowerLimit().orElse(0.0));
        double right = x(places.upperLimit().orElse(1.0));
        svg.line(left, y, right, y, Svg.INK, isSmall() ? 3 : 4, null);
        limit(places.lowerLimit(), view.lower());
        limit(places.upperLimit(), view.upper());
        if (!isSmall()) {
            boolean unitWritten = nominal();
            if (view.sided()) {
                side(size.margin(), "start", "non-drive");
                side(size.width() - size.margin(), "end", "drive");
            }
            if (!unitWritten) {
                svg.text(size.width() - 2, y - 8, view.unit(), 16, "end", Svg.INK_2, false);
            }
        }
        places.point().ifPresent(this::point);
        return svg.done();
    }

    private void field(ToleranceScale.Field field, String fill) {
        double from = x(Math.max(0, field.from()));
        double to = x(Math.min(1, field.to()));
        svg.rect(from, size.axis() - size.field(), to - from, size.field(), fill);
    }

    private void band(ToleranceScale.Field band) {
        field(band, "var(--amber-wash)");
        field(band, "url(#h-amber)");
    }

    private void limit(Optional<Double> place, @Nullable BigDecimal limit) {
        if (place.isEmpty() || limit == null) {
            return;
        }
        double at = x(place.get());
        svg.line(
                at,
                size.axis() - size.tick(),
                at,
                size.axis() + (isSmall() ? 5 : 11),
                Svg.INK,
                isSmall() ? 2 : 2.5,
                null);
        write(at, figure(limit), size.figures(), isSmall() ? Svg.INK_2 : Svg.INK, !isSmall());
    }

    /** Draws the nominal; tells whether there was room to write it, with the unit. */
    private boolean nominal() {
        if (places.nominal().isEmpty() || view.nominal() == null) {
            return false;
        }
        double at = x(places.nominal().get());
        svg.line(at, size.axis() - 15, at, size.axis() + 11, Svg.INK, 1, Svg.CHAIN);
        String words = view.unit().isEmpty() ? figure(view.nominal()) : figure(view.nominal()) + "\u00a0" + view.unit();
        return write(at, words, size.figures(), Svg.INK_2, false);
    }

    private boolean write(double middle, String words, double height, String fill, boolean bold) {
        double half = Svg.wide(words, height) / 2;
        double at = Math.max(half, Math.min(size.width() - half, middle));
        if (!free(at - half, at + half)) {
            return false;
        }
        svg.text(at, size.axis() + height + (isSmall() ? 4 : 11), words, height, "middle", fill, bold);
        return true;
    }

    private void side(double at, String anchor, String word) {
        double width = Svg.wide(word, 16);
        if (anchor.equals("start") ? free(at, at + width) : free(at - width, at)) {
            svg.aside(at, size.axis() + size.figures() + 11, word, 16, anchor);
        }
    }

    /** Takes a stretch of the line of figures if nothing is written there. */
    private boolean free(double from, double to) {
        double apart = isSmall() ? 2 : 6;
        boolean free = written.stream().allMatch(one -> to + apart <= one[0] || from - apart >= one[1]);
        if (free) {
            written.add(new double[] {from, to});
        }
        return free;
    }

    private void point(ToleranceScale.Point point) {
        double at = x(point.at());
        double y = size.axis();
        double half = isSmall() ? 6.5 : 11;
        double high = isSmall() ? 18 : 27;
        String path =
                "M" + Svg.n(at) + " " + Svg.n(y) + "l" + Svg.n(-half) + " " + Svg.n(-high) + "h" + Svg.n(2 * half);
        svg.path(path + "z", colour(view.verdict()), Svg.SHEET, 1);
        if (point.beyond() != 0) {
            // Two slanted cuts: the axis is cut off here, the reading lies further out than it is drawn.
            double cut = point.beyond() < 0 ? at + half + 4 : at - half - 10;
            svg.line(cut, y + 7, cut + 4, y - 7, Svg.INK, 1.5, null);
            svg.line(cut + 5, y + 7, cut + 9, y - 7, Svg.INK, 1.5, null);
        }
    }

    private String finding() {
        StringBuilder words = new StringBuilder("Limits");
        if (view.lower() != null) {
            words.append(view.upper() == null ? " at least " : " ").append(written(view.lower(), view.decimals()));
        }
        if (view.upper() != null) {
            words.append(view.lower() == null ? " at most " : " to ").append(written(view.upper(), view.decimals()));
        }
        BigDecimal guard = view.guard();
        if (guard != null && guard.signum() > 0) {
            words.append(", guard band ").append(written(guard, guard.scale()));
        }
        BigDecimal value = view.value();
        words.append(value == null ? ", nothing read" : ", reading " + written(value, value.scale()));
        if (view.verdict() != null) {
            words.append(", ").append(view.verdict().replace('-', ' '));
        }
        return words.toString();
    }

    private String written(BigDecimal figure, int decimals) {
        return formats.with(figure, decimals, view.unit());
    }

    /** Limits about zero say their sign, lengths do not. */
    private String figure(BigDecimal value) {
        if (value.signum() == 0) {
            return "0";
        }
        BigDecimal lower = view.lower();
        boolean aboutZero = lower != null && lower.signum() < 0;
        return aboutZero ? formats.signed(value, view.decimals()) : formats.number(value, view.decimals());
    }

    private double x(double place) {
        return size.margin() + place * (size.width() - 2 * size.margin());
    }

    static String colour(@Nullable String verdict) {
        if (verdict == null) {
            return Svg.BLUE;
        }
        return switch (verdict) {
            case "conforming" -> "var(--green)";
            case "undecided" -> "var(--amber-ink)";
            case "not-conforming" -> "var(--red)";
            default -> Svg.BLUE;
        };
    }
}
