package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.units.Answer;

/** Against the invented workshop's frames, computed by a script written apart from this project, and by hand. */
class ClearancesTest {

    private static final Offset<Double> ALL_DIGITS = within(1e-9);

    private static <T> T value(Answer<T> answer) {
        assertThat(answer).isInstanceOf(Answer.Determined.class);
        return ((Answer.Determined<T>) answer).value();
    }

    private static DemoFrames.Row row(String name) {
        return DemoFrames.all().filter(row -> row.name().equals(name)).findAny().orElseThrow();
    }

    private static Clearances.TubeAtHead topTube(DemoFrames.Row row) {
        return new Clearances.TubeAtHead(row.point("TT_HT"), row.point("TT_ST"), row.number("top_tube_outside_mm") / 2);
    }

    private static Clearances.TubeAtHead downTube(DemoFrames.Row row) {
        return new Clearances.TubeAtHead(
                row.point("DT_HT"), FrameGeometry.SHELL, row.number("down_tube_outside_mm") / 2);
    }

    @ParameterizedTest
    @MethodSource("org.trammel.calc.geometry.DemoFrames#all")
    void theRoomAroundEveryDemoFrameIsReached(DemoFrames.Row row) {
        FrameGeometry frame = row.geometry();
        assertThat(value(Clearances.rearTyreToSeatTube(frame, row.number("seat_tube_outside_mm") / 2, 6))
                        .value_mm())
                .isCloseTo(row.number("tyre_st_clear"), ALL_DIGITS);
        Clearance pedal = value(Clearances.pedalToFrontTyre(frame, 170, 100));
        assertThat(pedal.margin().orElseThrow()).isCloseTo(row.number("toe_clear"), ALL_DIGITS);
        assertThat(pedal.isMet()).isEqualTo(row.number("toe_clear") >= 0);
        Clearances.TubeAtHead top = topTube(row);
        assertThat(value(Clearances.standover(frame, top.away(), top.atHead(), top.radius_mm(), 20, 800))
                        .value_mm())
                .isCloseTo(row.number("standover"), ALL_DIGITS);
        assertThat(value(Clearances.headTube(frame, 27, top, downTube(row), 8))
                        .nodes()
                        .value_mm())
                .isCloseTo(row.number("HT_node_gap"), ALL_DIGITS);
    }

    /**
     * Worked by hand: the tubes take 17.45 / sin 91.38° = 17.455 and 21 / sin 65.31° = 23.113 to either side of where
     * their axes come out of the head tube, 27 / tan 91.38° = -0.650 and 27 / tan 65.31° = 12.413 below their nodes.
     */
    @Test
    void edgesAreMeasuredWhereTheyLieOnTheHeadTube() {
        DemoFrames.Row row = row("O-101");
        Clearances.HeadTubeRoom room = value(Clearances.headTube(row.geometry(), 27, topTube(row), downTube(row), 8));
        assertThat(room.upperEnd().value_mm()).isCloseTo(30 - 0.650 - 17.455, within(0.002));
        assertThat(room.lowerEnd().value_mm()).isCloseTo(29 - 12.413 - 23.113, within(0.002));
        assertThat(room.lowerEnd().isMet()).isFalse();
        assertThat(room.toes().value_mm()).isCloseTo(81 + 12.413 - 23.113 - (30 - 0.650 + 17.455), within(0.004));
        assertThat(room.toes().isMet()).isTrue();
        assertThat(value(Clearances.headTube(row.geometry(), 27, topTube(row), downTube(row), 23.6))
                        .toes()
                        .isMet())
                .isFalse();
    }

    /** The outline of each tube is walked from the seat tube's side until it enters the head tube; halved in, no formula. */
    @ParameterizedTest
    @MethodSource("org.trammel.calc.geometry.DemoFrames#all")
    void edgesAreWhereTheOutlinesOfTheTubesEnterTheHeadTube(DemoFrames.Row row) {
        FrameGeometry frame = row.geometry();
        double radius = row.number("head_tube_outside_mm") / 2;
        Clearances.TubeAtHead top = topTube(row);
        Clearances.TubeAtHead down = downTube(row);
        Clearances.HeadTubeRoom room = value(Clearances.headTube(frame, radius, top, down, 8));
        double upper = entersAt(frame, top, 1, radius);
        double lower = entersAt(frame, down, -1, radius);
        assertThat(room.upperEnd().value_mm()).isCloseTo(upper, within(1e-6));
        assertThat(room.lowerEnd().value_mm()).isCloseTo(frame.layout().headTube_mm() - lower, within(1e-6));
        assertThat(room.toes().value_mm())
                .isCloseTo(entersAt(frame, down, 1, radius) - entersAt(frame, top, -1, radius), within(1e-6));
    }

    /** How far below the head tube's top, along it; side 1 is the upper edge. */
    private static double entersAt(FrameGeometry frame, Clearances.TubeAtHead tube, int side, double radius) {
        Point top = frame.headTubeTop();
        Point bottom = frame.headTubeBottom();
        Point along = tube.away().minus(tube.atHead());
        Point across = new Point(-along.y_mm(), along.x_mm());
        across = across.times(
                side * (across.y_mm() > 0 ? 1 : -1) * tube.radius_mm() / Math.hypot(across.x_mm(), across.y_mm()));
        double inside = -0.5;
        double outside = 1;
        for (int i = 0; i < 80; i++) {
            double middle = (inside + outside) / 2;
            Point at = tube.atHead().plus(along.times(middle)).plus(across);
            double rearward = ((bottom.x_mm() - top.x_mm()) * (at.y_mm() - top.y_mm())
                            - (bottom.y_mm() - top.y_mm()) * (at.x_mm() - top.x_mm()))
                    / -Math.hypot(bottom.x_mm() - top.x_mm(), bottom.y_mm() - top.y_mm());
            if (rearward < radius) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        Point at = tube.atHead().plus(along.times(outside)).plus(across);
        return ((at.x_mm() - top.x_mm()) * (bottom.x_mm() - top.x_mm())
                        + (at.y_mm() - top.y_mm()) * (bottom.y_mm() - top.y_mm()))
                / Math.hypot(bottom.x_mm() - top.x_mm(), bottom.y_mm() - top.y_mm());
    }

    /** The frame that is refused at 428 mm of chainstay and taken at 432 mm. */
    @Test
    void aLongerChainstayMakesRoomForTheTyre() {
        FrameGeometry narrow = row("O-118").geometry();
        assertThat(value(Clearances.rearTyreToSeatTube(narrow, 17.45, 6)).isMet())
                .isFalse();
        Clearance wide = value(Clearances.rearTyreToSeatTube(withChainstay(narrow, 432), 17.45, 6));
        assertThat(wide.value_mm()).isCloseTo(6.4, within(0.05));
        assertThat(wide.isMet()).isTrue();
    }

    private static FrameGeometry withChainstay(FrameGeometry frame, double chainstay) {
        Layout l = frame.layout();
        return value(FrameGeometry.of(new Layout(
                l.headAngle_rad(),
                l.seatAngle_rad(),
                l.reach_mm(),
                l.headTube_mm(),
                l.lowerStack_mm(),
                l.forkLength_mm(),
                l.forkOffset_mm(),
                l.shellDrop_mm(),
                chainstay,
                l.seatTube_mm(),
                l.seatTubeOffset_mm(),
                l.frontWheelRadius_mm(),
                l.rearWheelRadius_mm())));
    }

    /** Worked by hand: a post of 400 with the saddle 250 above the seat tube's top goes in 150. */
    @Test
    void aSeatpostGoesInByWhatDoesNotStandOut() {
        Clearances.SeatpostRoom room = value(Clearances.seatpost(row("O-101").geometry(), 400, 100, 680, 160, 300));
        assertThat(room.mark().margin()).hasValue(50);
        assertThat(room.node().margin()).hasValue(-10);
        assertThat(room.node().isMet()).isFalse();
        assertThat(room.depth().margin()).hasValue(150);
        assertThat(Clearances.seatpost(row("O-101").geometry(), 400, 100, 400, 160, 300))
                .isEqualTo(Answer.none(
                        "saddleHeight", "The saddle at 400 mm would stand below the seat tube's top at 430 mm."));
    }

    @Test
    void aForkAndAFrameAreComparedWithTheLongestAllowed() {
        assertThat(value(Clearances.forkLength(row("O-101").geometry(), 551)).margin())
                .hasValue(10);
        Clearance length =
                value(Clearances.overallLength(List.of(end(0, 0, 0), end(300, 400, 0), end(100, 0, 0)), 499));
        assertThat(length.value_mm()).isEqualTo(500);
        assertThat(length.isMet()).isFalse();
        assertThat(value(Clearances.overallLength(List.of(end(0, 0, 18), end(300, 400, 27), end(100, 0, 90)), 499))
                        .value_mm())
                .as(
                        "3, 4, 5 and out to what stands around both ends; the third is nearer, √(200² + 400²) + 117 = 564,2")
                .isCloseTo(Math.sqrt(200 * 200 + 400 * 400) + 117, within(1e-9));
        assertThat(value(Clearances.overallLength(List.of(end(0, 0, 18), end(300, 400, 27)), 499))
                        .value_mm())
                .isEqualTo(545);
    }

    private static Clearances.End end(double x_mm, double y_mm, double radius_mm) {
        return new Clearances.End(new Point(x_mm, y_mm), radius_mm);
    }

    @Test
    void whatIsNoLengthOrLimitIsNamed() {
        FrameGeometry frame = row("O-101").geometry();
        assertThat(Clearances.pedalToFrontTyre(frame, Double.NaN, 100))
                .isEqualTo(Answer.none("crank", "The crank of no number is no length above 0."));
        assertThat(Clearances.rearTyreToSeatTube(frame, 0, 6))
                .isEqualTo(Answer.none("seatTubeOutside", "The seat tube's radius of 0 mm is no length above 0."));
        assertThat(Clearances.rearTyreToSeatTube(frame, 17, Double.NaN))
                .isEqualTo(Answer.none("limit", "The limit to compare with is no number."));
        assertThat(Clearances.standover(frame, new Point(1, 1), new Point(1, 9), 17, 20, 800))
                .isEqualTo(Answer.none("topTubeAtHead", "The top tube does not run ahead."));
        assertThat(Clearances.overallLength(List.of(), 1400))
                .isEqualTo(Answer.none("nodes", "The longest line of the frame of 0 mm is no length above 0."));
    }

    /** Straight ahead, in the middle plane and with a tyre of no width the arc is the distance of two points. */
    @Test
    void theArcBeginsAtThePlaneDistance() {
        FrameGeometry frame = row("O-108").geometry();
        PedalArc straight = value(PedalArc.of(frame, 170, 0, 0, 0, 0));
        assertThat(straight.distance_mm())
                .isCloseTo(frame.frontAxle().distance_mm(new Point(170, 0)) - 339, ALL_DIGITS);
    }

    /** Against points all over the turned tyre, set out by rotation matrices. */
    @Test
    void theArcIsTheLeastDistanceToPointsOfTheTurnedTyre() {
        FrameGeometry frame = row("O-108").geometry();
        double least = Double.POSITIVE_INFINITY;
        for (int turn = 0; turn <= 60; turn++) {
            for (int around = 0; around < 1440; around++) {
                for (int across = 0; across < 24; across++) {
                    least = Math.min(least, toAxle(frame, turn, around / 4.0, across * 15));
                }
            }
        }
        PedalArc arc = value(PedalArc.of(frame, 170, 60, 110, 32, Math.toRadians(60)));
        assertThat(arc.distance_mm()).isCloseTo(least, within(0.3)).isLessThanOrEqualTo(least + 1e-9);
        assertThat(arc.steer_rad()).isGreaterThan(Math.toRadians(5));
    }

    private static double toAxle(FrameGeometry frame, double turn, double around, double across) {
        double ring = 339 - 16 + 16 * Math.cos(Math.toRadians(across));
        double x = ring * Math.cos(Math.toRadians(around)) + frame.frontAxle().x_mm();
        double y = ring * Math.sin(Math.toRadians(around)) + frame.frontAxle().y_mm();
        double z = 16 * Math.sin(Math.toRadians(across));
        Point top = frame.headTubeTop();
        double kx = frame.down().x_mm();
        double ky = frame.down().y_mm();
        double cos = Math.cos(Math.toRadians(turn));
        double sin = Math.sin(Math.toRadians(-turn));
        double px = x - top.x_mm();
        double py = y - top.y_mm();
        double along = (kx * px + ky * py) * (1 - cos);
        double qx = px * cos + ky * z * sin + kx * along + top.x_mm();
        double qy = py * cos - kx * z * sin + ky * along + top.y_mm();
        double qz = z * cos + (kx * py - ky * px) * sin;
        double side = Math.max(60, Math.min(110, Math.abs(qz)));
        return Math.sqrt(Math.pow(qx - 170, 2) + qy * qy + Math.pow(Math.abs(qz) - side, 2));
    }
}
