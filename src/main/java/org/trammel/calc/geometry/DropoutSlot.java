package org.trammel.calc.geometry;

/**
 * The slot in a stay's end. The plate is parallel to the middle plane and the stay is not, so the slot runs tilted
 * through the tube.
 *
 * <pre>
 * drift = depth · tan(tilt)      left = outside / 2 − drift − width / (2 cos(tilt))
 * </pre>
 *
 * The slot begins in the middle of the tube's end. Source: plane trigonometry.
 *
 * @param width_mm plate and play
 * @param depth_mm along the tube
 * @param tilt_rad of the slot against the tube's axis
 * @param drift_mm off the axis at the bottom of the slot, to the outside for a tilt above 0
 * @param left_mm between the bottom of the slot and the side of the tube; at 0 or below it breaks out
 */
public record DropoutSlot(double width_mm, double depth_mm, double tilt_rad, double drift_mm, double left_mm) {

    static DropoutSlot in(double outside_mm, SpacePoint rearward, DropoutPlate plate) {
        double tilt = Math.asin(Math.max(-1, Math.min(1, rearward.z_mm())));
        double width = plate.thickness_mm() + plate.play_mm();
        double drift = plate.depth_mm() * Math.tan(tilt);
        double left = outside_mm / 2 - Math.abs(drift) - width / 2 / Math.cos(tilt);
        return new DropoutSlot(width, plate.depth_mm(), tilt, drift, left);
    }
}
