package org.trammel.shop.designs;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.geometry.PaperShape.Spot;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.PdfSheet;
import org.trammel.shop.web.PdfSheet.Anchor;
import org.trammel.shop.web.PdfSheet.Pen;

/** A strip at full size, its words again and again along it, so that they stand on every sheet it takes. */
final class StripDrawing {

    private static final Color FAINT = new Color(200, 200, 200);
    private static final double MARK_MM = 2.4;
    /** Words come again after so much, which is less than a sheet shows. */
    private static final double AGAIN_MM = 120;

    private static final double FIRST_MM = 62;

    private final PdfSheet sheet;
    private final Formats formats;
    private final TubeStrip strip;
    private final double x0;
    private final double y0;

    /** At a place of the sheet, in its millimetres; that of the strip's own lower left corner. */
    StripDrawing(PdfSheet sheet, Formats formats, TubeStrip strip, double x0_mm, double y0_mm) {
        this.sheet = sheet;
        this.formats = formats;
        this.strip = strip;
        this.x0 = x0_mm;
        this.y0 = y0_mm;
    }

    void draw(String frame, String notForWork) {
        List<Double> rows = new ArrayList<>();
        for (double y = FIRST_MM; y < strip.height_mm() - FIRST_MM; y += AGAIN_MM) {
            rows.add(y);
        }
        if (!notForWork.isEmpty()) {
            rows.forEach(y -> sheet.turned(
                    x0 + strip.width_mm() / 2,
                    y0 + y + 40,
                    Math.toRadians(12),
                    notForWork,
                    fitting(notForWork, strip.width_mm() - 14, 13),
                    Anchor.MIDDLE,
                    true,
                    FAINT));
        }
        strip.first().marks().forEach(mark -> {
            upright(mark.at_mm(), Pen.CHAIN);
            rows.forEach(y -> along(mark.at_mm() + 1 + MARK_MM * 0.75, y, mark.name(), false));
        });
        upright(0, Pen.NARROW);
        upright(strip.width_mm(), Pen.NARROW);
        double joining = strip.first().joining_mm();
        upright(joining, Pen.NARROW);
        String joins = "line joining both ends, " + formats.with(strip.along_mm(), 1, "mm") + " of tube left on it";
        rows.forEach(y -> {
            along(joining + 2 + 2 * MARK_MM * 0.75, y, joins, true);
            name(frame, strip.first().tube(), y);
        });
        strip.lower().forEach(line -> sheet.path(moved(line), Pen.WIDE));
        sheet.path(moved(strip.upper()), Pen.WIDE);
    }

    private void upright(double x, Pen pen) {
        sheet.line(x0 + x, y0, x0 + x, y0 + strip.height_mm(), pen);
    }

    private void along(double x, double y, String words, boolean bold) {
        sheet.turned(x0 + x, y0 + y, Math.PI / 2, words, MARK_MM, Anchor.START, bold, Color.BLACK);
    }

    private void name(String frame, String tube, double y) {
        double room = strip.width_mm() - 12;
        double at = y - 5;
        for (String row : List.of(frame, tube + ", " + strip.ends(), "\u2191 first end up, printed side out")) {
            double size = fitting(row, room, 3.2);
            double wide = sheet.width_mm(row, size, row.equals(frame));
            sheet.area(
                    List.of(
                            new Spot(x0 + 5, y0 + at - 0.9),
                            new Spot(x0 + 7 + wide, y0 + at - 0.9),
                            new Spot(x0 + 7 + wide, y0 + at + size * 0.95),
                            new Spot(x0 + 5, y0 + at + size * 0.95)),
                    Color.WHITE);
            sheet.text(x0 + 6, y0 + at, row, size, Anchor.START, row.equals(frame));
            at -= 4.3;
        }
    }

    private double fitting(String words, double room, double most_mm) {
        double wide = sheet.width_mm(words, most_mm, true);
        return wide <= room ? most_mm : most_mm * room / wide;
    }

    private List<Spot> moved(List<Spot> line) {
        return line.stream()
                .map(spot -> new Spot(x0 + spot.x_mm(), y0 + spot.y_mm()))
                .toList();
    }
}
