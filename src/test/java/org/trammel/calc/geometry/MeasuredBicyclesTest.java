package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.units.Answer;

/**
 * Bicycles that were measured: J. K. Moore, BicycleParameters (data of 2010 to 2013, figshare 10.6084/m9.figshare.1198429),
 * raw readings and what was derived from them there, in metres; wheels by their roll over thirteen turns, head angle and
 * fork offset read, trail derived. Relations as in J. P. Meijaard, J. M. Papadopoulos, A. Ruina, A. L. Schwab, Proc. R.
 * Soc. A 463 (2007) 1955.
 */
class MeasuredBicyclesTest {

    private static double radius_mm(double roll_m) {
        return 1000 * roll_m / (2 * Math.PI * 13);
    }

    private static FrameGeometry closed(Map<Dimension, Double> given) {
        ClosureOutcome outcome = Closure.of(given);
        assertThat(outcome).isInstanceOf(ClosureOutcome.Closed.class);
        return ((ClosureOutcome.Closed) outcome).geometry();
    }

    /** Lengths that do not enter what is compared are any. */
    private static Map<Dimension, Double> measured(
            double headAngle_deg, double offset_m, double wheelbase_m, double frontRoll_m, double rearRoll_m) {
        Map<Dimension, Double> given = new EnumMap<>(Dimension.class);
        given.put(Dimension.HEAD_ANGLE, Math.toRadians(headAngle_deg));
        given.put(Dimension.SEAT_ANGLE, Math.toRadians(72));
        given.put(Dimension.HEAD_TUBE, 150.0);
        given.put(Dimension.LOWER_STACK, 12.0);
        given.put(Dimension.FORK_LENGTH, 390.0);
        given.put(Dimension.FORK_OFFSET, 1000 * offset_m);
        given.put(Dimension.SEAT_TUBE, 550.0);
        given.put(Dimension.SEAT_TUBE_OFFSET, 0.0);
        given.put(Dimension.WHEELBASE, 1000 * wheelbase_m);
        given.put(Dimension.FRONT_WHEEL_RADIUS, radius_mm(frontRoll_m));
        given.put(Dimension.REAR_WHEEL_RADIUS, radius_mm(rearRoll_m));
        return given;
    }

    /** The last five: drop below the rear axle, level rear and front centre, straight front centre, by Pythagoras apart. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "Browser, 67.1, .0705, 1.121, 28.06, 27.85, .46, .295, .34352982332, .340958858855, .0685808540382, .04596, .45770, .66330, .66507",
        "Crescendo, 69, .045, 1.101, 27.98, 27.768, .465, .29, .342550408285, .339954958444, .0832912572138, .04995, .46231, .63869, .64085",
        "Yellow, 72.7, .0565, 1.089, 27.925, 27.884, .45, .27658, .341877060449, .341375110244, .0473057207886, .06479, .44531, .64369, .64699",
    })
    void whatIsDerivedFromTheReadingsIsReached(
            String bicycle,
            double headAngle,
            double offset,
            double wheelbase,
            double frontRoll,
            double rearRoll,
            double chainstay,
            double shellHeight,
            double frontRadius,
            double rearRadius,
            double trail,
            double drop,
            double rearCentre,
            double frontCentreLevel,
            double frontCentre) {
        Map<Dimension, Double> given = measured(headAngle, offset, wheelbase, frontRoll, rearRoll);
        given.put(Dimension.CHAINSTAY, 1000 * chainstay);
        given.put(Dimension.SHELL_HEIGHT, 1000 * shellHeight);
        FrameGeometry frame = closed(given);
        assertThat(radius_mm(frontRoll)).isCloseTo(1000 * frontRadius, within(1e-6));
        assertThat(radius_mm(rearRoll)).isCloseTo(1000 * rearRadius, within(1e-6));
        assertThat(frame.trail_mm()).isCloseTo(1000 * trail, within(1e-6));
        assertThat(frame.layout().rearDrop_mm()).isCloseTo(1000 * drop, within(0.006));
        assertThat(-frame.rearAxle().x_mm()).isCloseTo(1000 * rearCentre, within(0.006));
        assertThat(frame.frontAxle().x_mm()).isCloseTo(1000 * frontCentreLevel, within(0.006));
        assertThat(frame.frontCentre_mm()).isCloseTo(1000 * frontCentre, within(0.006));
        given.remove(Dimension.FORK_OFFSET);
        given.put(Dimension.TRAIL, 1000 * trail);
        assertThat(closed(given).layout().forkOffset_mm()).isCloseTo(1000 * offset, within(1e-5));
        given.remove(Dimension.HEAD_ANGLE);
        given.put(Dimension.FORK_OFFSET, 1000 * offset);
        assertThat(Math.toDegrees(closed(given).layout().headAngle_rad())).isCloseTo(headAngle, within(1e-6));
    }

    /** Worked apart, from a fork given straight: 370 axle to crown, offset 45. */
    @Test
    void aForkGivenStraightClosesTheSame() {
        Map<Dimension, Double> given = new EnumMap<>(Dimension.class);
        given.put(Dimension.HEAD_ANGLE, Math.toRadians(73));
        given.put(Dimension.SEAT_ANGLE, Math.toRadians(73.5));
        given.put(Dimension.HEAD_TUBE, 140.0);
        given.put(Dimension.LOWER_STACK, 12.0);
        given.put(Dimension.FORK_STRAIGHT, 370.0);
        given.put(Dimension.FORK_OFFSET, 45.0);
        given.put(Dimension.SHELL_DROP, 70.0);
        given.put(Dimension.CHAINSTAY, 410.0);
        given.put(Dimension.REACH, 385.0);
        given.put(Dimension.SEAT_TUBE, 540.0);
        given.put(Dimension.SEAT_TUBE_OFFSET, 0.0);
        given.put(Dimension.FRONT_WHEEL_RADIUS, 336.0);
        given.put(Dimension.REAR_WHEEL_RADIUS, 336.0);
        FrameGeometry frame = closed(given);
        assertThat(frame.stack_mm()).isCloseTo(553.408, within(5e-4));
        assertThat(frame.frontAxle().x_mm()).isCloseTo(579.849, within(5e-4));
        assertThat(frame.frontCentre_mm()).isCloseTo(584.059, within(5e-4));
        assertThat(frame.wheelbase_mm()).isCloseTo(983.829, within(5e-4));
        assertThat(frame.trail_mm()).isCloseTo(55.669, within(5e-4));
        assertThat(frame.flop_mm()).isCloseTo(15.565, within(5e-4));
        assertThat(frame.effectiveTopTube_mm()).isCloseTo(548.927, within(5e-4));
    }

    /** The benchmark bicycle: λ = π/10, trail 0.08, wheel 0.35; its offset and mechanical trail follow (worked apart). */
    @Test
    void theBenchmarkBicycleIsReached() {
        Layout layout = new Layout(
                Math.PI / 2 - Math.PI / 10, Math.toRadians(73), 380, 130, 12, 370, 32.0714, 60, 420, 500, 0, 350, 300);
        FrameGeometry frame = ((Answer.Determined<FrameGeometry>) FrameGeometry.of(layout)).value();
        assertThat(frame.trail_mm()).isCloseTo(80, within(1e-4));
        assertThat(frame.mechanicalTrail_mm()).isCloseTo(76.0845, within(1e-4));
        assertThat(frame.flop_mm()).isCloseTo(23.5114, within(1e-4));
    }
}
