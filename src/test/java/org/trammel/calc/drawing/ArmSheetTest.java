package org.trammel.calc.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.trammel.calc.geometry.ArmPlan;
import org.trammel.calc.geometry.ArmUpper;
import org.trammel.calc.geometry.DemoFrames;
import org.trammel.calc.geometry.DropoutPlate;
import org.trammel.calc.geometry.Paper;
import org.trammel.calc.geometry.PaperShape.Spot;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.units.Answer;

/**
 * A swing arm from above, measured on its shapes against places worked by hand: the pivot 22 ahead of and 72 above the
 * shell, the axle √(436² − 32²) = 434,8241 behind it and 32 above, so 456,8241 along and 458,5720 from axis to axis.
 */
class ArmSheetTest {

    /** A thousandth of the frame at a scale of 1 : 5. */
    private static final Offset<Double> BY_HAND = within(2e-4);

    private static final DropoutPlate PLATE = new DropoutPlate(6, 0.1, 25);

    private static ArmPlan arm(ArmPlan.Bosses bosses, ArmPlan.Bridge bridge, Double tyre) {
        return ((Answer.Determined<ArmPlan>) ArmPlan.of(
                        DemoFrames.all()
                                .filter(row -> row.name().equals("O-104"))
                                .findFirst()
                                .orElseThrow()
                                .geometry(),
                        new Point(22, 72),
                        new ArmPlan.Sizes(48, 22, bosses, bridge, 148, PLATE, tyre),
                        new ArmPlan.Ends(18, 4, List.of())))
                .value();
    }

    private static DrawnSheet drawn(ArmPlan arm, String... missing) {
        return ArmSheet.of(arm, null, List.of(missing), DrawnSheetsTest.BLOCK, DrawnSheetsTest.LETTERS, Paper.A4, 2, 3);
    }

    /** The shock's eye 182 from the pivot at 98°: 22 − 25,3295 ahead of the shell, 72 + 180,2288 above it. */
    private static DrawnSheet withUpperMembers(Double cross) {
        ArmPlan arm = arm(new ArmPlan.Bosses(34, 92), new ArmPlan.Bridge(70, 18), 60.0);
        ArmUpper upper = ((Answer.Determined<ArmUpper>) ArmUpper.of(
                        arm,
                        new Point(-3.3295, 252.2288),
                        new ArmUpper.Sizes(44, 18, cross),
                        new ArmPlan.Ends(18, 4, List.of())))
                .value();
        return ArmSheet.of(arm, upper, List.of(), DrawnSheetsTest.BLOCK, DrawnSheetsTest.LETTERS, Paper.A4, 2, 3);
    }

    private static DrawnSheet whole() {
        return drawn(arm(new ArmPlan.Bosses(34, 92), new ArmPlan.Bridge(70, 18), 60.0));
    }

    private static double x(Mark.Path part, boolean most) {
        DoubleSummaryStatistics all =
                part.spots().stream().mapToDouble(Spot::x_mm).summaryStatistics();
        return most ? all.getMax() : all.getMin();
    }

    private static double y(Mark.Path part, boolean most) {
        DoubleSummaryStatistics all =
                part.spots().stream().mapToDouble(Spot::y_mm).summaryStatistics();
        return most ? all.getMax() : all.getMin();
    }

    /** In the order they are drawn: bridge; dropout and side of the non-drive side, of the drive side; both bosses. */
    @Test
    void everyPartLiesWhereItWasWorkedOutByHand() {
        DrawnSheet sheet = whole();
        assertThat(sheet.scale()).isEqualTo(5);
        List<Mark.Path> parts = SideSheetTest.parts(sheet, Pen.OUTLINE);
        assertThat(parts).hasSize(7);
        Mark.Path upper = parts.get(5);
        Mark.Path lower = parts.get(6);
        double pivot = (x(upper, false) + x(upper, true)) / 2;
        double middle = (y(upper, false) + y(lower, true)) / 2;

        assertThat(x(upper, true) - x(upper, false)).as("boss, 34 / 5").isCloseTo(6.8, BY_HAND);
        assertThat(y(upper, false) - middle).as("boss begins 24 / 5 out").isCloseTo(4.8, BY_HAND);
        assertThat(y(upper, true) - middle).as("boss ends 46 / 5 out").isCloseTo(9.2, BY_HAND);
        assertThat(middle - y(lower, false)).as("the other one too").isCloseTo(9.2, BY_HAND);

        Mark.Path bridge = parts.get(0);
        assertThat((x(bridge, false) + x(bridge, true)) / 2 - pivot)
                .as("70 × 456,8241 / 458,5720 / 5 behind the pivot")
                .isCloseTo(-13.94664, BY_HAND);
        assertThat(x(bridge, true) - x(bridge, false)).isCloseTo(3.6, BY_HAND);
        assertThat(y(bridge, true) - middle).as("(35 + 43 × 70 / 440,5720) / 5").isCloseTo(8.36640, BY_HAND);

        for (int i = 2; i < 5; i += 2) {
            List<Spot> side = parts.get(i).spots();
            int up = i == 2 ? 1 : -1;
            Spot first = side.get(0);
            Spot last = side.get(side.size() - 1);
            assertThat(SideSheetTest.distance(first, last)).as("22 / 5").isCloseTo(4.4, BY_HAND);
            assertThat((first.x_mm() + last.x_mm()) / 2 - pivot)
                    .as("440,5720 × 456,8241 / 458,5720 / 5 behind the pivot")
                    .isCloseTo(-87.77854, BY_HAND);
            assertThat(up * ((first.y_mm() + last.y_mm()) / 2 - middle))
                    .as("(74 + 4) / 5")
                    .isCloseTo(15.6, BY_HAND);
            Spot front = side.get(side.size() / 2 - 1);
            Spot otherFront = side.get(side.size() / 2);
            assertThat(up * ((front.y_mm() + otherFront.y_mm()) / 2 - middle))
                    .as("(24 + 11) / 5 at the pivot")
                    .isCloseTo(7.0, BY_HAND);
            assertThat((front.x_mm() + otherFront.x_mm()) / 2 - pivot).isCloseTo(0, BY_HAND);
        }
        assertThat(y(parts.get(1), false) - y(parts.get(3), true))
                .as("148 / 5 between the faces, the drive side below")
                .isCloseTo(29.6, BY_HAND);
    }

    @Test
    void itIsDimensionedAndSaysWhatItShows() {
        assertThat(SideSheetTest.words(whole()))
                .contains(
                        "A: swing arm from above, without its upper members",
                        "148,0",
                        "48,0",
                        "92,0",
                        "456,8",
                        "bridge Ø 18,0, 70,0 from the pivot",
                        "tyre 60,0 wide",
                        "tyre clear of the side by 5,4",
                        "Third angle projection",
                        "2 of 3");
        assertThat(whole().finding())
                .isEqualTo("Swing arm from above, drive side below: axle 148,0 mm, inside between its sides 48,0 mm,"
                        + " tyre clear of the side by 5,4.");
    }

    @Test
    void whatIsNotGivenIsNotDrawnAndStandsOnTheSheet() {
        DrawnSheet sheet = drawn(arm(null, null, null), "The bridge is not drawn. Its outside is not given.");
        assertThat(SideSheetTest.parts(sheet, Pen.OUTLINE)).hasSize(4);
        assertThat(SideSheetTest.words(sheet))
                .contains("The bridge is not drawn. Its outside is not given.", "456,8")
                .noneMatch(words -> words.startsWith("bridge") || words.startsWith("tyre"));
    }

    /**
     * After the parts of the sides one upper member, on the non-drive side, and the cross tube over both. The eye lies
     * 25,3295 behind the pivot; eye and axle are √(431,4946² + 220,2288²) = 484,4464 apart, so the member's end lies
     * 431,4946 × 466,4464 / 484,4464 = 415,4620 behind the eye and 74 + 4 from the middle plane, its front 22 + 9.
     */
    @Test
    void oneUpperMemberLiesOverTheNonDriveSideAndTheCrossTubeOverBoth() {
        List<Mark.Path> parts = SideSheetTest.parts(withUpperMembers(25.0), Pen.OUTLINE);
        assertThat(parts).hasSize(9);
        Mark.Path boss = parts.get(5);
        double pivot = (x(boss, false) + x(boss, true)) / 2;
        double middle = (y(boss, false) + y(parts.get(6), true)) / 2;
        Mark.Path cross = parts.get(8);
        double eye = (x(cross, false) + x(cross, true)) / 2;
        assertThat(eye - pivot).isCloseTo(-25.3295 / 5, BY_HAND);
        assertThat(x(cross, true) - x(cross, false)).as("25 / 5").isCloseTo(5, BY_HAND);
        assertThat(y(cross, true) - middle).as("(44 / 2 + 18) / 5").isCloseTo(8, BY_HAND);
        assertThat(middle - y(cross, false)).as("to the drive side as far").isCloseTo(8, BY_HAND);
        List<Spot> member = parts.get(7).spots();
        Spot first = member.get(0);
        Spot last = member.get(member.size() - 1);
        assertThat(SideSheetTest.distance(first, last)).as("18 / 5").isCloseTo(3.6, BY_HAND);
        assertThat((first.x_mm() + last.x_mm()) / 2 - eye).isCloseTo(-415.4620 / 5, BY_HAND);
        assertThat((first.y_mm() + last.y_mm()) / 2 - middle)
                .as("above, which is the non-drive side")
                .isCloseTo(15.6, BY_HAND);
        Spot front = member.get(member.size() / 2 - 1);
        Spot otherFront = member.get(member.size() / 2);
        assertThat((front.y_mm() + otherFront.y_mm()) / 2 - middle).isCloseTo(6.2, BY_HAND);
        assertThat(SideSheetTest.parts(withUpperMembers(null), Pen.OUTLINE))
                .as("without a cross tube that is not known")
                .hasSize(8);
    }

    /** Splay atan(47 / 466,4464); the room (466,4464 × 78 − 322 × 47) / 468,8083 = 45,325, less 30 and 9. */
    @Test
    void upperMembersAreDimensionedAndNamed() {
        DrawnSheet sheet = withUpperMembers(25.0);
        assertThat(SideSheetTest.words(sheet))
                .contains(
                        "A: swing arm from above, the drive side without its upper member",
                        "upper member Ø 18,0, splay 5,8°",
                        "tyre clear of the upper member by 6,3");
        assertThat(String.join(" ", SideSheetTest.words(sheet)))
                .contains("Upper members 44,0 apart inside at the shock, on a cross tube Ø 25,0.");
        assertThat(sheet.finding()).endsWith(", tyre clear of the upper member by 6,3.");
    }
}
