package org.trammel.shop.designs;

import java.util.List;
import org.springframework.stereotype.Component;
import org.trammel.calc.geometry.Paper;
import org.trammel.calc.geometry.Tiling;
import org.trammel.calc.units.Answer;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.PdfFile;
import org.trammel.shop.web.PdfSheet;

/** Lays templates out on sheets of paper, one after the other, each on as few sheets as it takes. */
@Component
class TemplateSheets {

    static final double SHARED_MM = 14;

    private static final double MARGIN_MM = 10;
    private static final double BAR_FROM_EDGE_MM = 3;

    private final Settings settings;
    private final Formats formats;

    TemplateSheets(Settings settings, Formats formats) {
        this.settings = settings;
        this.formats = formats;
    }

    /**
     * What the sheets say about the frame.
     *
     * @param name serial, or the order's number while it has none
     * @param notForWork written across each template; empty where the shop may cut by it
     */
    record Frame(String name, String letter, String metal, String state, String notForWork) {}

    /** A paper that takes one sheet or several. */
    private record Laid(double width_mm, double height_mm, Tiling tiling, Words words, Lines lines) {}

    private interface Words {
        void on(TemplateHeading heading, String tile, String page);
    }

    private interface Lines {
        void on(PdfSheet sheet, double x0_mm, double y0_mm);
    }

    byte[] file(Frame frame, List<JointTemplate> templates, Paper paper) {
        return laid(
                frame,
                templates.stream()
                        .map(one -> new Laid(
                                one.width_mm(),
                                one.height_mm(),
                                tiling(one.width_mm(), one.height_mm(), paper),
                                (heading, tile, page) -> heading.words(frame, one, tile, page),
                                (sheet, x0, y0) ->
                                        new TemplateDrawing(sheet, one, x0, y0).draw(named(frame), frame.notForWork())))
                        .toList());
    }

    /** One paper a tube, with both its ends. */
    byte[] strips(Frame frame, List<TubeStrip> strips, Paper paper) {
        return laid(
                frame,
                strips.stream()
                        .map(one -> new Laid(
                                one.width_mm(),
                                one.height_mm(),
                                tiling(one.width_mm(), one.height_mm(), paper),
                                (heading, tile, page) -> heading.words(frame, one, tile, page),
                                (sheet, x0, y0) -> new StripDrawing(sheet, formats, one, x0, y0)
                                        .draw(named(frame), frame.notForWork())))
                        .toList());
    }

    private static String named(Frame frame) {
        return frame.name() + ", revision " + frame.letter();
    }

    private byte[] laid(Frame frame, List<Laid> laid) {
        int pages = laid.stream().mapToInt(one -> one.tiling().sheets().size()).sum();
        String title = "Mitre templates of " + named(frame);
        try (PdfFile file = new PdfFile(title, settings.text("shop.name"), settings.locale())) {
            int page = 0;
            for (Laid one : laid) {
                for (Tiling.Sheet sheet : one.tiling().sheets()) {
                    page++;
                    draw(file, one, sheet, "Page " + page + " of " + pages);
                }
            }
            return file.content();
        }
    }

    private static Tiling tiling(double width_mm, double height_mm, Paper paper) {
        double around = 2 * TemplateDrawing.AROUND_MM;
        Answer<Tiling> answer = Tiling.of(
                width_mm + around,
                height_mm + around,
                paper,
                new Tiling.Frame(MARGIN_MM, TemplateHeading.HEIGHT_MM, SHARED_MM));
        if (answer instanceof Answer.Determined<Tiling> there) {
            return there.value();
        }
        throw Refusal.state(
                "No template was made.",
                ((Answer.NotDeterminable<Tiling>) answer).gaps().get(0).words(),
                "Cut this end by the fixture's angle, or form it so that its cut is shorter.");
    }

    private void draw(PdfFile file, Laid laid, Tiling.Sheet tile, String page) {
        Paper paper = laid.tiling().paper();
        boolean lying = laid.tiling().lying();
        double width = lying ? paper.height_mm() : paper.width_mm();
        double height = lying ? paper.width_mm() : paper.height_mm();
        try (PdfSheet sheet = file.sheet(width, height)) {
            TemplateHeading heading = new TemplateHeading(
                    formats,
                    sheet,
                    MARGIN_MM + BAR_FROM_EDGE_MM,
                    height - MARGIN_MM - TemplateHeading.BAR_MM - BAR_FROM_EDGE_MM);
            heading.bars();
            laid.words().on(heading, TemplateHeading.tile(laid.tiling(), tile), page);
            boolean oneWide = laid.tiling().sheets().stream().allMatch(each -> each.column() == 0);
            double spare = oneWide ? (tile.width_mm() - laid.width_mm()) / 2 - TemplateDrawing.AROUND_MM : 0;
            sheet.within(MARGIN_MM, MARGIN_MM, tile.width_mm(), tile.height_mm());
            double x0 = MARGIN_MM + TemplateDrawing.AROUND_MM - tile.left_mm() + spare;
            double y0 = MARGIN_MM + TemplateDrawing.AROUND_MM - tile.bottom_mm();
            laid.lines().on(sheet, x0, y0);
            new TileSeams(sheet, x0, y0).draw(laid.tiling(), laid.width_mm(), laid.height_mm());
            sheet.whole();
        }
    }
}
