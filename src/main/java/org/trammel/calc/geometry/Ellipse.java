package org.trammel.calc.geometry;

/**
 * The outline of a tube where it is cut, x = a cos φ in one plane, y = b sin φ across it; a circle where a = b.
 *
 * <pre>
 * perimeter = 2π / M(a, b) · (a² − Σ 2ⁿ⁻¹ cₙ²)    c₀² = a² − b², cₙ₊₁ = (aₙ − bₙ) / 2
 * arc from φ₁ to φ₂ = ∫ √(a² sin² φ + b² cos² φ) dφ
 * </pre>
 *
 * with aₙ, bₙ the arithmetic-geometric mean M of a and b. Source: NIST Digital Library of Mathematical Functions,
 * 19.8(i). Accuracy: the perimeter to a few units of the last place; arcs by Gauss-Legendre quadrature of five points on
 * panels of five degrees at most, better than 1e-9 mm for axes up to 3 : 1.
 *
 * @param a_mm half axis in the plane
 * @param b_mm half axis across it
 */
record Ellipse(double a_mm, double b_mm) {

    private static final double PANEL_RAD = Math.toRadians(5);

    private static final double[] PLACES = {
        0, 0.5384693101056831, -0.5384693101056831, 0.906179845938664, -0.906179845938664
    };
    private static final double[] WEIGHTS = {
        0.5688888888888889, 0.47862867049936647, 0.47862867049936647, 0.23692688505618908, 0.23692688505618908
    };

    boolean isCircle() {
        return a_mm == b_mm;
    }

    double perimeter_mm() {
        if (isCircle()) {
            return 2 * Math.PI * a_mm;
        }
        double a = Math.max(a_mm, b_mm);
        double b = Math.min(a_mm, b_mm);
        double sum = a * a - (a * a - b * b) / 2;
        double weight = 1;
        while (a - b > 1e-15 * a) {
            double c = (a - b) / 2;
            double mean = (a + b) / 2;
            b = Math.sqrt(a * b);
            a = mean;
            sum -= weight * c * c;
            weight *= 2;
        }
        return 2 * Math.PI / a * sum;
    }

    /** Along the outline from φ = 0; beyond a turn, and below 0, it goes on. */
    double arc_mm(double angle_rad) {
        return isCircle() ? a_mm * angle_rad : arc_mm(0, angle_rad);
    }

    /** Along the outline between two values of φ. */
    double arc_mm(double from_rad, double to_rad) {
        if (isCircle()) {
            return a_mm * (to_rad - from_rad);
        }
        int panels = Math.max(1, (int) Math.ceil(Math.abs(to_rad - from_rad) / PANEL_RAD - 1e-9));
        double half = (to_rad - from_rad) / panels / 2;
        double arc = 0;
        for (int panel = 0; panel < panels; panel++) {
            double middle = from_rad + (2 * panel + 1) * half;
            for (int i = 0; i < PLACES.length; i++) {
                double angle = middle + half * PLACES[i];
                arc += WEIGHTS[i] * half * Math.hypot(a_mm * Math.sin(angle), b_mm * Math.cos(angle));
            }
        }
        return arc;
    }

    /** The φ of the outline's point that lies in a direction, as seen from the tube's axis. */
    double parameterOf_rad(double direction_rad) {
        return Math.atan2(Math.sin(direction_rad) / b_mm, Math.cos(direction_rad) / a_mm);
    }

    /**
     * The half axis that goes with another so that the outline has a perimeter. The perimeter rises with the half axis
     * from 4 times the other, so halving an interval finds the one there is.
     *
     * @param half_mm one half axis, less than a quarter of the perimeter
     */
    static double otherHalfAxis_mm(double half_mm, double perimeter_mm) {
        double low = 0;
        double high = perimeter_mm / 4;
        while (true) {
            double middle = (low + high) / 2;
            if (middle <= low || middle >= high) {
                return high;
            }
            if (new Ellipse(half_mm, middle).perimeter_mm() < perimeter_mm) {
                low = middle;
            } else {
                high = middle;
            }
        }
    }
}
