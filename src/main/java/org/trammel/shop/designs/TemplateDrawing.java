package org.trammel.shop.designs;

import java.awt.Color;
import java.util.List;
import org.trammel.calc.geometry.PaperShape.Spot;
import org.trammel.shop.web.PdfSheet;
import org.trammel.shop.web.PdfSheet.Anchor;
import org.trammel.shop.web.PdfSheet.Pen;

/** A template at full size: what is cut along stands wide, what is aligned by narrow, and its name stays on the paper. */
final class TemplateDrawing {

    /** About the template, so that its outermost lines are printed in their whole width. */
    static final double AROUND_MM = 3;

    private static final Color FAINT = new Color(200, 200, 200);
    private static final Pen CUT = Pen.WIDE;
    private static final Pen BORE = Pen.NARROW;
    private static final double NAME_MM = 3.2;
    private static final double MARK_MM = 2.4;
    private static final double LABELS_FROM_MM = 18;

    private final PdfSheet sheet;
    private final JointTemplate template;
    private final double x0;
    private final double y0;

    /** At a place of the sheet, in its millimetres; that of the template's own lower left corner. */
    TemplateDrawing(PdfSheet sheet, JointTemplate template, double x0_mm, double y0_mm) {
        this.sheet = sheet;
        this.template = template;
        this.x0 = x0_mm;
        this.y0 = y0_mm;
    }

    void draw(String frame, String notForWork) {
        double width = template.width_mm();
        double height = template.height_mm();
        if (!notForWork.isEmpty()) {
            sheet.turned(
                    x0 + width / 2,
                    y0 + LABELS_FROM_MM + 8,
                    Math.toRadians(12),
                    notForWork,
                    fitting(notForWork, width - 14, 13),
                    Anchor.MIDDLE,
                    true,
                    FAINT);
        }
        template.marks().forEach(this::centreLine);
        upright(0, Pen.NARROW);
        upright(width, Pen.NARROW);
        sheet.line(x0, y0, x0 + width, y0, Pen.NARROW);
        joiningLine(template.joining_mm());
        if (template.joining_mm() < 1e-6) {
            joiningLine(width);
        }
        sheet.path(moved(template.boreLine()), BORE);
        sheet.path(moved(template.cutLine()), CUT);
        names(frame);
        sheet.line(x0, y0 + height, x0 + width, y0 + height, Pen.DASHED);
    }

    private void upright(double x, Pen pen) {
        sheet.line(x0 + x, y0, x0 + x, y0 + template.height_mm(), pen);
    }

    private void centreLine(JointTemplate.Mark mark) {
        upright(mark.at_mm(), Pen.CHAIN);
        along(mark.at_mm(), mark.name());
    }

    private void along(double x, String words) {
        sheet.turned(
                x0 + x + 1 + MARK_MM * 0.75,
                y0 + LABELS_FROM_MM,
                Math.PI / 2,
                words,
                MARK_MM,
                Anchor.START,
                false,
                Color.BLACK);
    }

    /** The line that both ends of the tube are turned by: with a filled mark at the foot. */
    private void joiningLine(double x) {
        upright(x, Pen.NARROW);
        sheet.area(
                List.of(new Spot(x0 + x, y0 + 5), new Spot(x0 + x - 2.4, y0), new Spot(x0 + x + 2.4, y0)), Color.BLACK);
        sheet.turned(
                x0 + x + (x > template.width_mm() - 1e-6 ? -1 : 2 + 2 * MARK_MM * 0.75),
                y0 + LABELS_FROM_MM,
                Math.PI / 2,
                "line joining both ends",
                MARK_MM,
                Anchor.START,
                true,
                Color.BLACK);
    }

    private void names(String frame) {
        double room = template.width_mm() - 12;
        List<String> rows =
                List.of(frame, template.tube() + ", " + template.end(), "\u2191 cut end up, printed side out");
        double y = y0 + LABELS_FROM_MM - 4.4;
        for (String row : rows) {
            double size = fitting(row, room, NAME_MM);
            double wide = sheet.width_mm(row, size, row.equals(frame));
            sheet.area(
                    List.of(
                            new Spot(x0 + 5, y - 0.9),
                            new Spot(x0 + 7 + wide, y - 0.9),
                            new Spot(x0 + 7 + wide, y + size * 0.95),
                            new Spot(x0 + 5, y + size * 0.95)),
                    Color.WHITE);
            sheet.text(x0 + 6, y, row, size, Anchor.START, row.equals(frame));
            y -= 4.3;
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
