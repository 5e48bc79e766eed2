package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Strips with both mitres of a tube, measured on the file that is printed by another library than the one that wrote it,
 * against the tube cut in space at both ends along the very same lines, without a formula of curve or phase.
 */
class StripFileTest extends AtTheTemplates {

    private static final double PAPER_MM = CutOnPaper.PAPER_MM;

    private static List<CutOnPaper> endsOf(String tube) {
        return TemplateFileTest.cuts().filter(cut -> cut.tube().equals(tube)).toList();
    }

    private static double length(double[] vector) {
        return Math.sqrt(CutsInSpace.dot(vector, vector));
    }

    /** Wide lines once round the tube, the highest first. */
    private static List<PrintedLines.Stroke> curves(PrintedLines.Page page) {
        return page.strokes().stream()
                .filter(line -> line.points().size() > 2 && Math.abs(line.width_mm() - CutOnPaper.WIDE_MM) < 0.01)
                .sorted(Comparator.comparingDouble(line -> -line.points().get(0)[1]))
                .toList();
    }

    private static double at(List<PrintedLines.Stroke> lines, double x) {
        for (PrintedLines.Stroke line : lines) {
            List<double[]> points = line.points();
            for (int i = 1; i < points.size(); i++) {
                double[] one = points.get(i - 1);
                double[] two = points.get(i);
                if (x >= one[0] - 1e-4 && x <= two[0] + 1e-4 && two[0] > one[0]) {
                    return one[1] + (x - one[0]) / (two[0] - one[0]) * (two[1] - one[1]);
                }
            }
        }
        throw new AssertionError("nothing is drawn at " + x);
    }

    /** Down tube and top tube: as much of every line along the tube as stands between its two cuts in space. */
    @ParameterizedTest
    @CsvSource({"Down tube, DOWN_TUBE, A4", "Down tube, DOWN_TUBE, US_LETTER", "Top tube, TOP_TUBE, A4"})
    void bothCutsAreAsFarApartAndInPhaseAsOnTheTubeItself(String words, String tube, String paper) throws Exception {
        byte[] file = file(slim(), "tube=" + tube + "&end=strip&paper=" + paper);
        Files.createDirectories(Path.of("target", "printed"));
        Files.write(Path.of("target", "printed", "strip-" + tube + "-" + paper + ".pdf"), file);
        CutOnPaper first = endsOf(words).get(0);
        CutOnPaper second = endsOf(words).get(1);
        List<PrintedLines.Page> pages = PrintedLines.of(file);
        assertThat(pages.size()).isGreaterThan(1);
        for (PrintedLines.Page page : pages) {
            List<PrintedLines.Stroke> curves = curves(page);
            List<double[]> upper = curves.get(0).points();
            List<PrintedLines.Stroke> lower = curves.subList(1, curves.size());
            double x0 = upper.get(0)[0];
            assertThat(upper.get(upper.size() - 1)[0] - x0).isCloseTo(first.perimeter_mm(), within(PAPER_MM));
            for (double[] point : upper) {
                double[] line = first.outside(point[0] - x0);
                double left = length(first.along())
                        - CutsInSpace.setback_mm(first.along(), first.mate(), line, first.mateRadius_mm())
                        - CutsInSpace.setback_mm(second.along(), second.mate(), line, second.mateRadius_mm());
                assertThat(point[1] - at(lower, point[0])).as(words).isCloseTo(left, within(PAPER_MM));
            }
        }
    }

    /**
     * A formed end is as long round its outline as it was, so each line along the tube keeps its place round it, counted
     * from the line of the frame's plane: there both papers are laid on each other, and from there walked round the ovals.
     *
     * @param inputs formed ends, each upright to, over
     * @param firstHalf_mm half of the first end in the frame's plane, 0 where it stays round
     */
    @ParameterizedTest
    @CsvSource({
        "Down tube, DOWN_TUBE, 21, FORMED_DOWN_TUBE_SHELL 35 FORMED_DOWN_TUBE_SHELL_ZONE 60, 0, 17.5",
        "Top tube, TOP_TUBE, 17.45, FORMED_TOP_TUBE_SEAT 38 FORMED_TOP_TUBE_SEAT_ZONE 50, 0, 19",
        "Down tube, DOWN_TUBE, 21, FORMED_DOWN_TUBE_HEAD 48 FORMED_DOWN_TUBE_HEAD_ZONE 60 FORMED_DOWN_TUBE_SHELL 36"
                + " FORMED_DOWN_TUBE_SHELL_ZONE 70, 24, 18"
    })
    void aStripOfAFormedTubeIsTheTubesInSpaceToo(
            String words, String tube, double round, String inputs, double firstHalf, double secondHalf)
            throws Exception {
        byte[] file = file(revision(TrailFrame.inputs(inputs), Map.of()), "tube=" + tube + "&end=strip&paper=A4");
        CutOnPaper first = formed(endsOf(words).get(0), round, firstHalf);
        CutOnPaper second = formed(endsOf(words).get(1), round, secondHalf);
        double round_mm = 2 * Math.PI * round;
        double[] inPlane = CutsInSpace.cross(CutsInSpace.unit(first.along()), CutsInSpace.v(0, 0, 1));
        double firstAt = where(first, inPlane, round_mm);
        double secondAt = where(second, inPlane, round_mm);
        for (PrintedLines.Page page : PrintedLines.of(file)) {
            List<PrintedLines.Stroke> curves = curves(page);
            List<double[]> upper = curves.get(0).points();
            List<PrintedLines.Stroke> lower = curves.subList(1, curves.size());
            double x0 = upper.get(0)[0];
            assertThat(upper.get(upper.size() - 1)[0] - x0).isCloseTo(round_mm, within(PAPER_MM));
            for (int i = 0; i < upper.size(); i += 3) {
                double[] point = upper.get(i);
                double along = point[0] - x0;
                double other = secondAt - (along - firstAt);
                double left = length(first.along())
                        - setback_mm(first, along)
                        - setback_mm(second, other - Math.floor(other / round_mm) * round_mm);
                assertThat(point[1] - at(lower, point[0])).as(words).isCloseTo(left, within(PAPER_MM));
            }
        }
    }

    private static double setback_mm(CutOnPaper cut, double developed_mm) {
        return CutsInSpace.setback_mm(cut.along(), cut.mate(), cut.outside(developed_mm), cut.mateRadius_mm());
    }

    /** The same end with its half in the frame's plane; the other one follows from the outline. */
    private static CutOnPaper formed(CutOnPaper cut, double round, double inPlaneHalf) {
        boolean seamInPlane = Math.abs(cut.seam()[2]) < 0.5;
        double inPlane = inPlaneHalf == 0 ? round : inPlaneHalf;
        double across = inPlaneHalf == 0 ? round : CutOnPaper.otherHalf_mm(inPlaneHalf, round);
        return new CutOnPaper(
                cut.tube(),
                cut.end(),
                seamInPlane ? inPlane : across,
                seamInPlane ? across : inPlane,
                cut.mateRadius_mm(),
                cut.along(),
                cut.mate(),
                cut.seam());
    }

    /** Which quarter of an end's paper lies on this side of the tube. */
    private static double where(CutOnPaper cut, double[] side, double round_mm) {
        return Stream.of(0, 1, 2, 3)
                .map(quarter -> quarter * round_mm / 4)
                .max(Comparator.comparingDouble(at -> CutsInSpace.dot(cut.side(at), CutsInSpace.unit(side))))
                .orElseThrow();
    }

    /** Each sheet shows its bars and its words, and what two of them show alike is 14 mm; all of them show the whole. */
    @Test
    void theSheetsOfAStripShareAStripAndShowItWhole() throws Exception {
        List<PrintedLines.Page> pages = PrintedLines.of(file(slim(), "tube=DOWN_TUBE&end=strip&paper=A4"));
        double before = Double.NaN;
        double bottom = 0;
        double top = 0;
        for (PrintedLines.Page page : pages) {
            CutOnPaper.requireBars(page);
            assertThat(page.words())
                    .contains(
                            "Down tube",
                            "both ends",
                            "upper end to the head tube, lower end to the shell",
                            "first end up",
                            "line joining both ends",
                            "not released");
            List<PrintedLines.Stroke> curves = curves(page);
            bottom = curves.get(curves.size() - 1).points().stream()
                    .mapToDouble(point -> point[1])
                    .min()
                    .orElseThrow();
            top = curves.get(0).points().stream()
                    .mapToDouble(point -> point[1])
                    .max()
                    .orElseThrow();
            var open = curves.get(0).open();
            double from = open.getMinY() - bottom;
            if (Double.isNaN(before)) {
                assertThat(from).as("below the lowest point of the strip").isLessThan(0);
            } else {
                assertThat(before - from).isCloseTo(14, within(PAPER_MM));
            }
            before = open.getMaxY() - bottom;
        }
        assertThat(before).as("above its highest point").isGreaterThan(top - bottom);
    }

    @Test
    void aTubeMitredAtOneEndHasNoStripAndSaysSo() throws Exception {
        refused(slim(), "tube=SEAT_TUBE&end=strip", "The seat tube is not mitred at both ends.");
        refused(slim(), "tube=SEAT_TUBE&end=3", "for a strip of both");
    }
}
