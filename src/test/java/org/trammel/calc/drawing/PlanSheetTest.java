package org.trammel.calc.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.geometry.Paper;
import org.trammel.calc.geometry.PaperShape.Spot;
import org.trammel.calc.geometry.RearPlan;

/** The rear end from above, measured on its shapes: a plan is a frame with its heights left out. */
class PlanSheetTest {

    private static final Offset<Double> ALL_DIGITS = within(1e-9);

    static Stream<DrawnFrames.Drawn> frames() {
        return Stream.concat(DrawnFrames.demo(), DrawnFrames.random(60, 7)).filter(frame -> frame.plan() != null);
    }

    private static DrawnSheet drawn(DrawnFrames.Drawn frame) {
        return PlanSheet.of(
                Objects.requireNonNull(frame.plan()), DrawnSheetsTest.BLOCK, DrawnSheetsTest.LETTERS, Paper.A4, 2, 3);
    }

    private static double lowest(Mark.Path part) {
        return part.spots().stream().mapToDouble(Spot::y_mm).min().orElseThrow();
    }

    private static double highest(Mark.Path part) {
        return part.spots().stream().mapToDouble(Spot::y_mm).max().orElseThrow();
    }

    /** Parts in the order they are drawn: dropout and stay of the non-drive side, those of the drive side, the shell. */
    @ParameterizedTest
    @MethodSource("frames")
    void everyPartIsWhereTheFrameHasIt(DrawnFrames.Drawn frame) {
        RearPlan plan = Objects.requireNonNull(frame.plan());
        DrawnSheet sheet = drawn(frame);
        List<Mark.Path> parts = SideSheetTest.parts(sheet, Pen.OUTLINE);
        assertThat(parts).hasSize(5);
        Mark.Path shell = parts.get(4);
        double middle = (lowest(shell) + highest(shell)) / 2;
        double shellX = (shell.spots().get(0).x_mm() + shell.spots().get(1).x_mm()) / 2;
        assertThat((highest(shell) - lowest(shell)) * sheet.scale())
                .isCloseTo(plan.sizes().shellWidth_mm(), ALL_DIGITS);
        assertThat((lowest(parts.get(0)) - highest(parts.get(2))) * sheet.scale())
                .as("between the faces of the dropouts")
                .isCloseTo(plan.sizes().axleWidth_mm(), ALL_DIGITS);
        for (int i = 1; i < 4; i += 2) {
            List<Spot> stay = parts.get(i).spots();
            int side = i == 1 ? 1 : -1;
            Spot last = stay.get(stay.size() - 1);
            assertThat(SideSheetTest.distance(stay.get(0), last) * sheet.scale())
                    .isCloseTo(plan.sizes().chainstayOutside_mm(), ALL_DIGITS);
            assertThat(((stay.get(0).y_mm() + last.y_mm()) / 2 - middle) * sheet.scale() * side)
                    .as("rear end from the middle plane")
                    .isCloseTo(plan.chainstay().chord().rear().z_mm(), ALL_DIGITS);
            assertThat(((stay.get(0).x_mm() + last.x_mm()) / 2 - shellX) * sheet.scale())
                    .as("rear end behind the shell")
                    .isCloseTo(plan.chainstay().chord().rear().x_mm(), ALL_DIGITS);
        }
    }

    @ParameterizedTest
    @MethodSource("frames")
    void theDriveSideLiesBelowAndTheFrontToTheRight(DrawnFrames.Drawn frame) {
        DrawnSheet sheet = drawn(frame);
        List<Mark.Words> sides = sheet.marks().stream()
                .filter(Mark.Words.class::isInstance)
                .map(Mark.Words.class::cast)
                .filter(text -> text.words().endsWith("drive side"))
                .toList();
        assertThat(sides).hasSize(2);
        Mark.Words drive = sides.stream()
                .filter(text -> text.words().startsWith("drive"))
                .findFirst()
                .orElseThrow();
        Mark.Words other = sides.stream()
                .filter(text -> text.words().startsWith("non"))
                .findFirst()
                .orElseThrow();
        List<Mark.Path> parts = SideSheetTest.parts(sheet, Pen.OUTLINE);
        assertThat(drive.at().y_mm()).isLessThan(lowest(parts.get(2)));
        assertThat(other.at().y_mm()).isGreaterThan(highest(parts.get(0)));
        assertThat(parts.get(4).spots().get(0).x_mm())
                .isGreaterThan(parts.get(0).spots().get(0).x_mm());
        assertThat(SideSheetTest.words(sheet))
                .contains("Third angle projection", "A: rear end from above, without seatstays", "2 of 3");
    }

    @ParameterizedTest
    @CsvSource({
        "O-101, 2, '148,0', '73,0', '428,1'",
        "O-103, 5, '148,0', '73,0', '451,3'",
        "O-119, 5, '197,0', '100,0', '447,7'"
    })
    void itIsDimensioned(String name, int scale, String axle, String shell, String behind) {
        DrawnSheet sheet = drawn(DrawnFrames.demo(name));
        assertThat(sheet.scale()).isEqualTo(scale);
        assertThat(SideSheetTest.words(sheet)).contains(axle, shell, behind);
    }

    @ParameterizedTest
    @MethodSource("frames")
    void theTyresRoomStandsOnItWhereTheTyreIsKnown(DrawnFrames.Drawn frame) {
        RearPlan plan = Objects.requireNonNull(frame.plan());
        List<String> said = SideSheetTest.words(drawn(frame)).stream()
                .filter(words -> words.startsWith("tyre "))
                .toList();
        if (plan.sizes().tyreWidth_mm() == null) {
            assertThat(said).isEmpty();
            return;
        }
        double room = plan.tyreRoom().orElseThrow().room_mm();
        assertThat(said)
                .contains(
                        "tyre " + DrawnSheetsTest.LETTERS.mm(plan.sizes().tyreWidth_mm()) + " wide",
                        (room < 0 ? "tyre and stay overlap by " : "tyre clear of the stay by ")
                                + DrawnSheetsTest.LETTERS.mm(Math.abs(room)));
    }
}
