package org.trammel.calc.metrology;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An input of a reduction.
 *
 * @param value as read
 * @param step by which its influence is tried, in its unit
 * @param scale what the gauge's error over its own reading falsifies; null of what is no figure of a scale, such as a
 *     coordinate of an arm
 * @param gauge id of the gauge, or null if it is no reading
 */
record Quantity(
        String name,
        double value,
        double step,
        @Nullable Scale scale,
        @Nullable String gauge,
        List<Contribution> contributions) {

    /** Small beside what is measured, large beside the rounding of coordinates of a metre. */
    private static final double STEP_MM = 2e-3;

    private static final double STEP_RAD = 1e-5;

    Quantity {
        contributions = List.copyOf(contributions);
    }

    static Quantity of(RawReading reading, Scale scale) {
        return new Quantity(
                reading.name(), reading.value_mm(), STEP_MM, scale, reading.gauge(), reading.contributions());
    }

    static Quantity coordinate(String name, double value_mm, String gauge, List<Contribution> contributions) {
        return new Quantity(name, value_mm, STEP_MM, null, gauge, contributions);
    }

    /** An angle that is zero as far as anybody knows. */
    static Quantity tilt(String name, double u_rad) {
        return new Quantity(name, 0, STEP_RAD, null, null, List.of(Contribution.own(ErrorKind.POST, u_rad)));
    }

    boolean height() {
        return scale == Scale.HEIGHT;
    }
}
