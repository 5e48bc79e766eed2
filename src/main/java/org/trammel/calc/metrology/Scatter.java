package org.trammel.calc.metrology;

import java.util.List;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;

/**
 * How points lie about their mean: the directions of greatest, middle and least spread, at right angles.
 *
 * <pre>S = Σ w (p − p̄)(p − p̄)ᵀ,   S d_k = λ_k d_k,   spread_k = √(λ_k / Σ w)</pre>
 *
 * The least-squares line runs along the greatest, the least-squares plane stands across the least; distances are taken
 * at right angles, so that no direction of the axes is preferred.
 *
 * <p>Source: K. Pearson, On lines and planes of closest fit to systems of points in space, Philosophical Magazine 2
 * (1901) 559.
 *
 * @param along direction of the greatest spread, of length 1
 * @param across direction of the least spread, of length 1
 * @param greatest_mm root mean square spread along
 * @param middle_mm the same in the direction between
 * @param least_mm the same across
 */
record Scatter(Vec along, Vec across, double greatest_mm, double middle_mm, double least_mm) {

    /** Points with a mean of their own each group, such as two parallel faces. */
    static Scatter of(List<List<Vec>> groups, List<double[]> weights) {
        double[][] s = new double[3][3];
        double all = 0;
        for (int g = 0; g < groups.size(); g++) {
            double[] w = weights.get(g);
            Vec mean = Vec.mean(groups.get(g), w);
            for (int i = 0; i < w.length; i++) {
                Vec off = groups.get(g).get(i).minus(mean);
                double[] d = {off.x(), off.y(), off.z()};
                for (int row = 0; row < 3; row++) {
                    for (int column = 0; column <= row; column++) {
                        s[row][column] += w[i] * d[row] * d[column];
                        // by its own rounding the product the other way round may differ in its last digit
                        s[column][row] = s[row][column];
                    }
                }
                all += w[i];
            }
        }
        EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(MatrixUtils.createRealMatrix(s));
        return new Scatter(
                vec(eigen, 0), vec(eigen, 2), spread(eigen, 0, all), spread(eigen, 1, all), spread(eigen, 2, all));
    }

    static Scatter of(List<Vec> points, double[] weights) {
        return of(List.of(points), List.of(weights));
    }

    private static Vec vec(EigenDecompositionSymmetric eigen, int k) {
        double[] v = eigen.getEigenvector(k).toArray();
        return new Vec(v[0], v[1], v[2]).unit();
    }

    private static double spread(EigenDecompositionSymmetric eigen, int k, double all) {
        return Math.sqrt(Math.max(0, eigen.getEigenvalue(k)) / all);
    }
}
