package org.trammel.calc.drawing;

import org.trammel.calc.geometry.PaperShape.Spot;

/** A place or a direction on the paper, in millimetres. */
record At(double x, double y) {

    static At towards(double angle_rad) {
        return new At(Math.cos(angle_rad), Math.sin(angle_rad));
    }

    At plus(At other) {
        return new At(x + other.x, y + other.y);
    }

    At plus(At direction, double length) {
        return new At(x + direction.x * length, y + direction.y * length);
    }

    At minus(At other) {
        return new At(x - other.x, y - other.y);
    }

    At times(double factor) {
        return new At(x * factor, y * factor);
    }

    double dot(At other) {
        return x * other.x + y * other.y;
    }

    double cross(At other) {
        return x * other.y - y * other.x;
    }

    double length() {
        return Math.hypot(x, y);
    }

    At unit() {
        double length = length();
        return new At(x / length, y / length);
    }

    /** A quarter turn to the left. */
    At left() {
        return new At(-y, x);
    }

    Spot spot() {
        return new Spot(x, y);
    }
}
