package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.shop.designs.CutsInSpace.cross;
import static org.trammel.shop.designs.CutsInSpace.dot;
import static org.trammel.shop.designs.CutsInSpace.minus;
import static org.trammel.shop.designs.CutsInSpace.plus;
import static org.trammel.shop.designs.CutsInSpace.times;
import static org.trammel.shop.designs.CutsInSpace.unit;

import java.util.List;

/**
 * An end of a tube on paper, held against the same end cut in space.
 *
 * @param tube as its paper names it
 * @param end as its paper names it
 * @param seamHalf_mm half of the tube's outside towards the seam
 * @param asideHalf_mm half of it square to that; the same of a round tube
 * @param mateRadius_mm outside of the mate
 * @param along from the node into the tube
 * @param mate along the mate's axis, through the node
 * @param seam where the edges of the paper meet
 */
record CutOnPaper(
        String tube,
        String end,
        double seamHalf_mm,
        double asideHalf_mm,
        double mateRadius_mm,
        double[] along,
        double[] mate,
        double[] seam) {

    /** What a print is measured to. */
    static final double PAPER_MM = 0.05;

    static final double WIDE_MM = 0.5;

    /** Of an oval's outline, by which it is walked round. */
    private static final int STEPS = 72_000;

    static CutOnPaper round(
            String tube,
            String end,
            double radius_mm,
            double mateRadius_mm,
            double[] along,
            double[] mate,
            double[] seam) {
        return new CutOnPaper(tube, end, radius_mm, radius_mm, mateRadius_mm, along, mate, seam);
    }

    /** Outline of the tube: of an oval the sum of many short chords. */
    double perimeter_mm() {
        return seamHalf_mm == asideHalf_mm ? 2 * Math.PI * seamHalf_mm : walked_mm(2 * Math.PI);
    }

    /** The other half axis of an oval whose outline is as long as a round tube's, by halving. */
    static double otherHalf_mm(double half_mm, double roundRadius_mm) {
        double least = roundRadius_mm / 2;
        double most = roundRadius_mm * 2;
        for (int i = 0; i < 50; i++) {
            double middle = (least + most) / 2;
            CutOnPaper tried = new CutOnPaper("", "", half_mm, middle, 1, new double[3], new double[3], new double[3]);
            if (tried.walked_mm(2 * Math.PI) < 2 * Math.PI * roundRadius_mm) {
                least = middle;
            } else {
                most = middle;
            }
        }
        return (least + most) / 2;
    }

    private double walked_mm(double to) {
        double walked = 0;
        int steps = (int) Math.ceil(STEPS * to / (2 * Math.PI));
        for (int i = 0; i < steps; i++) {
            walked += step_mm(to * i / steps, to * (i + 1) / steps);
        }
        return walked;
    }

    private double step_mm(double from, double to) {
        return Math.hypot(
                seamHalf_mm * (Math.cos(to) - Math.cos(from)), asideHalf_mm * (Math.sin(to) - Math.sin(from)));
    }

    /** The place of the tube's outside, from its axis, that a place of the paper comes to lie on: printed side out, cut end up. */
    double[] outside(double developed_mm) {
        double angle = developed_mm / seamHalf_mm;
        if (seamHalf_mm != asideHalf_mm) {
            angle = 0;
            double turn = 2 * Math.PI / STEPS;
            for (double walked = 0; walked < developed_mm; angle += turn) {
                walked += step_mm(angle, angle + turn);
            }
        }
        double[] into = unit(along);
        double[] left = unit(minus(seam, times(into, dot(seam, into))));
        double[] right = cross(left, into);
        return plus(times(left, seamHalf_mm * Math.cos(angle)), times(right, asideHalf_mm * Math.sin(angle)));
    }

    /** The same as a direction of length 1. */
    double[] side(double developed_mm) {
        return unit(outside(developed_mm));
    }

    PrintedLines.Page page(List<PrintedLines.Page> pages) {
        return pages.stream()
                .filter(page -> page.words().contains(tube + ", " + end))
                .findFirst()
                .orElseThrow(() -> new AssertionError(tube + ", " + end));
    }

    /** The lower edge of the paper that is cut out. */
    PrintedLines.Stroke foot(PrintedLines.Page page) {
        return foot(page, perimeter_mm());
    }

    static PrintedLines.Stroke foot(PrintedLines.Page page, double perimeter_mm) {
        return page.strokes().stream()
                .filter(line -> line.level()
                        && !line.broken()
                        && line.width_mm() < 0.3
                        && Math.abs(line.length_mm() - perimeter_mm) < 1)
                .findFirst()
                .orElseThrow();
    }

    static PrintedLines.Stroke curve(PrintedLines.Page page) {
        return page.strokes().stream()
                .filter(line -> line.points().size() > 100 && Math.abs(line.width_mm() - WIDE_MM) < 0.01)
                .findFirst()
                .orElseThrow();
    }

    /** The paper is as wide as the tube's outline, and its curve is the one the tubes have in space. */
    void requireMeasures(PrintedLines.Page page) {
        PrintedLines.Stroke foot = foot(page);
        assertThat(foot.length_mm()).as(tube + " " + end + ", width").isCloseTo(perimeter_mm(), within(PAPER_MM));
        double x0 = foot.points().get(0)[0];
        List<double[]> curve = curve(page).points();
        assertThat(curve.get(0)[0]).isCloseTo(x0, within(PAPER_MM));
        assertThat(curve.get(curve.size() - 1)[0] - x0).isCloseTo(perimeter_mm(), within(PAPER_MM));
        double first = Double.NaN;
        for (double[] point : curve) {
            double whole = point[1] + CutsInSpace.setback_mm(along, mate, outside(point[0] - x0), mateRadius_mm);
            first = Double.isNaN(first) ? whole : first;
            assertThat(whole).as(tube + " " + end).isCloseTo(first, within(PAPER_MM));
        }
    }

    /** One level and one upright bar of 100 mm stand on the sheet. */
    static void requireBars(PrintedLines.Page page) {
        for (boolean level : new boolean[] {true, false}) {
            assertThat(page.strokes().stream()
                            .filter(line -> Math.abs(line.width_mm() - WIDE_MM) < 0.01 && line.length_mm() > 50)
                            .filter(line -> level ? line.level() : line.upright())
                            .map(PrintedLines.Stroke::length_mm))
                    .singleElement()
                    .satisfies(length -> assertThat(length).isCloseTo(100, within(PAPER_MM)));
        }
    }
}
