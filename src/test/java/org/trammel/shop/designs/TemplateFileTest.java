package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.shop.designs.CutsInSpace.minus;
import static org.trammel.shop.designs.CutsInSpace.plus;
import static org.trammel.shop.designs.CutsInSpace.times;
import static org.trammel.shop.designs.CutsInSpace.unit;
import static org.trammel.shop.designs.CutsInSpace.v;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

/**
 * Mitre templates measured on the file that is printed. It is read by another library than the one that wrote it; the
 * curves are compared with tubes cut in space from the frame's corners, by halving and without a formula of the curve.
 */
class TemplateFileTest extends AtTheTemplates {

    private static final double PAPER_MM = CutOnPaper.PAPER_MM;

    /** To be looked at. */
    private static final Path KEPT = Path.of("target", "printed");

    private static final double DOT_MM = 25.4 / 600;

    @Test
    void bothBarsOfEverySheetAreAHundredMillimetres() throws Exception {
        for (String paper : List.of("A4", "US_LETTER")) {
            PrintedLines.of(file(slim(), "paper=" + paper)).forEach(CutOnPaper::requireBars);
        }
    }

    /** ISO 216 and ANSI/ASME Y14.1. */
    @Test
    void theSheetsAreThoseThatWereAskedFor() throws Exception {
        Files.createDirectories(KEPT);
        Files.write(KEPT.resolve("templates-a4.pdf"), file(slim(), "paper=A4"));
        Files.write(KEPT.resolve("templates-letter.pdf"), file(revision(Map.of()), "paper=US_LETTER"));
        for (PrintedLines.Page page : PrintedLines.of(file(slim(), "paper=A4"))) {
            assertThat(List.of(page.width_mm(), page.height_mm()))
                    .satisfiesExactlyInAnyOrder(
                            side -> assertThat(side).isCloseTo(210, within(PAPER_MM)),
                            side -> assertThat(side).isCloseTo(297, within(PAPER_MM)));
        }
        for (PrintedLines.Page page : PrintedLines.of(file(slim(), "paper=US_LETTER"))) {
            assertThat(page.width_mm()).isCloseTo(215.9, within(PAPER_MM));
            assertThat(page.height_mm()).isCloseTo(279.4, within(PAPER_MM));
        }
    }

    /** Painted at 600 dots to the inch and measured in the dots: nothing covers a bar or cuts it off. */
    @Test
    void bothBarsAreSeenInTheirWholeLength() throws Exception {
        BufferedImage sheet = painted(file(slim(), "tube=DOWN_TUBE"));
        assertThat(longestRun(sheet, 13, 113, true) * DOT_MM).isCloseTo(100, within(PAPER_MM));
        assertThat(longestRun(sheet, 13, 113, false) * DOT_MM).isCloseTo(100, within(PAPER_MM));
    }

    /** The corners of the frame from its inputs, by plain trigonometry in this test alone. */
    static Stream<CutOnPaper> cuts() {
        double head = Math.toRadians(65.5);
        double seat = Math.toRadians(74.5);
        double[] down = v(Math.cos(head), -Math.sin(head), 0);
        double stack = 58 + (110 + 12 + 541) * Math.sin(head) - 44 * Math.cos(head);
        double[] top = v(458, stack, 0);
        double[] downTubeAtHead = plus(top, times(down, 110 - 29));
        double[] topTubeAtHead = plus(top, times(down, 30));
        double[] seatUp = v(-Math.cos(seat), Math.sin(seat), 0);
        double[] topTubeAtSeat = times(seatUp, 430 - 45);
        double[] shell = v(0, 0, 1);
        double[] axle = v(-Math.sqrt(432 * 432 - 58 * 58), 58, 0);
        double[] back = unit(axle);
        double[] stayFront = plus(times(back, 21), v(0, 0, 24));
        double[] stayRear = plus(minus(axle, times(back, 18)), v(0, 0, 148 / 2.0 + 4));
        double[] stay = minus(stayRear, stayFront);
        double[] mirrored = v(stay[0], stay[1], -stay[2]);
        double[] downTube = times(downTubeAtHead, -1);
        double[] topTube = minus(topTubeAtSeat, topTubeAtHead);
        return Stream.of(
                CutOnPaper.round(
                        "Down tube", "first end, to the head tube", 19.05, 27, downTube, down, times(down, -1)),
                CutOnPaper.round("Down tube", "second end, to the shell", 19.05, 21, downTubeAtHead, shell, shell),
                CutOnPaper.round("Top tube", "first end, to the head tube", 15.9, 27, topTube, down, down),
                CutOnPaper.round(
                        "Top tube",
                        "second end, to the seat tube",
                        15.9,
                        17.45,
                        times(topTube, -1),
                        seatUp,
                        times(seatUp, -1)),
                CutOnPaper.round("Seat tube", "first end, to the shell", 17.45, 21, seatUp, shell, shell),
                CutOnPaper.round("Chainstay of the drive side", "first end, to the shell", 11, 21, stay, shell, shell),
                CutOnPaper.round(
                        "Chainstay of the non-drive side",
                        "first end, to the shell",
                        11,
                        21,
                        mirrored,
                        shell,
                        times(shell, -1)));
    }

    @Test
    void everyCurveIsTheOneTheTubesHaveInSpace() throws Exception {
        List<PrintedLines.Page> pages = PrintedLines.of(file(slim(), ""));
        assertThat(pages).hasSameSizeAs(cuts().toList());
        cuts().forEach(cut -> cut.requireMeasures(cut.page(pages)));
    }

    @Test
    void eachLineIsNamedByTheSideOfTheFrameItComesToLieOn() throws Exception {
        byte[] file = file(slim(), "");
        List<PrintedLines.Page> pages = PrintedLines.of(file);
        Map<String, double[]> sides = Map.of(
                "drive side", v(0, 0, 1),
                "non-drive side", v(0, 0, -1),
                "upper side", v(0, 1, 0),
                "under side", v(0, -1, 0),
                "front side", v(1, 0, 0),
                "rear side", v(-1, 0, 0));
        cuts().forEach(cut -> {
            PrintedLines.Page page = cut.page(pages);
            double perimeter = cut.perimeter_mm();
            double x0 = cut.foot(page).points().get(0)[0];
            double foot = cut.foot(page).points().get(0)[1];
            int named = 0;
            for (Map.Entry<String, double[]> one : sides.entrySet()) {
                for (double[] place : PrintedWords.places(file, pages.indexOf(page) + 1, one.getKey())) {
                    boolean ofNonDrive = one.getKey().equals("drive side")
                            && PrintedWords.places(file, pages.indexOf(page) + 1, "non-drive side").stream()
                                    .anyMatch(other -> Math.abs(other[0] - place[0]) < 0.5);
                    if (place[1] < foot + 15 || place[1] > foot + 25 || ofNonDrive) {
                        continue;
                    }
                    named++;
                    double line = Math.round((place[0] - x0 - 2) / perimeter * 4) * perimeter / 4;
                    assertThat(CutsInSpace.dot(cut.side(line), one.getValue()))
                            .as(cut.tube() + ", " + cut.end() + ": " + one.getKey())
                            .isGreaterThan(0.6);
                }
            }
            assertThat(named).as(cut.tube()).isEqualTo(4);
        });
    }

    /** Both ends of the down tube are turned by its upper line, where its first paper's edges meet. */
    @Test
    void theLineThatJoinsBothEndsIsTheSameLineOfTheTubeOnBothPapers() throws Exception {
        byte[] file = file(slim(), "tube=DOWN_TUBE");
        List<PrintedLines.Page> pages = PrintedLines.of(file);
        cuts().filter(cut -> cut.tube().equals("Down tube")).forEach(cut -> {
            PrintedLines.Page page = cut.page(pages);
            double perimeter = cut.perimeter_mm();
            double x0 = cut.foot(page).points().get(0)[0];
            double place = PrintedWords.places(file, pages.indexOf(page) + 1, "line joining both ends")
                    .get(0)[0];
            double[] side = cut.side(Math.round((place - x0 - 5) / perimeter * 4) * perimeter / 4);
            assertThat(side[1]).as("up").isGreaterThan(0.6);
            assertThat(side[2]).as("in the middle plane").isCloseTo(0, within(1e-6));
        });
    }

    /** A wall of 6 leaves the bore well inside; the curve of the bore is cut in space like the other. */
    @Test
    void theBoreHasItsOwnCurve() throws Exception {
        long id = revision(Map.of(GeometryInput.DOWN_TUBE_OUTSIDE, "38.1", GeometryInput.DOWN_TUBE_WALL, "6"));
        PrintedLines.Page page =
                PrintedLines.of(file(id, "tube=DOWN_TUBE&end=1")).get(0);
        CutOnPaper cut = cuts().findFirst().orElseThrow();
        double x0 = CutOnPaper.foot(page, 2 * Math.PI * 19.05).points().get(0)[0];
        List<double[]> outer = CutOnPaper.curve(page).points();
        List<double[]> bore = page.strokes().stream()
                .filter(line -> line.points().size() > 100 && line.width_mm() < 0.3)
                .findFirst()
                .orElseThrow()
                .points();
        double whole = outer.get(0)[1] + CutsInSpace.setback_mm(cut.along(), cut.mate(), cut.side(0), 19.05, 27);
        for (double[] point : bore) {
            double inside = CutsInSpace.setback_mm(cut.along(), cut.mate(), cut.side(point[0] - x0), 13.05, 27);
            assertThat(point[1] + inside).isCloseTo(whole, within(PAPER_MM));
        }
    }

    @Test
    void whatTakesSeveralSheetsIsShownWholeAndNeighboursShareAStrip() throws Exception {
        long id = revision(Map.of(
                GeometryInput.HEAD_TUBE_OUTSIDE, "90",
                GeometryInput.SHELL_OUTSIDE, "80",
                GeometryInput.DOWN_TUBE_OUTSIDE, "76"));
        List<PrintedLines.Page> pages = PrintedLines.of(file(id, "tube=DOWN_TUBE&end=1&paper=A4"));
        assertThat(pages.size()).isGreaterThan(1);
        double perimeter = Math.PI * 76;
        double covered = 0;
        Rectangle2D before = null;
        for (PrintedLines.Page page : pages) {
            PrintedLines.Stroke foot = CutOnPaper.foot(page, perimeter);
            double x0 = foot.points().get(0)[0];
            double y0 = foot.points().get(0)[1];
            Rectangle2D open = new Rectangle2D.Double(
                    foot.open().getX() - x0,
                    foot.open().getY() - y0,
                    foot.open().getWidth(),
                    foot.open().getHeight());
            assertThat(foot.open().getX()).isGreaterThanOrEqualTo(9.9);
            assertThat(foot.open().getMaxX()).isLessThanOrEqualTo(page.width_mm() - 9.9);
            if (before == null) {
                assertThat(open.getX()).isLessThan(0);
            } else {
                assertThat(before.createIntersection(open).getWidth()).isCloseTo(14, within(PAPER_MM));
                double seam = (before.getMaxX() + open.getX()) / 2;
                assertThat(crosses(page, x0, seam))
                        .as("crosses on the shared strip")
                        .isEqualTo(2);
            }
            covered = open.getMaxX();
            before = open;
        }
        assertThat(covered).isGreaterThan(perimeter);
        assertThat(pages.get(0).words()).contains("piece 1 of 2 from the left", "Page 1 of 2");
        assertThat(pages.get(1).words()).contains("piece 2 of 2 from the left", "Page 2 of 2");
    }

    private static long crosses(PrintedLines.Page page, double x0, double seam) {
        return page.strokes().stream()
                .filter(line -> line.upright() && Math.abs(line.length_mm() - 6) < 0.1)
                .filter(line -> Math.abs(line.points().get(0)[0] - x0 - seam) < PAPER_MM)
                .filter(line -> line.open()
                        .contains(
                                line.points().get(0)[0],
                                (line.points().get(0)[1] + line.points().get(1)[1]) / 2))
                .count();
    }

    private static BufferedImage painted(byte[] file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            return new PDFRenderer(document).renderImageWithDPI(0, 600, ImageType.GRAY);
        }
    }

    /** Of dark dots along a line of the picture that goes through a place, given in mm from the upper left corner. */
    private static int longestRun(BufferedImage sheet, double x_mm, double y_mm, boolean level) {
        int longest = 0;
        for (int aside = -4; aside <= 4; aside++) {
            int run = 0;
            int length = level ? sheet.getWidth() : sheet.getHeight();
            for (int along = 0; along < length; along++) {
                int x = level ? along : (int) (x_mm / DOT_MM) + aside;
                int y = level ? (int) (y_mm / DOT_MM) + aside : along;
                run = sheet.getRaster().getSample(x, y, 0) < 128 ? run + 1 : 0;
                longest = Math.max(longest, run);
            }
        }
        return longest;
    }
}
