package org.trammel.calc.geometry;

/**
 * The axis of a straight stay, of the drive side; that of the other side is its mirror image.
 *
 * <pre>
 * length = √(side² + Δz²)      splay = atan2(Δz, side)
 * </pre>
 *
 * @param front its end at shell or seat tube
 * @param rear its end at the dropout
 */
public record Stay(SpacePoint front, SpacePoint rear) {

    /** End to end in space. */
    public double length_mm() {
        return rear.minus(front).length_mm();
    }

    /** End to end in the side view. */
    public double sideLength_mm() {
        return Math.hypot(rear.x_mm() - front.x_mm(), rear.y_mm() - front.y_mm());
    }

    /** How much it opens outward to the rear, against the middle plane. */
    public double splay_rad() {
        return Math.atan2(rear.z_mm() - front.z_mm(), sideLength_mm());
    }

    /** Towards the dropout, of length 1. */
    SpacePoint rearward() {
        return rear.minus(front).unit();
    }
}
