package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.units.Answer;

/** Against the invented workshop's frames, computed by a script written apart from this project. */
class StaysTest {

    private static final Offset<Double> ALL_DIGITS = within(1e-9);

    static Stream<DemoFrames.Row> withStays() {
        return DemoFrames.all().filter(frame -> frame.has("CS_len3d"));
    }

    /** The workshop's dropouts hold a stay 18 mm before the axle and 4 mm outside its face. */
    static StayPlaces places(DemoFrames.Row frame) {
        return new StayPlaces(
                frame.number("seatstay_at_seat_mm"),
                frame.number("chainstay_at_shell_mm", 24),
                frame.number("axle_width_mm"),
                18,
                4,
                frame.number("shell_outside_mm"),
                frame.number("seat_tube_outside_mm"));
    }

    static Stays stays(DemoFrames.Row frame) {
        return ((Answer.Determined<Stays>) Stays.of(frame.geometry(), places(frame))).value();
    }

    @ParameterizedTest
    @MethodSource("withStays")
    void lengthsAndAnglesOfEveryFrameAreReached(DemoFrames.Row frame) {
        Stays stays = stays(frame);
        assertThat(stays.chainstay().length_mm()).isCloseTo(frame.number("CS_len3d"), ALL_DIGITS);
        assertThat(stays.seatstay().length_mm()).isCloseTo(frame.number("SS_len3d"), ALL_DIGITS);
        assertThat(Math.toDegrees(stays.atAxle_rad())).isCloseTo(frame.number("ang_SS_CS"), ALL_DIGITS);
        assertThat(Math.toDegrees(stays.toSeatTube_rad())).isCloseTo(frame.number("ang_SS_ST"), ALL_DIGITS);
    }

    @Test
    void everyFrameWithoutSuspensionHasThem() {
        assertThat(withStays()).hasSize(15);
    }

    /** Pythagoras once more, by the sides 3-4-5 and 5-12-13. */
    @Test
    void splayIsTheSlopeOutOfTheMiddlePlane() {
        Stay stay = new Stay(new SpacePoint(0, 0, 24), new SpacePoint(-30, 40, 144));
        assertThat(stay.sideLength_mm()).isEqualTo(50);
        assertThat(stay.length_mm()).isEqualTo(130);
        assertThat(Math.tan(stay.splay_rad())).isCloseTo(120.0 / 50, within(1e-12));
    }

    /** The ends lie on the lines that the side view shows, and the stays end as far before the axle as asked. */
    @ParameterizedTest
    @MethodSource("withStays")
    void theStaysLieOverTheirLines(DemoFrames.Row frame) {
        Stays stays = stays(frame);
        Point axle = frame.geometry().rearAxle();
        for (Stay stay : new Stay[] {stays.chainstay(), stays.seatstay()}) {
            Point front = new Point(stay.front().x_mm(), stay.front().y_mm());
            Point rear = new Point(stay.rear().x_mm(), stay.rear().y_mm());
            assertThat(axle.distance_mm(rear)).isCloseTo(18, ALL_DIGITS);
            assertThat(rear.minus(front).cross(axle.minus(front))).isCloseTo(0, within(1e-6));
            assertThat(stay.rear().z_mm()).isEqualTo(frame.number("axle_width_mm") / 2 + 4);
        }
        assertThat(new Point(
                                stays.chainstay().front().x_mm(),
                                stays.chainstay().front().y_mm())
                        .length_mm())
                .isCloseTo(frame.number("shell_outside_mm") / 2, ALL_DIGITS);
    }

    @ParameterizedTest
    @CsvSource({
        "431, 24, 148, 18, seatstayAtSeat, 'The seatstay 431 mm below the top of the seat tube is not on the seat tube, which is 430 mm long.'",
        "55, 0, 148, 18, chainstayFromMiddle, The chainstay's distance from the middle plane of 0 mm is not above 0 and at most 10 m.",
        "55, 24, NaN, 18, axleWidth, The axle width of no number is not above 0 and at most 10 m.",
        "55, 24, 148, 412, axleToStay, 'Between shell and dropout no room is left for the chainstay''s tube: it would be -1 mm long in the side view.'",
    })
    void whatCannotBePlacedIsNamed(double below, double middle, double width, double gap, String input, String words) {
        FrameGeometry geometry = DemoFrames.all().findFirst().orElseThrow().geometry();
        assertThat(Stays.of(geometry, new StayPlaces(below, middle, width, gap, 4, 42, 34.9)))
                .isEqualTo(Answer.none(input, words));
    }
}
