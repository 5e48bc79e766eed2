package org.trammel.calc.metrology;

import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;

/**
 * Circle of least squares in a plane: Σ (|p_i − c| − r)² is least.
 *
 * <p>Gauss and Newton's steps from the algebraic circle |p|² = 2 c·p + k (I. Kåsa 1976), until a step is below 1e-12 of
 * the radius. Points over less than a small arc do not settle and have no circle.
 *
 * <p>Source: W. Gander, G. H. Golub, R. Strebel, Least-squares fitting of circles and ellipses, BIT 34 (1994) 558.
 *
 * @param x_mm centre
 * @param y_mm centre
 * @param radius_mm r
 * @param residual_mm root mean square distance of the points from the circle
 */
record CircleFit(double x_mm, double y_mm, double radius_mm, double residual_mm) {

    private static final int STEPS_AT_MOST = 200;
    private static final double SETTLED = 1e-12;

    /** Finds it, if there is one. */
    static Optional<CircleFit> of(List<double[]> points) {
        int n = points.size();
        if (n < 3) {
            return Optional.empty();
        }
        try {
            return settle(points, algebraic(points));
        } catch (MathRuntimeException onALine) {
            return Optional.empty();
        }
    }

    /** Centre and radius of the algebraic circle, taken about the mean so that a distant origin costs no digits. */
    private static double[] algebraic(List<double[]> points) {
        double mx = points.stream().mapToDouble(p -> p[0]).average().orElseThrow();
        double my = points.stream().mapToDouble(p -> p[1]).average().orElseThrow();
        double[][] a = new double[points.size()][];
        double[] b = new double[points.size()];
        for (int i = 0; i < b.length; i++) {
            double x = points.get(i)[0] - mx;
            double y = points.get(i)[1] - my;
            a[i] = new double[] {2 * x, 2 * y, 1};
            b[i] = x * x + y * y;
        }
        double[] s = solve(a, b);
        return new double[] {s[0] + mx, s[1] + my, Math.sqrt(s[2] + s[0] * s[0] + s[1] * s[1])};
    }

    private static Optional<CircleFit> settle(List<double[]> points, double[] start) {
        double[] at = start.clone();
        double[][] a = new double[points.size()][];
        double[] b = new double[points.size()];
        for (int step = 0; step < STEPS_AT_MOST; step++) {
            for (int i = 0; i < b.length; i++) {
                double dx = points.get(i)[0] - at[0];
                double dy = points.get(i)[1] - at[1];
                double distance = Math.hypot(dx, dy);
                a[i] = new double[] {-dx / distance, -dy / distance, -1};
                b[i] = at[2] - distance;
            }
            double[] change = solve(a, b);
            double greatest = 0;
            for (int k = 0; k < at.length; k++) {
                at[k] += change[k];
                greatest = Math.max(greatest, Math.abs(change[k]));
            }
            if (!(greatest < Double.MAX_VALUE)) {
                return Optional.empty();
            }
            if (greatest <= SETTLED * Math.abs(at[2])) {
                return Optional.of(new CircleFit(at[0], at[1], at[2], residual(points, at)));
            }
        }
        return Optional.empty();
    }

    private static double residual(List<double[]> points, double[] at) {
        double sum = points.stream()
                .mapToDouble(p -> Math.hypot(p[0] - at[0], p[1] - at[1]) - at[2])
                .map(off -> off * off)
                .sum();
        return Math.sqrt(sum / points.size());
    }

    private static double[] solve(double[][] a, double[] b) {
        return new QRDecomposition(new Array2DRowRealMatrix(a, false), 1e-12)
                .getSolver()
                .solve(new ArrayRealVector(b, false))
                .toArray();
    }
}
