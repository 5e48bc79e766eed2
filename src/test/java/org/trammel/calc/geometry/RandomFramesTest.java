package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.trammel.calc.units.Answer;

/** What is true of every frame: measured on its nodes by lines and distances that the computation does not use. */
class RandomFramesTest {

    private static final Offset<Double> ALL_DIGITS = within(1e-9);
    private static final int FRAMES = 2000;

    /** A straight line through a point, by its angle against the ground. */
    private record Line(double x, double y, double angle_rad) {

        /** How far a point lies to the left, looking along it. */
        double aside(Point point) {
            return -(point.x_mm() - x) * Math.sin(angle_rad) + (point.y_mm() - y) * Math.cos(angle_rad);
        }

        /** How far along it a point lies. */
        double along(Point point) {
            return (point.x_mm() - x) * Math.cos(angle_rad) + (point.y_mm() - y) * Math.sin(angle_rad);
        }

        /** Where it crosses a height. */
        double xAt(double height) {
            return x + (height - y) / Math.tan(angle_rad);
        }
    }

    /** From the top of the head tube down to the ground. */
    private static Line steering(FrameGeometry frame) {
        return new Line(
                frame.layout().reach_mm(), frame.stack_mm(), -frame.layout().headAngle_rad());
    }

    /** Up the seat tube from its foot. */
    private static Line seatTube(FrameGeometry frame) {
        Point foot = frame.seatTubeFoot();
        return new Line(foot.x_mm(), foot.y_mm(), Math.PI - frame.layout().seatAngle_rad());
    }

    @Test
    void nodesLieOnTheirAxesAsFarApartAsTheyWereGiven() {
        for (FrameGeometry frame : RandomFrames.frames(FRAMES, 20261201)) {
            Layout given = frame.layout();
            Line steering = steering(frame);
            assertThat(steering.aside(frame.headTubeTop())).isCloseTo(0, ALL_DIGITS);
            assertThat(steering.aside(frame.headTubeBottom())).isCloseTo(0, ALL_DIGITS);
            assertThat(steering.along(frame.headTubeBottom())).isCloseTo(given.headTube_mm(), ALL_DIGITS);
            assertThat(steering.aside(frame.frontAxle())).isCloseTo(given.forkOffset_mm(), ALL_DIGITS);
            assertThat(steering.along(frame.frontAxle()))
                    .isCloseTo(given.headTube_mm() + given.lowerStack_mm() + given.forkLength_mm(), ALL_DIGITS);
            assertThat(steering.aside(frame.onSteeringAxis(77))).isCloseTo(0, ALL_DIGITS);
            assertThat(steering.along(frame.onSteeringAxis(77))).isCloseTo(77, ALL_DIGITS);
            Line seatTube = seatTube(frame);
            assertThat(seatTube.aside(frame.seatTubeTop())).isCloseTo(0, ALL_DIGITS);
            assertThat(seatTube.along(frame.seatTubeTop())).isCloseTo(given.seatTube_mm(), ALL_DIGITS);
            assertThat(seatTube.along(FrameGeometry.SHELL)).isCloseTo(0, ALL_DIGITS);
            assertThat(seatTube.aside(FrameGeometry.SHELL)).isCloseTo(given.seatTubeOffset_mm(), ALL_DIGITS);
            assertThat(seatTube.along(frame.onSeatTube(77))).isCloseTo(given.seatTube_mm() - 77, ALL_DIGITS);
            assertThat(frame.rearAxle().length_mm()).isCloseTo(given.chainstay_mm(), ALL_DIGITS);
            assertThat(frame.rearAxle().x_mm()).isNegative();
        }
    }

    /** Both wheels touch the ground; the steering axis, drawn on to it, meets it ahead of the front tyre by the trail. */
    @Test
    void wheelsStandOnTheGroundAndTheTrailIsMeasuredThere() {
        for (FrameGeometry frame : RandomFrames.frames(FRAMES, 20261202)) {
            double ground = -frame.shellHeight_mm();
            Layout given = frame.layout();
            assertThat(frame.frontAxle().y_mm() - given.frontWheelRadius_mm()).isCloseTo(ground, ALL_DIGITS);
            assertThat(frame.rearAxle().y_mm() - given.rearWheelRadius_mm()).isCloseTo(ground, ALL_DIGITS);
            double contact = frame.frontAxle().x_mm();
            assertThat(frame.trail_mm()).isCloseTo(steering(frame).xAt(ground) - contact, ALL_DIGITS);
            assertThat(frame.mechanicalTrail_mm())
                    .isCloseTo(-steering(frame).aside(new Point(contact, ground)), ALL_DIGITS);
            assertThat(frame.wheelbase_mm())
                    .isCloseTo(contact - frame.rearAxle().x_mm(), ALL_DIGITS);
            assertThat(frame.effectiveTopTube_mm())
                    .isCloseTo(given.reach_mm() - seatTube(frame).xAt(frame.stack_mm()), ALL_DIGITS);
            Point crown = frame.onSteeringAxis(given.headTube_mm() + given.lowerStack_mm());
            assertThat(frame.forkStraight_mm()).isCloseTo(frame.frontAxle().distance_mm(crown), ALL_DIGITS);
        }
    }

    /**
     * How far the front sinks when it is turned a little, found by turning the wheel's lowest point about the steering
     * axis in space: the height of a circle's lowest point in the turned plane, by differences.
     */
    @Test
    void theFlopIsWhatTheFrontSinksByWhenItIsTurned() {
        for (FrameGeometry frame : RandomFrames.frames(200, 20261203)) {
            double turn = 1e-4;
            double sunk = lowest(frame, 0) - lowest(frame, turn);
            // for a small turn the axis sinks by half of flop · turn²
            assertThat(-sunk).isCloseTo(frame.flop_mm() * turn * turn / 2, within(1e-9));
        }
    }

    /** Height of the front wheel's lowest point with the fork turned about the steering axis. */
    private static double lowest(FrameGeometry frame, double turn_rad) {
        double angle = frame.layout().headAngle_rad();
        double[] axis = {-Math.cos(angle), 0, Math.sin(angle)};
        Point foot = frame.onSteeringAxis(frame.layout().steering_mm());
        double[] arm = {
            frame.frontAxle().x_mm() - foot.x_mm(), 0, frame.frontAxle().y_mm() - foot.y_mm()
        };
        double[] axle = turned(arm, axis, turn_rad);
        double[] across = turned(new double[] {0, 1, 0}, axis, turn_rad);
        // the lowest point of a circle lies as far below its centre as its plane stands upright
        return foot.y_mm() + axle[2] - frame.layout().frontWheelRadius_mm() * Math.sqrt(1 - across[2] * across[2]);
    }

    /** Rodrigues' formula. */
    private static double[] turned(double[] v, double[] axis, double angle) {
        double dot = v[0] * axis[0] + v[1] * axis[1] + v[2] * axis[2];
        double[] cross = {
            axis[1] * v[2] - axis[2] * v[1], axis[2] * v[0] - axis[0] * v[2], axis[0] * v[1] - axis[1] * v[0]
        };
        double[] turned = new double[3];
        for (int i = 0; i < 3; i++) {
            turned[i] = v[i] * Math.cos(angle) + cross[i] * Math.sin(angle) + axis[i] * dot * (1 - Math.cos(angle));
        }
        return turned;
    }

    @Test
    void aFrameDrawnLargerIsLargerInEveryLengthAndInNoAngle() {
        Random random = new Random(20261204);
        for (int i = 0; i < FRAMES; i++) {
            TubeAxes axes = RandomFrames.axes(random);
            FrameGeometry frame = axes.geometry();
            double by = RandomFrames.between(random, 0.3, 4);
            Figures larger = new Figures();
            for (int place = 0; place < Dimension.STACK.ordinal(); place++) {
                Dimension dimension = Dimension.at(place);
                larger.put(place, dimension.of(frame) * (dimension.isAngle() ? 1 : by));
            }
            FrameGeometry there = value(FrameGeometry.of(larger.layout()));
            for (Dimension dimension : Dimension.values()) {
                double factor = dimension.isAngle() ? 1 : by;
                assertThat(dimension.of(there))
                        .as("%s", dimension)
                        .isCloseTo(factor * dimension.of(frame), within(1e-8));
            }
            TubeAxes thereAxes = value(TubeAxes.of(
                    there,
                    new JointPlaces(
                            by * axes.topTubeAtHead().distance_mm(frame.headTubeTop()),
                            by * axes.downTubeAtHead().distance_mm(frame.headTubeBottom()),
                            by * axes.topTubeAtSeat().distance_mm(frame.seatTubeTop()))));
            assertThat(thereAxes.topTube_mm()).isCloseTo(by * axes.topTube_mm(), within(1e-8));
            assertThat(thereAxes.downTube_mm()).isCloseTo(by * axes.downTube_mm(), within(1e-8));
            assertThat(thereAxes.topTubeToSeatTube_rad()).isCloseTo(axes.topTubeToSeatTube_rad(), ALL_DIGITS);
        }
    }

    /** The angles of every frame's triangle and quadrangle, by the law of cosines, and those of its mirror image. */
    @Test
    void interiorAnglesFollowFromLengthsAloneAndDoNotChangeInAMirror() {
        Random random = new Random(20261205);
        for (int i = 0; i < FRAMES; i++) {
            TubeAxes axes = RandomFrames.axes(random);
            FrameGeometry frame = axes.geometry();
            assertThat(axes.topTubeToHeadTube_rad())
                    .isCloseTo(
                            angle(axes.topTubeAtHead(), axes.topTubeAtSeat(), frame.onSteeringAxis(5000)),
                            within(1e-7));
            assertThat(axes.downTubeToHeadTube_rad())
                    .isCloseTo(
                            angle(axes.downTubeAtHead(), FrameGeometry.SHELL, frame.onSteeringAxis(-5000)),
                            within(1e-7));
            assertThat(axes.topTubeToSeatTube_rad())
                    .isCloseTo(angle(axes.topTubeAtSeat(), axes.topTubeAtHead(), frame.onSeatTube(5000)), within(1e-7));
            Point one = axes.topTubeAtSeat().minus(axes.topTubeAtHead());
            Point other = frame.down();
            assertThat(TubeAxes.angle_rad(new Point(-one.x_mm(), one.y_mm()), new Point(-other.x_mm(), other.y_mm())))
                    .isCloseTo(TubeAxes.angle_rad(one, other), ALL_DIGITS);
        }
    }

    /** At a point between two others, from the three distances. */
    private static double angle(Point at, Point one, Point other) {
        double a = at.distance_mm(one);
        double b = at.distance_mm(other);
        double c = one.distance_mm(other);
        return Math.acos((a * a + b * b - c * c) / (2 * a * b));
    }

    /** Another fork on a built frame: what was one body stays one body, to its mirror side too. */
    @Test
    void anotherForkTurnsTheFrameAsOneBody() {
        Random random = new Random(20261206);
        for (int i = 0; i < FRAMES; i++) {
            FrameGeometry frame = RandomFrames.frame(random);
            Substitution.Parts parts =
                    Substitution.Parts.of(frame.layout()).withForkLongerBy(RandomFrames.between(random, -40, 40));
            Substitution there = value(Substitution.of(frame, parts));
            FrameGeometry after = there.after();
            assertThat(after.rearAxle().distance_mm(after.headTubeBottom()))
                    .isCloseTo(frame.rearAxle().distance_mm(frame.headTubeBottom()), within(1e-8));
            assertThat(after.seatTubeTop().distance_mm(after.headTubeTop()))
                    .isCloseTo(frame.seatTubeTop().distance_mm(frame.headTubeTop()), within(1e-8));
            Substitution back = value(Substitution.of(after, Substitution.Parts.of(frame.layout())));
            Map<Dimension, Double> differences = new EnumMap<>(Dimension.class);
            for (Dimension dimension : Dimension.values()) {
                differences.put(dimension, dimension.of(back.after()) - dimension.of(frame));
            }
            assertThat(differences.values()).allSatisfy(off -> assertThat(off).isCloseTo(0, within(1e-7)));
            assertThat(back.pitch_rad()).isCloseTo(-there.pitch_rad(), ALL_DIGITS);
        }
    }

    private static <T> T value(Answer<T> answer) {
        assertThat(answer).isInstanceOf(Answer.Determined.class);
        return ((Answer.Determined<T>) answer).value();
    }
}
