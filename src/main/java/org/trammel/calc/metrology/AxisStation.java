package org.trammel.calc.metrology;

/**
 * A station on the axis of a tube: where it lies in the side view, and how high its centre stands above the plate.
 *
 * <p>What counts is how far the stations of a tube lie apart: a millimetre in ninety changes a lean by a ninetieth of
 * itself.
 *
 * @param x_mm ahead of the shell's axis, as the drawing has it
 * @param y_mm above it, likewise
 */
public record AxisStation(double x_mm, double y_mm, CentreHeight height) {

    /**
     * A station so far up a tube.
     *
     * @param footX_mm where the distance counts from
     * @param footY_mm the same
     * @param angle_rad of the tube against the horizontal, rising rearwards
     * @param along_mm distance up the tube from the foot
     */
    public static AxisStation along(
            double footX_mm, double footY_mm, double angle_rad, double along_mm, CentreHeight height) {
        return new AxisStation(
                footX_mm - along_mm * Math.cos(angle_rad), footY_mm + along_mm * Math.sin(angle_rad), height);
    }
}
