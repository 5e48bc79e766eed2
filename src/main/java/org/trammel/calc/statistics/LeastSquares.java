package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.trammel.calc.units.Answer;

/** The computation behind {@link Regression}: columns centred and brought to length 1, then turned into a triangle. */
final class LeastSquares {

    /** A column that keeps less of its length beside the others follows from them; its square is 1 over their inflation. */
    private static final double LEFT_ALONE = 1e-6;

    private LeastSquares() {}

    static Answer<Regression> of(List<Column> xs, Column y) {
        int n = y.readings().size();
        int p = xs.size();
        double[] response = Summary.numbers(y.readings());
        Summary ofY = Summary.ofNumbers(response);
        double[][] columns = new double[p][];
        Summary[] summaries = new Summary[p];
        double[] lengths = new double[p];
        for (int j = 0; j < p; j++) {
            columns[j] = Summary.numbers(xs.get(j).readings());
            summaries[j] = Summary.ofNumbers(columns[j]);
            if (summaries[j].deviation() == 0) {
                return Answer.none(
                        xs.get(j).name(),
                        "The " + xs.get(j).name() + " was the same every time, " + Written.plain(summaries[j].mean())
                                + ": nothing can be told of what it does.");
            }
            lengths[j] = summaries[j].deviation() * Math.sqrt(n - 1.0);
            for (int i = 0; i < n; i++) {
                columns[j][i] = (columns[j][i] - summaries[j].mean()) / lengths[j];
            }
        }
        RealMatrix x = MatrixUtils.createRealMatrix(columns).transpose();
        QRDecomposition turned = new QRDecomposition(x);
        RealMatrix triangle = turned.getR();
        for (int j = 0; j < p; j++) {
            if (Math.abs(triangle.getEntry(j, j)) < LEFT_ALONE) {
                return Answer.none(
                        xs.get(j).name(),
                        "The " + xs.get(j).name()
                                + " follows from the other figures: what each of them does cannot be told" + " apart.");
            }
        }
        RealVector centred = MatrixUtils.createRealVector(
                Arrays.stream(response).map(each -> each - ofY.mean()).toArray());
        RealVector slopes = turned.getSolver().solve(centred);
        RealVector residuals = centred.subtract(x.operate(slopes));
        double left = residuals.dotProduct(residuals);
        int degreesOfFreedom = n - p - 1;
        double s = Math.sqrt(left / degreesOfFreedom);
        if (!Asked.spread(s, Math.max(Math.abs(ofY.least()), Math.abs(ofY.most())))) {
            return Answer.none(
                    y.name(),
                    "All " + n
                            + " occasions lie on the line exactly: how far the next falls from it cannot be told. Finer"
                            + " readings would show.");
        }
        RealMatrix upper = triangle.getSubMatrix(0, p - 1, 0, p - 1);
        RealMatrix root = new QRDecomposition(upper).getSolver().getInverse();
        RealMatrix inverse = root.multiplyTransposed(root);
        double total = ofY.deviation() * ofY.deviation() * (n - 1);
        return Answer.of(
                assembled(new Laid(xs, summaries, lengths, slopes, inverse, x), ofY.mean(), s, 1 - left / total, n));
    }

    /** The line in scaled columns. */
    private record Laid(
            List<Column> xs,
            Summary[] summaries,
            double[] lengths,
            RealVector slopes,
            RealMatrix inverse,
            RealMatrix x) {}

    private static Regression assembled(Laid laid, double meanY, double s, double rSquared, int n) {
        int p = laid.xs().size();
        double t = Regression.quantile(n - p - 1);
        List<Regression.Term> terms = new ArrayList<>();
        List<List<Double>> inverse = new ArrayList<>();
        double constant = meanY;
        double varianceOfConstant = 1.0 / n;
        for (int j = 0; j < p; j++) {
            Summary of = laid.summaries()[j];
            double slope = laid.slopes().getEntry(j) / laid.lengths()[j];
            List<Double> row = new ArrayList<>();
            for (int k = 0; k < p; k++) {
                row.add(laid.inverse().getEntry(j, k) / laid.lengths()[j] / laid.lengths()[k]);
                varianceOfConstant += of.mean() * row.get(k) * laid.summaries()[k].mean();
            }
            inverse.add(row);
            constant -= slope * of.mean();
            terms.add(new Regression.Term(
                    laid.xs().get(j).name(),
                    coefficient(slope, s * Math.sqrt(row.get(j)), t),
                    new Interval(of.least(), of.most()),
                    of.mean()));
        }
        double farthest = 0;
        for (int i = 0; i < n; i++) {
            RealVector place = laid.x().getRowVector(i);
            farthest = Math.max(farthest, place.dotProduct(laid.inverse().operate(place)));
        }
        return new Regression(
                n,
                n - p - 1,
                s,
                rSquared,
                coefficient(constant, s * Math.sqrt(varianceOfConstant), t),
                terms,
                farthest + 1.0 / n,
                inverse);
    }

    private static Regression.Coefficient coefficient(double estimate, double standardError, double t) {
        return new Regression.Coefficient(
                estimate, standardError, new Interval(estimate - t * standardError, estimate + t * standardError));
    }
}
