package org.trammel.calc.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.drawing.Mark.Fill;
import org.trammel.calc.geometry.DemoFrames;
import org.trammel.calc.geometry.Paper;
import org.trammel.calc.geometry.PaperShape.Spot;
import org.trammel.calc.geometry.SideView;

/** The view from the drive side, measured on its shapes against the frame; scales are those of ISO 5455. */
class SideSheetTest {

    private static final Offset<Double> ALL_DIGITS = within(1e-9);

    static Stream<DrawnFrames.Drawn> frames() {
        return DrawnFrames.demo();
    }

    private static DrawnSheet drawn(DrawnFrames.Drawn frame) {
        return SideSheet.of(
                frame.side(), frame.plan() != null, DrawnSheetsTest.BLOCK, DrawnSheetsTest.LETTERS, Paper.A4, 3);
    }

    static List<Mark.Path> parts(DrawnSheet sheet, Pen... pens) {
        return sheet.marks().stream()
                .filter(Mark.Path.class::isInstance)
                .map(Mark.Path.class::cast)
                .filter(path -> path.fill() == Fill.PAPER
                        && path.closed()
                        && path.pen() != null
                        && List.of(pens).contains(path.pen()))
                .toList();
    }

    static double distance(Spot one, Spot other) {
        return Math.hypot(other.x_mm() - one.x_mm(), other.y_mm() - one.y_mm());
    }

    static List<String> words(DrawnSheet sheet) {
        return sheet.marks().stream()
                .filter(Mark.Words.class::isInstance)
                .map(mark -> ((Mark.Words) mark).words())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("frames")
    void everyTubeIsAsLongAndAsWideOnThePaperAsTheScaleSays(DrawnFrames.Drawn frame) {
        DrawnSheet sheet = drawn(frame);
        List<Mark.Path> outlines = parts(sheet, Pen.OUTLINE, Pen.ADJACENT);
        assertThat(outlines).hasSameSizeAs(frame.side().members());
        for (int i = 0; i < outlines.size(); i++) {
            SideView.Member member = frame.side().members().get(i);
            List<Spot> at = outlines.get(i).spots();
            assertThat(distance(at.get(0), at.get(1)) * sheet.scale())
                    .as("length of %s, ends of one width", member.part())
                    .isCloseTo(
                            Math.hypot(
                                    Math.hypot(
                                            member.to().x_mm() - member.from().x_mm(),
                                            member.to().y_mm() - member.from().y_mm()),
                                    (member.toWidth_mm() - member.fromWidth_mm()) / 2),
                            ALL_DIGITS);
            assertThat(distance(at.get(0), at.get(3)) * sheet.scale())
                    .as("width of %s", member.part())
                    .isCloseTo(member.fromWidth_mm(), ALL_DIGITS);
        }
    }

    @ParameterizedTest
    @MethodSource("frames")
    void theFrontIsToTheRightAndNothingLiesUnderTheTitleBlock(DrawnFrames.Drawn frame) {
        DrawnSheet sheet = drawn(frame);
        List<Mark.Path> outlines = parts(sheet, Pen.OUTLINE, Pen.ADJACENT);
        Spot head = outlines.get(frame.side().members().stream()
                        .map(SideView.Member::part)
                        .toList()
                        .indexOf(SideView.Part.HEAD_TUBE))
                .spots()
                .get(0);
        for (Mark.Path outline : outlines) {
            for (Spot spot : outline.spots()) {
                assertThat(spot.x_mm()).isBetween(20.0, 287.0).isLessThan(head.x_mm() + 20);
                assertThat(spot.y_mm()).isBetween(34.0, 200.0);
            }
        }
    }

    /** Results of the script written apart from this project. */
    @ParameterizedTest
    @MethodSource("frames")
    void theFiguresOnItAreThoseOfTheFrame(DrawnFrames.Drawn frame) {
        DemoFrames.Row row = DemoFrames.all()
                .filter(each -> each.name().equals(frame.name()))
                .findFirst()
                .orElseThrow();
        Letters letters = DrawnSheetsTest.LETTERS;
        assertThat(words(drawn(frame)))
                .contains(
                        letters.mm(row.number("stack")),
                        letters.mm(row.number("wheelbase")),
                        letters.mm(row.number("front_centre")),
                        letters.mm(row.number("reach_mm")),
                        letters.mm(row.number("chainstay_mm")),
                        letters.mm(row.number("head_tube_mm")),
                        letters.mm(row.number("seat_tube_mm")),
                        letters.mm(row.number("fork_length_mm")),
                        letters.mm(row.number("fork_offset_mm")),
                        letters.mm(row.number("head_angle_deg")) + "°",
                        letters.mm(row.number("seat_angle_deg")) + "°");
    }

    @ParameterizedTest
    @CsvSource({"O-101, 5", "O-103, 10", "O-113, 5", "O-116, 10"})
    void theScaleIsTheLargestStandardOneThatFitsAndStandsOnTheSheet(String name, int scale) {
        DrawnSheet sheet = drawn(DrawnFrames.demo(name));
        assertThat(sheet.scale()).isEqualTo(scale);
        assertThat(words(sheet)).contains("1 : " + scale);
    }

    @Test
    void theTitleBlockSaysWhatItIsAndWhoAnswersForIt() {
        assertThat(words(drawn(DrawnFrames.demo("O-101"))))
                .contains(
                        "Aldervik Frameworks",
                        "AV26-101-H",
                        "A",
                        "aluminium 6061",
                        "M. Ekdalen, 19 Jan 2026",
                        "M. Ekdalen, T. Renn, 26 Jan 2026",
                        "21 Jan 2026, entered by M. Ekdalen",
                        "1 of 3",
                        "mm, °",
                        "Third angle projection",
                        "not released: not for work",
                        "View from the drive side");
    }

    @Test
    void theArrowOfTheViewFromAboveStandsOnlyWhereThatViewIsDrawn() {
        assertThat(words(drawn(DrawnFrames.demo("O-101"))))
                .filteredOn("A"::equals)
                .as("letter of the revision and of the arrow")
                .hasSize(2);
        assertThat(words(drawn(DrawnFrames.demo("O-104"))))
                .filteredOn("A"::equals)
                .hasSize(1);
    }
}
