package org.trammel.shop.web;

import java.util.Locale;
import java.util.stream.Collectors;
import org.trammel.calc.drawing.DrawnSheet;
import org.trammel.calc.drawing.Mark;
import org.trammel.calc.drawing.Mark.Fill;
import org.trammel.calc.drawing.Mark.Hand;
import org.trammel.calc.drawing.Pen;
import org.trammel.calc.geometry.PaperShape.Spot;

/** A drawn sheet as a picture on a page: ten units of it are a millimetre of the paper. */
final class SheetPicture {

    static final double PER_MM = 10;

    private final DrawnSheet sheet;
    private final Svg svg;

    private SheetPicture(String css, String what, DrawnSheet sheet) {
        this.sheet = sheet;
        this.svg = Svg.labelled(
                css, sheet.width_mm() * PER_MM, sheet.height_mm() * PER_MM, (what + " " + sheet.finding()).strip());
    }

    /**
     * The picture.
     *
     * @param css its class
     * @param what said before its finding to those who hear it
     */
    static String of(String css, String what, DrawnSheet sheet) {
        SheetPicture picture = new SheetPicture(css, what, sheet);
        sheet.marks().forEach(picture::mark);
        return picture.svg.done();
    }

    private void mark(Mark mark) {
        if (mark instanceof Mark.Path path) {
            String d = path.spots().stream().map(this::place).collect(Collectors.joining("L", "M", ""));
            Pen pen = path.pen();
            svg.path(
                    path.closed() ? d + "z" : d,
                    fill(path.fill()),
                    pen == null ? null : ink(pen),
                    pen == null ? 0 : pen.width_mm() * PER_MM,
                    pen == null ? null : strokes(pen));
        } else if (mark instanceof Mark.Ring ring) {
            svg.ring(
                    x(ring.centre()),
                    y(ring.centre()),
                    ring.radius_mm() * PER_MM,
                    fill(ring.fill()),
                    ink(ring.pen()),
                    ring.pen().width_mm() * PER_MM);
        } else if (mark instanceof Mark.Words words) {
            words(words);
        }
    }

    private void words(Mark.Words words) {
        String anchor = words.anchor().name().toLowerCase(Locale.ROOT);
        String ink = words.hand() == Hand.CAPTION ? Svg.INK_3 : Svg.INK;
        boolean bold = words.hand() == Hand.BOLD;
        double size = words.size_mm() * PER_MM;
        if (words.turn_rad() == 0) {
            svg.text(x(words.at()), y(words.at()), words.words(), size, anchor, ink, bold);
        } else {
            svg.turned(
                    x(words.at()), y(words.at()), -Math.toDegrees(words.turn_rad()), words.words(), size, anchor, ink);
        }
    }

    private static String fill(Fill fill) {
        return switch (fill) {
            case NONE -> "none";
            case PAPER -> Svg.SHEET;
            case INK -> Svg.INK;
        };
    }

    private static String ink(Pen pen) {
        return switch (pen) {
            case OUTLINE -> Svg.INK;
            case EMPHASIS -> Svg.BLUE;
            default -> Svg.INK_3;
        };
    }

    private static String strokes(Pen pen) {
        return pen.strokes_mm().stream().map(each -> Svg.n(each * PER_MM)).collect(Collectors.joining(" "));
    }

    private String place(Spot spot) {
        return Svg.n(x(spot)) + " " + Svg.n(y(spot));
    }

    private double x(Spot spot) {
        return spot.x_mm() * PER_MM;
    }

    private double y(Spot spot) {
        return (sheet.height_mm() - spot.y_mm()) * PER_MM;
    }
}
