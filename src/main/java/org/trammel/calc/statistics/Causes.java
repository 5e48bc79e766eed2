package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Readings as a mean and one addition for each level of each factor, and what can be told of it.
 *
 * <pre>y = μ + a + b + … + ε    A = XᵀX    x̂ = A⁺ Xᵀy    c estimable ⇔ A⁺A c = c    var(c x̂) = σ² cᵀA⁺c</pre>
 *
 * X has a column of ones and one of marks for each level, A⁺ is the pseudo-inverse. Source: S. R. Searle, Linear Models
 * (1971), chapter 5, estimable functions (chapter from memory).
 */
final class Causes {

    /** Of the largest eigenvalue, which counts readings; marks are 0 or 1, so true ones lie far above. */
    private static final double NOTHING = 1e-9;

    private final List<Map<String, Integer>> places = new ArrayList<>();
    private final List<int[]> rows;
    private final RealMatrix inverse;
    private final RealMatrix estimable;
    private final int rank;
    private final int width;

    /**
     * Looks at who did what.
     *
     * @param levels for each reading its level of each factor, in one order
     */
    Causes(List<List<String>> levels) {
        int factors = levels.get(0).size();
        int next = 1;
        for (int f = 0; f < factors; f++) {
            Map<String, Integer> place = new LinkedHashMap<>();
            for (List<String> each : levels) {
                if (!place.containsKey(each.get(f))) {
                    place.put(each.get(f), next++);
                }
            }
            places.add(place);
        }
        width = next;
        rows = new ArrayList<>(levels.size());
        RealMatrix gram = MatrixUtils.createRealMatrix(width, width);
        for (List<String> each : levels) {
            int[] row = new int[factors + 1];
            for (int f = 0; f < factors; f++) {
                row[f + 1] = places.get(f).get(each.get(f));
            }
            rows.add(row);
            for (int i : row) {
                for (int j : row) {
                    gram.addToEntry(i, j, 1);
                }
            }
        }
        EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(gram);
        double[] values = eigen.getEigenvalues();
        double least = NOTHING * values[0];
        inverse = MatrixUtils.createRealMatrix(width, width);
        estimable = MatrixUtils.createRealMatrix(width, width);
        int above = 0;
        for (int k = 0; k < values.length; k++) {
            if (values[k] > least) {
                above++;
                RealVector axis = eigen.getEigenvector(k);
                addOuter(estimable, axis, 1);
                addOuter(inverse, axis, 1 / values[k]);
            }
        }
        rank = above;
    }

    private void addOuter(RealMatrix sum, RealVector axis, double weight) {
        for (int i = 0; i < width; i++) {
            for (int j = 0; j < width; j++) {
                sum.addToEntry(i, j, weight * axis.getEntry(i) * axis.getEntry(j));
            }
        }
    }

    int rank() {
        return rank;
    }

    List<String> levels(int factor) {
        return List.copyOf(places.get(factor).keySet());
    }

    private RealVector contrast(int factor, String one, String other) {
        RealVector contrast = MatrixUtils.createRealVector(new double[width]);
        contrast.setEntry(places.get(factor).get(one), 1);
        contrast.setEntry(places.get(factor).get(other), -1);
        return contrast;
    }

    /** Whether the difference of two levels can be told, whatever the rest adds. */
    boolean separates(int factor, String one, String other) {
        RealVector contrast = contrast(factor, one, other);
        return estimable.operate(contrast).subtract(contrast).getLInfNorm() < 1e-6;
    }

    /** Additions of all levels; only differences that are separated mean something. */
    RealVector additions(double[] y) {
        double[] sums = new double[width];
        for (int r = 0; r < y.length; r++) {
            for (int place : rows.get(r)) {
                sums[place] += y[r];
            }
        }
        return inverse.operate(MatrixUtils.createRealVector(sums));
    }

    /** What is left of the readings, squared and added. */
    double left(double[] y, RealVector additions) {
        double left = 0;
        for (int r = 0; r < y.length; r++) {
            double off = y[r];
            for (int place : rows.get(r)) {
                off -= additions.getEntry(place);
            }
            left += off * off;
        }
        return left;
    }

    double difference(RealVector additions, int factor, String one, String other) {
        return contrast(factor, one, other).dotProduct(additions);
    }

    /** Standard error of a difference in units of σ. */
    double error(int factor, String one, String other) {
        RealVector contrast = contrast(factor, one, other);
        return Math.sqrt(contrast.dotProduct(inverse.operate(contrast)));
    }
}
