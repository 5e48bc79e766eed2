package org.trammel.calc.metrology;

import java.util.List;

/** A point or a direction in space, millimetres or without unit. */
record Vec(double x, double y, double z) {

    static final Vec ZERO = new Vec(0, 0, 0);

    Vec plus(Vec other) {
        return new Vec(x + other.x, y + other.y, z + other.z);
    }

    Vec minus(Vec other) {
        return new Vec(x - other.x, y - other.y, z - other.z);
    }

    Vec times(double factor) {
        return new Vec(x * factor, y * factor, z * factor);
    }

    double dot(Vec other) {
        return x * other.x + y * other.y + z * other.z;
    }

    Vec cross(Vec other) {
        return new Vec(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    double length() {
        return Math.sqrt(dot(this));
    }

    /** The same direction, of length 1; for a vector that has one. */
    Vec unit() {
        return times(1 / length());
    }

    /** What is left of it across a direction of length 1. */
    Vec across(Vec direction) {
        return minus(direction.times(dot(direction)));
    }

    static Vec mean(List<Vec> points) {
        return points.stream().reduce(ZERO, Vec::plus).times(1.0 / points.size());
    }

    /** Weighted mean. */
    static Vec mean(List<Vec> points, double[] weights) {
        double sumX = 0;
        double sumY = 0;
        double sumZ = 0;
        double all = 0;
        for (int i = 0; i < weights.length; i++) {
            Vec point = points.get(i);
            sumX += weights[i] * point.x;
            sumY += weights[i] * point.y;
            sumZ += weights[i] * point.z;
            all += weights[i];
        }
        return new Vec(sumX / all, sumY / all, sumZ / all);
    }
}
