package org.trammel.shop.designs;

import java.util.List;
import org.trammel.calc.geometry.CutPiece;
import org.trammel.calc.geometry.FixtureSetting;
import org.trammel.calc.geometry.Section;
import org.trammel.calc.geometry.Tiling;
import org.trammel.calc.units.Answer;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.PdfSheet;
import org.trammel.shop.web.PdfSheet.Anchor;
import org.trammel.shop.web.PdfSheet.Pen;

/** What stands above a template: two bars to measure the print by, what is cut, and how the paper is used. */
final class TemplateHeading {

    /** The bar is as long as this, both ways. */
    static final double BAR_MM = 100;

    static final double HEIGHT_MM = 110;

    private static final double TICK_MM = 2.5;

    private final Formats formats;
    private final PdfSheet sheet;
    private final double left;
    private final double bottom;

    /**
     * @param left_mm where both bars begin
     * @param bottom_mm where both bars begin
     */
    TemplateHeading(Formats formats, PdfSheet sheet, double left_mm, double bottom_mm) {
        this.formats = formats;
        this.sheet = sheet;
        this.left = left_mm;
        this.bottom = bottom_mm;
    }

    /** A hundred millimetres to the right and upwards from one corner, over all that is inked, a tick at each ten. */
    void bars() {
        double half = Pen.WIDE.width_mm() / 2;
        sheet.line(left, bottom + half, left + BAR_MM, bottom + half, Pen.WIDE);
        sheet.line(left + half, bottom, left + half, bottom + BAR_MM, Pen.WIDE);
        double thin = Pen.NARROW.width_mm() / 2;
        for (int ten = 0; ten <= 10; ten++) {
            double reach = ten % 5 == 0 ? 2 * TICK_MM : TICK_MM;
            double at = Math.min(BAR_MM - thin, Math.max(thin, ten * BAR_MM / 10));
            sheet.line(left + at, bottom, left + at, bottom + reach, Pen.NARROW);
            sheet.line(left, bottom + at, left + reach, bottom + at, Pen.NARROW);
        }
        String said = formats.with(BAR_MM, 0, "mm");
        sheet.text(left + BAR_MM + 2, bottom + 0.4, said, 3.2, Anchor.START, true);
        sheet.text(left + 6, bottom + BAR_MM - 2.8, said, 3.2, Anchor.START, true);
    }

    void words(TemplateSheets.Frame frame, JointTemplate template, String tile, String page) {
        words(frame, template.tube(), template.end(), facts(frame, template), HOW, tile, page);
    }

    void words(TemplateSheets.Frame frame, TubeStrip strip, String tile, String page) {
        List<String> facts = List.of(
                strip.ends(),
                formats.with(strip.height_mm(), 1, "mm") + " from lip to lip, finished; blank "
                        + formats.with(strip.piece().blank_mm(), 1, "mm"),
                "State of the revision: " + frame.state() + ". Computed from its inputs.");
        words(frame, strip.first().tube(), "both ends", facts, HOW_OF_STRIP, tile, page);
    }

    private void words(
            TemplateSheets.Frame frame,
            String tube,
            String end,
            List<String> facts,
            List<String> how,
            String tile,
            String page) {
        double x = left + 24;
        double y = bottom + BAR_MM - 9;
        sheet.text(x, y, frame.name(), 8, Anchor.START, true);
        sheet.text(
                x + sheet.width_mm(frame.name(), 8, true) + 4, y, "revision " + frame.letter(), 5, Anchor.START, true);
        y -= 8.5;
        sheet.text(x, y, tube, 5, Anchor.START, true);
        y -= 6.5;
        sheet.text(x, y, end, 5, Anchor.START, true);
        y -= 6;
        for (String row : facts) {
            sheet.text(x, y, row, 3.2);
            y -= 4.6;
        }
        y -= 2;
        for (String row : how) {
            sheet.text(x, y, row, 3.2, Anchor.START, row.startsWith("Print") || row.startsWith("Measure"));
            y -= 4.6;
        }
        sheet.text(x, bottom + 8, tile.isEmpty() ? page : page + " · " + tile, 3.2, Anchor.START, true);
    }

    private static final List<String> HOW = List.of(
            "Print at actual size: no scaling, no fitting to the page.",
            "Measure both bars before anything is cut: each is 100 mm.",
            "If one is not, this sheet is of no use.",
            "Cut the paper along its edges and the wide line. The narrow curve is the bore.",
            "Wrap it about the tube printed side out, cut end up; its side edges meet.",
            "The line with the filled foot goes on the line that joins both ends of the tube.");

    private static final List<String> HOW_OF_STRIP = List.of(
            "Print at actual size: no scaling, no fitting to the page.",
            "Measure both bars before anything is cut: each is 100 mm.",
            "If one is not, this sheet is of no use.",
            "Glue the sheets, crosses on crosses, and measure the whole from lip to lip.",
            "Cut along the edges and both wide lines; wrap it printed side out, first end up.",
            "The tube is then marked at both ends, in phase and at its length.");

    private List<String> facts(TemplateSheets.Frame frame, JointTemplate template) {
        CutPiece piece = template.piece();
        Section tube = template.cut().mitre().curve().joint().tube();
        FixtureSetting fixture = template.cut().mitre().fixture();
        String outside = tube.inPlane_mm() == tube.acrossPlane_mm()
                ? formats.number(tube.inPlane_mm(), 1)
                : formats.number(tube.inPlane_mm(), 1) + " by " + formats.number(tube.acrossPlane_mm(), 1);
        String saw = fixture.holeSaw_mm() instanceof Answer.Determined<Double> size
                ? "saw " + formats.number(size.value(), 1)
                : "no saw at hand";
        return List.of(
                "Tube " + outside + " × " + formats.number(tube.wall_mm(), 2) + " on "
                        + formats.number(template.cut().mitre().curve().joint().mateOutside_mm(), 1) + ", "
                        + FrameWords.metal(frame.metal()) + ", blank "
                        + formats.with(piece.blank_mm(), 1, "mm"),
                "Included angle " + formats.with(Math.toDegrees(fixture.includedAngle_rad()), 1, "°") + ", " + saw
                        + ", setback "
                        + formats.number(template.cut().least_mm(), 1) + " to "
                        + formats.with(template.cut().most_mm(), 1, "mm"),
                "State of the revision: " + frame.state() + ". Computed from its inputs.");
    }

    /** Which piece of a template that takes several sheets this one shows. */
    static String tile(Tiling tiling, Tiling.Sheet one) {
        if (tiling.sheets().size() == 1) {
            return "";
        }
        Tiling.Sheet last = tiling.sheets().get(tiling.sheets().size() - 1);
        return "piece " + (one.column() + 1) + " of " + (last.column() + 1) + " from the left, " + (one.row() + 1)
                + " of " + (last.row() + 1) + " from below; lay the crosses on each other";
    }
}
