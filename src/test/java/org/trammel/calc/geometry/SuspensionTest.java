package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.units.Answer;

/** Against the invented workshop's rear ends, computed by a script written apart from this project, and against differences. */
class SuspensionTest {

    private static final Offset<Double> ALL_DIGITS = within(1e-9);

    /** The script took its ratios from differences, and their last digits stand a hundredfold in a percentage. */
    private static final Offset<Double> PER_CENT_OF_DIFFERENCES = within(1e-8);

    static Stream<DemoFrames.Row> rearEnds() {
        return DemoFrames.read("/geometry/suspension.csv").stream();
    }

    private static FrameGeometry frame(DemoFrames.Row row) {
        return DemoFrames.all()
                .filter(frame -> frame.name().equals(row.name()))
                .findFirst()
                .orElseThrow()
                .geometry();
    }

    private static Suspension suspension(DemoFrames.Row row) {
        Swing swing = value(Swing.of(row.point("pivot"), frame(row).rearAxle(), row.number("travel_mm")));
        return value(Suspension.of(
                swing,
                row.number("shock_arm_mm"),
                Math.toRadians(row.number("shock_arm_angle_deg")),
                new Shock(row.number("shock_length_mm"), row.number("shock_stroke_mm")),
                Suspension.FrameEye.HIGHER));
    }

    @ParameterizedTest
    @MethodSource("rearEnds")
    void everyFigureIsTheScripts(DemoFrames.Row row) {
        Suspension suspension = suspension(row);
        Swing swing = suspension.swing();
        Suspension.At end = suspension.at(swing.travel_mm());
        assertThat(swing.radius_mm()).isCloseTo(row.number("swing"), ALL_DIGITS);
        assertSame(suspension.armEye(), row.point("arm_eye"));
        assertSame(suspension.frameEye(), row.point("frame_eye"));
        assertSame(end.axle(), row.point("axle_end"));
        assertThat(Math.toDegrees(end.rotation_rad())).isCloseTo(row.number("rotation_deg"), ALL_DIGITS);
        assertThat(suspension.ratioAt(0)).isCloseTo(row.number("ratio_start"), ALL_DIGITS);
        assertThat(suspension.ratioAt(0.3)).isCloseTo(row.number("ratio_30"), ALL_DIGITS);
        assertThat(suspension.ratioAt(1)).isCloseTo(row.number("ratio_end"), ALL_DIGITS);
        assertThat(suspension.meanRatio()).isCloseTo(row.number("ratio_mean"), ALL_DIGITS);
        assertThat(100 * suspension.change()).isCloseTo(row.number("change_percent"), PER_CENT_OF_DIFFERENCES);
        assertThat(suspension.extended_mm()).isCloseTo(row.number("extended"), ALL_DIGITS);
        assertThat(suspension.bottomed_mm()).isCloseTo(row.number("bottomed"), ALL_DIGITS);
        assertThat(suspension.shock().atSag_mm(0.3)).isCloseTo(row.number("sag_length"), ALL_DIGITS);
        DemoFrames.Row drawn = DemoFrames.all()
                .filter(each -> each.name().equals(row.name()))
                .findFirst()
                .orElseThrow();
        SwingClearance.Axis seatTube = new SwingClearance.Axis(
                frame(row).seatTubeFoot(), frame(row).seatTubeTop(), drawn.number("seat_tube_outside_mm"));
        double tyre = frame(row).layout().rearWheelRadius_mm();
        assertThat(SwingClearance.tyre_mm(swing, seatTube, tyre, swing.travel_mm()))
                .isCloseTo(row.number("clearance_end"), ALL_DIGITS);
        SwingClearance least = SwingClearance.leastOfTyre(swing, seatTube, tyre);
        assertThat(least.clearance_mm()).isLessThanOrEqualTo(row.number("clearance_end") + 1e-9);
    }

    private static void assertSame(Point point, Point wanted) {
        assertThat(point.distance_mm(wanted)).as("%s, wanted %s", point, wanted).isLessThan(1e-9);
    }

    /** Travel by shortening, by differences; and the shock's length by the law of cosines about the pivot. */
    @ParameterizedTest
    @MethodSource("rearEnds")
    void theRatioIsTheSlopeOfTravelOverShockLength(DemoFrames.Row row) {
        Suspension suspension = suspension(row);
        Point pivot = suspension.swing().pivot();
        double a = pivot.distance_mm(suspension.armEye());
        double b = pivot.distance_mm(suspension.frameEye());
        double rest = suspension.extended_mm();
        double between = Math.acos((a * a + b * b - rest * rest) / (2 * a * b));
        List<Suspension.At> curve = suspension.curve(50);
        assertThat(curve).hasSize(51);
        double step = 1e-3;
        for (Suspension.At at : curve.subList(1, 50)) {
            double longer = suspension.at(at.travel_mm() - step).shockLength_mm();
            double shorter = suspension.at(at.travel_mm() + step).shockLength_mm();
            assertThat(at.ratio()).isCloseTo(2 * step / (longer - shorter), within(1e-6));
            double turned = between - at.rotation_rad();
            assertThat(at.shockLength_mm())
                    .isCloseTo(Math.sqrt(a * a + b * b - 2 * a * b * Math.cos(turned)), ALL_DIGITS);
            assertThat(at.axle().distance_mm(pivot))
                    .isCloseTo(suspension.swing().radius_mm(), ALL_DIGITS);
            assertThat(suspension.travelAt_mm(at.shockLength_mm())).isCloseTo(at.travel_mm(), within(1e-7));
        }
        assertThat(curve.get(0).travel_mm()).isZero();
        assertThat(curve.get(50).travel_mm()).isEqualTo(row.number("travel_mm"));
    }

    /** The mean of the slope over shock length: Simpson's rule over 1/ratio gives back what the shock got shorter. */
    @ParameterizedTest
    @MethodSource("rearEnds")
    void theRatioAddsUpToTheStroke(DemoFrames.Row row) {
        List<Suspension.At> curve = suspension(row).curve(200);
        double sum = 0;
        for (int i = 0; i <= 200; i++) {
            int weight = i == 0 || i == 200 ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight / curve.get(i).ratio();
        }
        assertThat(sum * row.number("travel_mm") / 600).isCloseTo(row.number("shock_stroke_mm"), within(1e-8));
    }

    @ParameterizedTest
    @MethodSource("rearEnds")
    void bothEyesAsDrawnGiveTheSame(DemoFrames.Row row) {
        Suspension found = suspension(row);
        Suspension drawn =
                value(Suspension.between(found.swing(), row.point("arm_eye"), row.point("frame_eye"), found.shock()));
        assertThat(drawn.ratioAt(0.3)).isCloseTo(row.number("ratio_30"), ALL_DIGITS);
    }

    /** Any rear end, drawn twice as large and moved elsewhere, has the same ratio. */
    @Test
    void theRatioDoesNotDependOnSizeOrPlace() {
        Random random = new Random(20260311);
        int computed = 0;
        for (int i = 0; i < 500; i++) {
            double x = 60 * random.nextDouble() - 20;
            double y = 20 + 100 * random.nextDouble();
            double arm = 100 + 120 * random.nextDouble();
            double angle = Math.toRadians(60 + 60 * random.nextDouble());
            double travel = 60 + 140 * random.nextDouble();
            Shock shock = new Shock(150 + 100 * random.nextDouble(), 30 + 40 * random.nextDouble());
            Answer<Suspension> one = Swing.of(new Point(x, y), new Point(-430, 30), travel)
                    .then(swing -> Suspension.of(swing, arm, angle, shock, Suspension.FrameEye.HIGHER));
            Answer<Suspension> two = Swing.of(
                            new Point(2 * x + 700, 2 * y - 90), new Point(-860 + 700, 60 - 90), 2 * travel)
                    .then(swing -> Suspension.of(
                            swing,
                            2 * arm,
                            angle,
                            new Shock(2 * shock.length_mm(), 2 * shock.stroke_mm()),
                            Suspension.FrameEye.HIGHER));
            assertThat(one.getClass()).isEqualTo(two.getClass());
            if (one instanceof Answer.Determined<Suspension> there) {
                computed++;
                assertThat(value(two).ratioAt(0.3)).isCloseTo(there.value().ratioAt(0.3), within(1e-9));
                assertThat(there.value().curve(20))
                        .allSatisfy(at -> assertThat(at.ratio()).isPositive().isFinite());
                assertThat(there.value().meanRatio()).isCloseTo(travel / shock.stroke_mm(), within(1e-9));
            }
        }
        assertThat(computed).isGreaterThan(100);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "NaN | 72 | 140 | pivot | The place of the pivot ahead of the shell is no number.",
                "22 | Infinity | 140 | pivot | The place of the pivot above the shell is no number.",
                "-434 | 32 | 140 | pivot | The pivot lies on the rear axle: nothing swings.",
                "-450 | 72 | 140 | pivot | The pivot does not lie ahead of the rear axle: it lies 16 mm behind it.",
                "1.7e308 | -1.7e308 | 140 | pivot | The pivot and the rear axle lie too far apart to be computed with.",
                "22 | 72 | 0 | travel | The travel, 0 mm, is not above 0.",
                "22 | 72 | -5 | travel | The travel, -5 mm, is not above 0.",
                "22 | 72 | NaN | travel | The travel, no number, is not above 0.",
                "-34 | 32 | 400 | travel | The travel of 400 mm is more than the swing can give: with 400 mm from pivot to axle it ends below 400 mm.",
                "-34 | 332 | 800.001 | travel | The travel of 800.001 mm is more than the swing can give: with 500 mm from pivot to axle it ends below 800 mm.",
            })
    void aSwingThatCannotBeIsNamed(double x, double y, double travel, String input, String words) {
        assertThat(Swing.of(new Point(x, y), new Point(-434, 32), travel)).isEqualTo(Answer.none(input, words));
    }

    @Test
    void aShockThatCannotBeIsNamed() {
        assertThat(of(0, 98, 210, 55))
                .containsExactly(new Answer.Gap("shockArm", "The arm from pivot to shock, 0 mm, is not above 0."));
        assertThat(of(182, Double.NaN, 210, 55))
                .containsExactly(
                        new Answer.Gap("shockArmAngle", "The angle of the arm from pivot to shock is no number."));
        assertThat(of(182, 98, Double.NaN, -1))
                .containsExactly(
                        new Answer.Gap("shockLength", "The length of the shock, no number, is not above 0."),
                        new Answer.Gap("shockStroke", "The stroke of the shock, -1 mm, is not above 0."));
        assertThat(of(182, 98, 55, 55))
                .containsExactly(
                        new Answer.Gap("shockStroke", "The stroke of 55 mm leaves nothing of the shock's 55 mm."));
        assertThat(of(100, 98, 210, 55))
                .containsExactly(new Answer.Gap(
                        "shockStroke",
                        "The stroke of 55 mm is longer than the way of the shock's eye over the travel, 30.652 mm: no place of"
                                + " the other eye uses all of it."));
        assertThat(of(182, 98, 30, 5))
                .containsExactly(new Answer.Gap(
                        "shockLength",
                        "The shock of 30 mm is too short for the way of its eye over the travel, 55.786 mm."));
        assertThat(of(1e308, 98, 210, 55)).hasSize(1);
    }

    private static List<Answer.Gap> of(double arm, double angle_deg, double length, double stroke) {
        return ExpectedMassTest.gaps(Swing.of(new Point(22, 72), new Point(-434, 32), 140)
                .then(swing -> Suspension.of(
                        swing, arm, Math.toRadians(angle_deg), new Shock(length, stroke), Suspension.FrameEye.HIGHER)));
    }

    @Test
    void eyesBetweenWhichTheShockDoesNotFitAreNamed() {
        Point arm = new Point(0, 252);
        assertThat(between(arm, new Point(205, 252), 210, 55))
                .containsExactly(new Answer.Gap(
                        "shockLength", "The shock of 210 mm is 5 mm longer than the way between its eyes, 205 mm."));
        assertThat(between(arm, new Point(215, 252), 210, 55))
                .containsExactly(new Answer.Gap(
                        "shockLength", "The shock of 210 mm is 5 mm shorter than the way between its eyes, 215 mm."));
        assertThat(between(arm, new Point(210, 252), 210, 20))
                .extracting(Answer.Gap::input)
                .containsExactly("travel");
        assertThat(between(arm, new Point(-210, 252), 210, 55))
                .extracting(Answer.Gap::words)
                .singleElement()
                .asString()
                .startsWith("At a travel of 0 mm the shock does not get shorter: its line passes the pivot by 180 mm");
        assertThat(between(arm, new Point(0, Double.NaN), 210, 55))
                .containsExactly(new Answer.Gap(
                        "frameEye", "The place of the shock's eye on the frame above the shell is no number."));
        assertThat(between(new Point(22, 72), new Point(232, 72), 210, 55))
                .containsExactly(new Answer.Gap(
                        "armEye", "The shock's eye on the swing arm lies on the pivot: nothing drives the shock."));
        assertThat(between(new Point(22, 252), new Point(22, 462), 210, 55))
                .containsExactly(new Answer.Gap(
                        "frameEye",
                        "At a travel of 0 mm the shock does not get shorter: its line runs through the pivot."));
    }

    private static List<Answer.Gap> between(Point armEye, Point frameEye, double length, double stroke) {
        return ExpectedMassTest.gaps(Swing.of(new Point(22, 72), new Point(-434, 32), 140)
                .then(swing -> Suspension.between(swing, armEye, frameEye, new Shock(length, stroke))));
    }

    /** Of the tyre and of the shock against a tube, by trying points of the tube at steps of the travel. */
    @Test
    void theLeastClearanceIsTheLeastOfAllThatWereTried() {
        Random random = new Random(20260312);
        Suspension suspension = suspension(rearEnds().findFirst().orElseThrow());
        Swing swing = suspension.swing();
        for (int i = 0; i < 40; i++) {
            Point from = new Point(200 * random.nextDouble() - 150, 250 * random.nextDouble());
            Point to = new Point(200 * random.nextDouble() - 150, 250 + 300 * random.nextDouble());
            SwingClearance.Axis tube = new SwingClearance.Axis(from, to, 30);
            double tyre = Double.POSITIVE_INFINITY;
            double shock = Double.POSITIVE_INFINITY;
            for (int s = 0; s <= 140; s++) {
                Point eye = swing.carried(suspension.armEye(), s);
                for (int t = 0; t <= 100; t++) {
                    Point onTube = from.plus(to.minus(from).times(t / 100.0));
                    tyre = Math.min(tyre, swing.axleAt(s).distance_mm(onTube) - 300 - 15);
                    for (int u = 0; u <= 100; u++) {
                        Point onShock =
                                eye.plus(suspension.frameEye().minus(eye).times(u / 100.0));
                        shock = Math.min(shock, onShock.distance_mm(onTube) - 20 - 15);
                    }
                }
            }
            assertThat(SwingClearance.leastOfTyre(swing, tube, 300).clearance_mm())
                    .isBetween(tyre - 1.5, tyre + 1e-9);
            assertThat(SwingClearance.leastOfShock(suspension, tube, 40).clearance_mm())
                    .isBetween(shock - 3.5, shock + 1e-9);
        }
    }

    private static <T> T value(Answer<T> answer) {
        return ExpectedMassTest.value(answer);
    }
}
