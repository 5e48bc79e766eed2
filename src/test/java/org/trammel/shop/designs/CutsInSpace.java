package org.trammel.shop.designs;

/**
 * Where lines along a tube meet its mate, found in space from the corners of the frame alone: each line is walked towards
 * the mate and its crossing is halved in by the distance from the mate's axis. No formula of the curve is used.
 */
final class CutsInSpace {

    private CutsInSpace() {}

    static double[] v(double x, double y, double z) {
        return new double[] {x, y, z};
    }

    /**
     * How far from the node a line of the tube's outside enters the mate.
     *
     * @param along from the node into the tube
     * @param mate along the mate's axis, through the node
     * @param side across the tube, where the line lies
     */
    static double setback_mm(double[] along, double[] mate, double[] side, double tubeRadius_mm, double mateRadius_mm) {
        double[] a = unit(along);
        return setback_mm(along, mate, times(unit(minus(side, times(a, dot(side, a)))), tubeRadius_mm), mateRadius_mm);
    }

    /** The same of a line that lies so far from the tube's axis, square to it. */
    static double setback_mm(double[] along, double[] mate, double[] outside, double mateRadius_mm) {
        double[] a = unit(along);
        double[] m = unit(mate);
        double far = 400;
        double near = 0;
        // the last crossing seen from outside: walk in until the line is inside the mate
        double step = 0.25;
        double at = far;
        while (distance(at, a, m, outside) > mateRadius_mm && at > -far) {
            at -= step;
        }
        near = at;
        double out = at + step;
        for (int i = 0; i < 60; i++) {
            double middle = (near + out) / 2;
            if (distance(middle, a, m, outside) > mateRadius_mm) {
                out = middle;
            } else {
                near = middle;
            }
        }
        return out;
    }

    private static double distance(double at, double[] along, double[] mate, double[] outside) {
        double[] point = plus(times(along, at), outside);
        double[] off = minus(point, times(mate, dot(point, mate)));
        return Math.sqrt(dot(off, off));
    }

    static double[] cross(double[] p, double[] q) {
        return v(p[1] * q[2] - p[2] * q[1], p[2] * q[0] - p[0] * q[2], p[0] * q[1] - p[1] * q[0]);
    }

    static double[] unit(double[] p) {
        return times(p, 1 / Math.sqrt(dot(p, p)));
    }

    static double dot(double[] p, double[] q) {
        return p[0] * q[0] + p[1] * q[1] + p[2] * q[2];
    }

    static double[] times(double[] p, double factor) {
        return v(p[0] * factor, p[1] * factor, p[2] * factor);
    }

    static double[] plus(double[] p, double[] q) {
        return v(p[0] + q[0], p[1] + q[1], p[2] + q[2]);
    }

    static double[] minus(double[] p, double[] q) {
        return plus(p, times(q, -1));
    }
}
