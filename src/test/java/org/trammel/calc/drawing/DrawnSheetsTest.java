package org.trammel.calc.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.geometry.Paper;
import org.trammel.calc.geometry.PaperShape.Spot;
import org.trammel.calc.geometry.RearPlan;

/** The ink of every text of a sheet, as the platform's library draws its letters, against all other ink. */
class DrawnSheetsTest {

    static final Letters LETTERS = new Letters();
    static final TitleBlock BLOCK = new TitleBlock(
            "Aldervik Frameworks",
            "Trail frame 29",
            "AV26-101-H",
            "A",
            "aluminium 6061",
            "released",
            "M. Ekdalen, 19 Jan 2026",
            "M. Ekdalen, T. Renn, 26 Jan 2026",
            "21 Jan 2026, entered by M. Ekdalen",
            "not released: not for work");

    static Stream<DrawnFrames.Drawn> frames() {
        return Stream.concat(DrawnFrames.demo(), DrawnFrames.random(300, 20260318));
    }

    static List<DrawnSheet> sheets(DrawnFrames.Drawn frame, Paper paper) {
        List<DrawnSheet> sheets = new ArrayList<>();
        RearPlan plan = frame.plan();
        sheets.add(SideSheet.of(frame.side(), plan != null, BLOCK, LETTERS, paper, 2));
        if (plan != null) {
            sheets.add(PlanSheet.of(plan, BLOCK, LETTERS, paper, 2, 2));
        }
        return sheets;
    }

    @ParameterizedTest
    @MethodSource("frames")
    void noTextLiesOnAnotherOneOrLeavesTheSheet(DrawnFrames.Drawn frame) {
        for (Paper paper : Paper.values()) {
            for (DrawnSheet sheet : sheets(frame, paper)) {
                assertApart(sheet, frame + " on " + paper);
            }
        }
    }

    private static final List<String> REMARKS = List.of(
            "The pivot bosses are not drawn. Swing arm, outside of its pivot bosses is not given.",
            "The pivot bosses are not drawn. Swing arm, over its pivot bosses is not given.",
            "The bridge is not drawn. Swing arm, from pivot to its bridge is not given.");

    static Stream<DrawnFrames.Arm> arms() {
        return DrawnFrames.arms();
    }

    @ParameterizedTest
    @MethodSource("arms")
    void aSwingArmsSheetKeepsItsTextsApartAndClearOfOutlines(DrawnFrames.Arm arm) {
        for (Paper paper : Paper.values()) {
            DrawnSheet sheet = ArmSheet.of(arm.plan(), arm.upper(), REMARKS, BLOCK, LETTERS, paper, 2, 2);
            assertApart(sheet, arm + " on " + paper);
            assertClearOfOutlines(sheet, arm.toString());
        }
    }

    @ParameterizedTest
    @MethodSource("frames")
    void whatIsNotDrawnFromAboveStandsClearOnTheFirstSheet(DrawnFrames.Drawn frame) {
        DrawnSheet sheet = SideSheet.alone(frame.side(), REMARKS, BLOCK, LETTERS, Paper.A4, 1);
        assertApart(sheet, frame.toString());
        assertClearOfOutlines(sheet, frame.toString());
        assertThat(texts(sheet).stream().map(Mark.Words::words).collect(Collectors.joining(" ")))
                .contains(REMARKS);
    }

    private static void assertApart(DrawnSheet sheet, String what) {
        List<Mark.Words> texts = texts(sheet);
        Rectangle2D inside = new Rectangle2D.Double(20, 10, sheet.width_mm() - 30, sheet.height_mm() - 20);
        List<Area> inks = texts.stream().map(LETTERS::ink).toList();
        for (int i = 0; i < texts.size(); i++) {
            assertThat(inside.contains(inks.get(i).getBounds2D()))
                    .as("%s inside %s", texts.get(i), what)
                    .isTrue();
            for (int k = i + 1; k < texts.size(); k++) {
                if (inks.get(k).getBounds2D().intersects(inks.get(i).getBounds2D())) {
                    Area both = new Area(inks.get(k));
                    both.intersect(inks.get(i));
                    assertThat(both.isEmpty())
                            .as("%s clear of %s, %s", texts.get(i), texts.get(k), what)
                            .isTrue();
                }
            }
        }
    }

    /** More tubes, longer words and more notes than a frame has. */
    @Test
    void aFullSheetOfNumbersKeepsItsTextsApartAndCountsWhatHasNoRoom() {
        String end = "to the head tube: no saw, 114,7°\nsetback 17,0 to 139,4";
        NumbersSheet.Table table = new NumbersSheet.Table(
                "Cut list, lengths in mm",
                List.of(
                        new NumbersSheet.Column("Tube", 26, false),
                        new NumbersSheet.Column("Outside × wall", 28, true),
                        new NumbersSheet.Column("First end", 68, false),
                        new NumbersSheet.Column("Phase", 16, true)),
                Collections.nCopies(7, List.of("chainstay", "134,9 × 11,15", end, "−179,9°")),
                Collections.nCopies(40, "A side of the tube of 42 mm ends where its mate ends. ".repeat(6)));
        List<NumbersSheet.Figure> figures =
                Collections.nCopies(10, new NumbersSheet.Figure("Rear axle behind the shell", "1200,0 mm"));
        for (Paper paper : Paper.values()) {
            DrawnSheet sheet = NumbersSheet.of(figures, table, BLOCK, LETTERS, paper, 3, 3);
            assertApart(sheet, paper.name());
            assertThat(texts(sheet))
                    .extracting(Mark.Words::words)
                    .anyMatch(words -> words.matches("\\d+ more lines stand on the drawing's page\\."));
        }
    }

    @ParameterizedTest
    @MethodSource("frames")
    void noOutlineRunsThroughAFigure(DrawnFrames.Drawn frame) {
        for (DrawnSheet sheet : sheets(frame, Paper.A4)) {
            assertClearOfOutlines(sheet, frame.toString());
        }
    }

    private static void assertClearOfOutlines(DrawnSheet sheet, String what) {
        List<Area> outlines = outlines(sheet);
        for (Mark.Words text : texts(sheet)) {
            Area ink = LETTERS.ink(text);
            for (Area outline : outlines) {
                if (!outline.getBounds2D().intersects(ink.getBounds2D())) {
                    continue;
                }
                Area both = new Area(outline);
                both.intersect(ink);
                assertThat(both.isEmpty())
                        .as("%s of %s clear of outlines", text, what)
                        .isTrue();
            }
        }
    }

    private static List<Mark.Words> texts(DrawnSheet sheet) {
        return sheet.marks().stream()
                .filter(Mark.Words.class::isInstance)
                .map(Mark.Words.class::cast)
                .toList();
    }

    private static List<Area> outlines(DrawnSheet sheet) {
        BasicStroke stroke = new BasicStroke((float) Pen.OUTLINE.width_mm());
        List<Area> all = new ArrayList<>();
        for (Mark mark : sheet.marks()) {
            if (mark instanceof Mark.Path path && path.pen() == Pen.OUTLINE) {
                Path2D line = new Path2D.Double();
                Spot first = path.spots().get(0);
                line.moveTo(first.x_mm(), first.y_mm());
                path.spots().forEach(spot -> line.lineTo(spot.x_mm(), spot.y_mm()));
                if (path.closed()) {
                    line.closePath();
                }
                all.add(new Area(stroke.createStrokedShape(line)));
            }
        }
        return all;
    }
}
