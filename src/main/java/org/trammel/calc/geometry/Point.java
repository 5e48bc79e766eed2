package org.trammel.calc.geometry;

/**
 * A point, or a vector, in the middle plane of the frame.
 *
 * @param x_mm ahead of the shell's centre
 * @param y_mm above it
 */
public record Point(double x_mm, double y_mm) {

    /** The direction of an angle against the ground line, of length 1. */
    static Point at(double angle_rad) {
        return new Point(Math.cos(angle_rad), Math.sin(angle_rad));
    }

    public Point plus(Point other) {
        return new Point(x_mm + other.x_mm, y_mm + other.y_mm);
    }

    public Point minus(Point other) {
        return new Point(x_mm - other.x_mm, y_mm - other.y_mm);
    }

    public Point times(double factor) {
        return new Point(x_mm * factor, y_mm * factor);
    }

    double dot(Point other) {
        return x_mm * other.x_mm + y_mm * other.y_mm;
    }

    /** Twice the area of the triangle with another vector; above 0 if that one lies to the left. */
    double cross(Point other) {
        return x_mm * other.y_mm - y_mm * other.x_mm;
    }

    double length_mm() {
        return Math.hypot(x_mm, y_mm);
    }

    double distance_mm(Point other) {
        return minus(other).length_mm();
    }
}
