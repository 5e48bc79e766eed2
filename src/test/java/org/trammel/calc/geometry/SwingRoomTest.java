package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.units.Answer;

/**
 * What a swing arm and its shock leave beside a tube, against a search that knows nothing of the formulas: points set
 * closely along both, turned about the pivot by complex numbers, and the nearest pair taken.
 */
class SwingRoomTest {

    private static final int ALONG_TUBE = 300;
    private static final int ALONG_PART = 120;
    private static final int TURNS = 40;
    /** Nearer than this the points along both stand too far apart to tell a distance. */
    private static final double TOLD_FROM_mm = 10;
    /** Half the way between two neighbours, squared, over twice that distance: 0.08 and 0.04; and the turns. */
    private static final double SEARCHED_mm = 0.15;

    private static final SwingClearance.Axis SEAT_TUBE =
            new SwingClearance.Axis(new Point(21.39, 5.14), new Point(-77.82, 418.39), 38);
    private static final SwingClearance.Axis DOWN_TUBE =
            new SwingClearance.Axis(new Point(0, 0), new Point(508.35, 549.94), 42);

    static List<DemoFrames.Row> rears() {
        return DemoFrames.read("/geometry/suspension.csv");
    }

    @ParameterizedTest
    @MethodSource("rears")
    void theShockLeavesWhatASearchFinds(DemoFrames.Row row) {
        Suspension rear = rear(row);
        for (SwingClearance.Axis tube : List.of(SEAT_TUBE, DOWN_TUBE)) {
            for (double toBody : new double[] {0, 25, 60}) {
                SwingClearance.ShockShape shape = new SwingClearance.ShockShape(50, toBody, 20);
                double eyes = searched(
                                rear.swing(),
                                travel ->
                                        nearest(turned(rear.swing(), rear.armEye(), travel), rear.frameEye(), 0, tube))
                        - 10;
                double body = searched(
                                rear.swing(),
                                travel -> nearest(
                                        turned(rear.swing(), rear.armEye(), travel), rear.frameEye(), toBody, tube))
                        - 25;
                assertThat(SwingClearance.leastOfShock(rear, tube, shape).clearance_mm())
                        .as("%s past %s", shape, tube)
                        .isCloseTo(Math.min(eyes, body) - tube.outside_mm() / 2, within(SEARCHED_mm));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("rears")
    void aRoundPartLeavesWhatASearchFinds(DemoFrames.Row row) {
        Swing swing = rear(row).swing();
        Random random = new Random(20260318);
        int told = 0;
        for (int i = 0; i < 30; i++) {
            Point part = new Point(-250 + 400 * random.nextDouble(), -50 + 400 * random.nextDouble());
            for (SwingClearance.Axis tube : List.of(SEAT_TUBE, DOWN_TUBE)) {
                double searched = searched(swing, travel -> {
                    Point there = turned(swing, part, travel);
                    return nearest(there, there, 0, tube);
                });
                if (searched < TOLD_FROM_mm) {
                    continue;
                }
                told++;
                assertThat(SwingClearance.leastOfRound(swing, tube, part, 18).clearance_mm())
                        .isCloseTo(searched - 9 - tube.outside_mm() / 2, within(SEARCHED_mm));
            }
        }
        assertThat(told).isGreaterThan(30);
    }

    /** The arm of the first rear end passes the seat tube in the side view: by hand (48 − 38) / 2 beside it. */
    @Test
    void sidesThatCrossATubeInTheSideViewPassBesideIt() {
        Suspension rear = rear(rears().get(0));
        List<Point> ends = List.of(rear.swing().axle(), rear.armEye());
        assertThat(SwingClearance.leastOfSides(rear.swing(), SEAT_TUBE, ends, 22, 48)
                        .clearance_mm())
                .isEqualTo(5);
        assertThat(SwingClearance.leastOfSides(rear.swing(), SEAT_TUBE, ends, 22, 36)
                        .clearance_mm())
                .as("narrower than the tube: they meet by (38 − 36) / 2")
                .isEqualTo(-1);
        SwingClearance.Axis far = new SwingClearance.Axis(new Point(200, 0), new Point(200, 400), 30);
        double searched = searched(
                rear.swing(),
                travel -> Math.min(
                        nearest(rear.swing().pivot(), turned(rear.swing(), ends.get(0), travel), 0, far),
                        nearest(rear.swing().pivot(), turned(rear.swing(), ends.get(1), travel), 0, far)));
        assertThat(SwingClearance.leastOfSides(rear.swing(), far, ends, 22, 20).clearance_mm())
                .as("a tube that they do not reach is cleared in the side view")
                .isCloseTo(searched - 11 - 15, within(SEARCHED_mm));
    }

    @Test
    void aBodyThatTheEyesLeaveNoRoomForIsTakenToBeInTheMiddle() {
        Suspension rear = rear(rears().get(0));
        SwingClearance.ShockShape shape = new SwingClearance.ShockShape(50, 500, 0);
        double middle = searched(rear.swing(), travel -> {
                    Point eye = turned(rear.swing(), rear.armEye(), travel);
                    Point half = new Point(
                            (eye.x_mm() + rear.frameEye().x_mm()) / 2,
                            (eye.y_mm() + rear.frameEye().y_mm()) / 2);
                    return nearest(half, half, 0, DOWN_TUBE);
                })
                - 25;
        double line = searched(
                rear.swing(),
                travel -> nearest(turned(rear.swing(), rear.armEye(), travel), rear.frameEye(), 0, DOWN_TUBE));
        assertThat(SwingClearance.leastOfShock(rear, DOWN_TUBE, shape).clearance_mm())
                .isCloseTo(Math.min(middle, line) - 21, within(SEARCHED_mm));
    }

    private static Suspension rear(DemoFrames.Row row) {
        Point pivot = row.point("pivot");
        Point end = row.point("axle_end");
        double rise = end.y_mm() - row.number("travel_mm");
        double radius = row.number("swing");
        Point axle = new Point(pivot.x_mm() - Math.sqrt(radius * radius - Math.pow(rise - pivot.y_mm(), 2)), rise);
        Answer<Suspension> answer = Swing.of(pivot, axle, row.number("travel_mm"))
                .then(swing -> Suspension.between(
                        swing,
                        row.point("arm_eye"),
                        row.point("frame_eye"),
                        new Shock(row.number("shock_length_mm"), row.number("shock_stroke_mm"))));
        return ((Answer.Determined<Suspension>) answer).value();
    }

    private static double searched(Swing swing, ToDoubleFunction<Double> distance) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= TURNS; i++) {
            least = Math.min(least, distance.applyAsDouble(swing.travel_mm() * i / TURNS));
        }
        return least;
    }

    /** A point turned about the pivot as far as the axle must turn to rise by the travel, found by halving. */
    private static Point turned(Swing swing, Point point, double travel) {
        double low = 0;
        double high = Math.PI / 2;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (about(swing, swing.axle(), middle).y_mm() - swing.axle().y_mm() < travel) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return about(swing, point, low);
    }

    /** Clockwise. */
    private static Point about(Swing swing, Point point, double angle) {
        double re = point.x_mm() - swing.pivot().x_mm();
        double im = point.y_mm() - swing.pivot().y_mm();
        return new Point(
                swing.pivot().x_mm() + re * Math.cos(-angle) - im * Math.sin(-angle),
                swing.pivot().y_mm() + re * Math.sin(-angle) + im * Math.cos(-angle));
    }

    private static double nearest(Point from, Point to, double cut, SwingClearance.Axis tube) {
        double length = Math.hypot(to.x_mm() - from.x_mm(), to.y_mm() - from.y_mm());
        double share = length == 0 ? 0 : cut / length;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= (length == 0 ? 0 : ALONG_PART); i++) {
            double s = share + (1 - 2 * share) * i / ALONG_PART;
            double x = from.x_mm() + s * (to.x_mm() - from.x_mm());
            double y = from.y_mm() + s * (to.y_mm() - from.y_mm());
            for (int k = 0; k <= ALONG_TUBE; k++) {
                double t = (double) k / ALONG_TUBE;
                double dx =
                        tube.from().x_mm() + t * (tube.to().x_mm() - tube.from().x_mm()) - x;
                double dy =
                        tube.from().y_mm() + t * (tube.to().y_mm() - tube.from().y_mm()) - y;
                least = Math.min(least, dx * dx + dy * dy);
            }
        }
        return Math.sqrt(least);
    }
}
