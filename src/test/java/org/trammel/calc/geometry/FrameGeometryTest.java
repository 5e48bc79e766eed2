package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.units.Answer;

/** Against the invented workshop's frames, computed by a script written apart from this project. */
class FrameGeometryTest {

    private static final Offset<Double> ALL_DIGITS = within(1e-9);

    @ParameterizedTest
    @MethodSource("org.trammel.calc.geometry.DemoFrames#all")
    void everyNodeAndLengthFollowsFromTheLayout(DemoFrames.Row frame) {
        FrameGeometry geometry = frame.geometry();
        assertSame(geometry.headTubeTop(), frame.point("HTtop"));
        assertSame(geometry.headTubeBottom(), frame.point("HTbot"));
        assertSame(geometry.frontAxle(), frame.point("Faxle"));
        assertSame(geometry.rearAxle(), frame.point("Raxle"));
        assertSame(geometry.seatTubeTop(), frame.point("STtop"));
        assertThat(geometry.stack_mm()).isCloseTo(frame.number("stack"), ALL_DIGITS);
        assertThat(geometry.wheelbase_mm()).isCloseTo(frame.number("wheelbase"), ALL_DIGITS);
        assertThat(geometry.frontCentre_mm()).isCloseTo(frame.number("front_centre"), ALL_DIGITS);
        assertThat(geometry.trail_mm()).isCloseTo(frame.number("trail"), ALL_DIGITS);
        assertThat(geometry.flop_mm()).isCloseTo(frame.number("flop"), ALL_DIGITS);
        assertThat(geometry.shellHeight_mm()).isCloseTo(frame.number("bb_height"), ALL_DIGITS);
        assertThat(geometry.effectiveTopTube_mm()).isCloseTo(frame.number("TT_eff"), ALL_DIGITS);
    }

    private static void assertSame(Point point, Point wanted) {
        assertThat(point.distance_mm(wanted)).as("%s, wanted %s", point, wanted).isLessThan(1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 74, 432, headAngle, The head angle of 0° is not between 0° and 90°.",
        "90, 74, 432, headAngle, The head angle of 90° is not between 0° and 90°.",
        "655, 74, 432, headAngle, The head angle of 655° is not between 0° and 90°.",
        "NaN, 74, 432, headAngle, The head angle of no number is not between 0° and 90°.",
        "65.5, 90, 432, seatAngle, The seat angle of 90° is not between 0° and 90°.",
        "65.5, 74, 58, chainstay, 'The chainstay of 58 mm does not reach the rear axle, which lies 58 mm above the shell.'",
        "65.5, 74, NaN, chainstay, 'The chainstay of no number does not reach the rear axle, which lies 58 mm above the shell.'",
    })
    void whatCannotBeIsNamed(double headAngle, double seatAngle, double chainstay, String input, String words) {
        Answer<FrameGeometry> answer = FrameGeometry.of(new Layout(
                Math.toRadians(headAngle),
                Math.toRadians(seatAngle),
                458,
                110,
                12,
                541,
                44,
                58,
                chainstay,
                430,
                0,
                370,
                370));
        assertThat(answer).isEqualTo(Answer.none(input, words));
    }

    @Test
    void aShellAboveTheAxlesIsAFrameToo() {
        Answer<FrameGeometry> answer = FrameGeometry.of(
                new Layout(Math.toRadians(73), Math.toRadians(73), 380, 100, 12, 370, 45, -20, 380, 300, 0, 250, 250));
        assertThat(answer).isInstanceOfSatisfying(Answer.Determined.class, there -> {
            FrameGeometry geometry = (FrameGeometry) there.value();
            assertThat(geometry.rearAxle().y_mm()).isEqualTo(-20);
            assertThat(geometry.shellHeight_mm()).isEqualTo(270);
        });
    }

    /** Bicycle of Meijaard et al., Proc. R. Soc. A 463 (2007) 1955: its trail of 0,08 m, head angle 72°, wheel 0,35 m. */
    @Test
    void theTrailOfThePublishedBicycleIsReached() {
        double offset = 350 * Math.cos(Math.toRadians(72)) - 80 * Math.sin(Math.toRadians(72));
        FrameGeometry geometry = ((Answer.Determined<FrameGeometry>) FrameGeometry.of(new Layout(
                        Math.toRadians(72), Math.toRadians(73), 380, 130, 12, 370, offset, 60, 420, 500, 0, 350, 300)))
                .value();
        assertThat(offset).as("the offset that the same figures give").isCloseTo(32.0714, within(5e-5));
        assertThat(geometry.trail_mm()).isCloseTo(80, ALL_DIGITS);
        assertThat(geometry.flop_mm()).isCloseTo(23.5114, within(5e-5));
    }
}
