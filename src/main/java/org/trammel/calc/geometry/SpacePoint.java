package org.trammel.calc.geometry;

/**
 * A point, or a vector, in space.
 *
 * @param x_mm ahead of the shell's centre
 * @param y_mm above it
 * @param z_mm to the drive side of the middle plane
 */
public record SpacePoint(double x_mm, double y_mm, double z_mm) {

    /** To the drive side, of length 1: the axis of the shell. */
    static final SpacePoint DRIVE_SIDE = new SpacePoint(0, 0, 1);

    /** A point of the side view, as far from the middle plane. */
    static SpacePoint of(Point side, double z_mm) {
        return new SpacePoint(side.x_mm(), side.y_mm(), z_mm);
    }

    SpacePoint plus(SpacePoint other) {
        return new SpacePoint(x_mm + other.x_mm, y_mm + other.y_mm, z_mm + other.z_mm);
    }

    SpacePoint minus(SpacePoint other) {
        return new SpacePoint(x_mm - other.x_mm, y_mm - other.y_mm, z_mm - other.z_mm);
    }

    SpacePoint times(double factor) {
        return new SpacePoint(x_mm * factor, y_mm * factor, z_mm * factor);
    }

    /** The point so far on the way to another one: 0 here, 1 there. */
    public SpacePoint between(SpacePoint other, double share) {
        return plus(other.minus(this).times(share));
    }

    double dot(SpacePoint other) {
        return x_mm * other.x_mm + y_mm * other.y_mm + z_mm * other.z_mm;
    }

    SpacePoint cross(SpacePoint other) {
        return new SpacePoint(
                y_mm * other.z_mm - z_mm * other.y_mm,
                z_mm * other.x_mm - x_mm * other.z_mm,
                x_mm * other.y_mm - y_mm * other.x_mm);
    }

    double length_mm() {
        return Math.sqrt(dot(this));
    }

    /** The same direction, of length 1; for a vector that has one. */
    SpacePoint unit() {
        return times(1 / length_mm());
    }

    /** Between two directions, 0 to π; exact near both ends, where an arc cosine is not. */
    double angleTo_rad(SpacePoint other) {
        return Math.atan2(cross(other).length_mm(), dot(other));
    }
}
