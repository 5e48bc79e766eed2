package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.units.Answer;

/** Against the invented workshop's frames, computed by a script written apart from this project. */
class TubeAxesTest {

    private static final Offset<Double> ALL_DIGITS = within(1e-9);

    static JointPlaces places(DemoFrames.Row frame) {
        return new JointPlaces(
                frame.number("top_tube_at_head_mm"),
                frame.number("down_tube_at_head_mm"),
                frame.number("top_tube_at_seat_mm"));
    }

    @ParameterizedTest
    @MethodSource("org.trammel.calc.geometry.DemoFrames#all")
    void nodesLengthsAndAnglesFollowFromThePlaces(DemoFrames.Row frame) {
        TubeAxes axes = frame.axes();
        assertSame(axes.topTubeAtHead(), frame.point("TT_HT"));
        assertSame(axes.downTubeAtHead(), frame.point("DT_HT"));
        assertSame(axes.topTubeAtSeat(), frame.point("TT_ST"));
        assertThat(axes.topTube_mm()).isCloseTo(frame.number("TT_len"), ALL_DIGITS);
        assertThat(axes.downTube_mm()).isCloseTo(frame.number("DT_len"), ALL_DIGITS);
        assertThat(axes.betweenHeadNodes_mm()).isCloseTo(frame.number("HT_node_gap"), ALL_DIGITS);
        assertDegrees(axes.topTubeSlope_rad(), frame.number("tt_slope"));
        assertDegrees(axes.downTubeSlope_rad(), frame.number("dt_slope"));
        assertDegrees(axes.topTubeToHeadTube_rad(), frame.number("ang_TT_HT"));
        assertDegrees(axes.downTubeToHeadTube_rad(), frame.number("ang_DT_HT"));
        assertDegrees(axes.topTubeToSeatTube_rad(), frame.number("ang_TT_ST"));
        assertDegrees(axes.downTubeToSeatTube_rad(), frame.number("ang_DT_ST"));
    }

    /** Euclid: the angles of a triangle and of a quadrangle. Needs a seat tube that starts in the shell's centre. */
    @ParameterizedTest
    @MethodSource("org.trammel.calc.geometry.DemoFrames#all")
    void theFourInteriorAnglesMakeAFullTurn(DemoFrames.Row frame) {
        TubeAxes axes = frame.axes();
        assertDegrees(
                axes.topTubeToHeadTube_rad()
                        + axes.downTubeToHeadTube_rad()
                        + axes.topTubeToSeatTube_rad()
                        + axes.downTubeToSeatTube_rad(),
                360);
    }

    private static void assertSame(Point point, Point wanted) {
        assertThat(point.distance_mm(wanted)).as("%s, wanted %s", point, wanted).isLessThan(1e-9);
    }

    private static void assertDegrees(double angle_rad, double wanted_deg) {
        assertThat(Math.toDegrees(angle_rad)).isCloseTo(wanted_deg, ALL_DIGITS);
    }

    @ParameterizedTest
    @CsvSource({
        "-1, 29, 45, topTubeAtHead, 'The top tube -1 mm below the top of the head tube is not on the head tube, which is 110 mm long.'",
        "30, 110.5, 45, downTubeAtHead, 'The down tube 110.5 mm above the bottom of the head tube is not on the head tube, which is 110 mm long.'",
        "30, 29, NaN, topTubeAtSeat, 'The top tube no number below the top of the seat tube is not on the seat tube, which is 430 mm long.'",
        "30, 29, 1e308, topTubeAtSeat, 'The top tube more than 1 km below the top of the seat tube is not on the seat tube, which is 430 mm long.'",
    })
    void aPlaceOutsideItsTubeIsNamed(double tt, double dt, double seat, String input, String words) {
        FrameGeometry geometry = DemoFrames.all().findFirst().orElseThrow().geometry();
        assertThat(TubeAxes.of(geometry, new JointPlaces(tt, dt, seat))).isEqualTo(Answer.none(input, words));
    }
}
