package org.trammel.calc.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** Worked examples of JCGM 100:2008 (GUM); their figures typed from memory of the document. */
class PropagationTest {

    /**
     * JCGM 100:2008, 5.2.2, example: ten resistors of 1000 Ω, each with 100 mΩ from one and the same standard, in
     * series: 1 Ω, not the 0,32 Ω of independent ones.
     */
    @Test
    void tenResistorsComparedWithOneStandardAddUp() {
        List<Quantity> shared = new ArrayList<>();
        List<Quantity> own = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            shared.add(quantity("R" + i, 1000, Contribution.shared(ErrorKind.GAUGE, 0.1, "standard")));
            own.add(quantity("R" + i, 1000, Contribution.own(ErrorKind.GAUGE, 0.1)));
        }
        UnaryOperator<double[]> series = x -> new double[] {Arrays.stream(x).sum()};
        Budget budget = Propagation.of(shared, series).budget(0);
        assertThat(budget.u()).isCloseTo(1.0, within(1e-6));
        assertThat(budget.uIndependent()).isCloseTo(0.32, within(0.005));
        assertThat(Propagation.of(own, series).u(0)).isCloseTo(0.32, within(0.005));
    }

    /**
     * JCGM 100:2008, H.2 (Table H.2 to H.4), simultaneous measurement of resistance and reactance. Correlations r(V,I)
     * −0,36, r(V,φ) 0,86, r(I,φ) −0,65, from the five sets of readings. Results R 127,732 Ω (0,071), X 219,847 Ω (0,295),
     * Z 254,260 Ω (0,236); r(R,X) −0,588, r(R,Z) −0,485, r(X,Z) 0,993.
     */
    @Test
    void resistanceAndReactanceMeasuredTogether() {
        double[] v = {5.007, 4.994, 5.005, 4.990, 4.999};
        double[] i = {19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3};
        double[] phi = {1.0456, 1.0438, 1.0468, 1.0428, 1.0433};
        RealMatrix s = MatrixUtils.createRealMatrix(new double[][] {
            {covariance(v, v), covariance(v, i), covariance(v, phi)},
            {covariance(i, v), covariance(i, i), covariance(i, phi)},
            {covariance(phi, v), covariance(phi, i), covariance(phi, phi)}
        });
        assertThat(s.getEntry(0, 2) / Math.sqrt(s.getEntry(0, 0) * s.getEntry(2, 2)))
                .isCloseTo(0.86, within(0.005));
        // Independent causes that have this covariance: the columns of its Cholesky factor.
        RealMatrix causes = new CholeskyDecomposition(s, 1e-9, 1e-30).getL();
        double[] means = {mean(v), mean(i), mean(phi)};
        double[] steps = {1e-4, 1e-7, 1e-5};
        List<Quantity> inputs = new ArrayList<>();
        for (int row = 0; row < 3; row++) {
            List<Contribution> contributions = new ArrayList<>();
            for (int cause = 0; cause <= row; cause++) {
                contributions.add(
                        Contribution.shared(ErrorKind.REPEATABILITY, causes.getEntry(row, cause), "cause " + cause));
            }
            inputs.add(new Quantity("x" + row, means[row], steps[row], null, null, contributions));
        }
        UnaryOperator<double[]> model =
                x -> new double[] {x[0] / x[1] * Math.cos(x[2]), x[0] / x[1] * Math.sin(x[2]), x[0] / x[1]};
        Propagation p = Propagation.of(inputs, model);
        double[] y = model.apply(means);
        assertThat(y[0]).isCloseTo(127.732, within(0.0005));
        assertThat(y[1]).isCloseTo(219.847, within(0.0005));
        assertThat(y[2]).isCloseTo(254.260, within(0.0005));
        assertThat(p.u(0)).isCloseTo(0.071, within(0.0005));
        // printed cut off: the table's own readings give 0,2956
        assertThat(p.u(1)).isCloseTo(0.295, within(0.001));
        assertThat(p.u(2)).isCloseTo(0.236, within(0.0005));
        assertThat(r(p, 0, 1)).isCloseTo(-0.588, within(0.0005));
        assertThat(r(p, 0, 2)).isCloseTo(-0.485, within(0.0005));
        assertThat(r(p, 1, 2)).isCloseTo(0.993, within(0.0005));
    }

    /**
     * JCGM 100:2008, H.3 (Table H.6), calibration of a thermometer: straight line through eleven corrections about 20 °C,
     * y1 −0,1712 (0,0029), y2 0,002 18 (0,000 67), r −0,930, s 0,0035; correction at 30 °C −0,1494 (0,0041).
     */
    @Test
    void aLineThroughElevenReadings() {
        double[] t = {21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511};
        double[] b = {-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160};
        UnaryOperator<double[]> line = y -> {
            double n = t.length;
            double st = 0;
            double stt = 0;
            double sy = 0;
            double sty = 0;
            for (int k = 0; k < t.length; k++) {
                double d = t[k] - 20;
                st += d;
                stt += d * d;
                sy += y[k];
                sty += d * y[k];
            }
            double det = n * stt - st * st;
            double at20 = (sy * stt - sty * st) / det;
            double slope = (n * sty - sy * st) / det;
            return new double[] {at20, slope, at20 + 10 * slope};
        };
        double[] y = line.apply(b);
        double squares = 0;
        for (int k = 0; k < t.length; k++) {
            double off = b[k] - y[0] - y[1] * (t[k] - 20);
            squares += off * off;
        }
        double s = Math.sqrt(squares / (t.length - 2));
        assertThat(s).isCloseTo(0.0035, within(0.00005));
        List<Quantity> inputs = new ArrayList<>();
        for (double one : b) {
            inputs.add(quantity("b", one, Contribution.own(ErrorKind.REPEATABILITY, s)));
        }
        Propagation p = Propagation.of(inputs, line);
        assertThat(y[0]).isCloseTo(-0.1712, within(0.00005));
        assertThat(p.u(0)).isCloseTo(0.0029, within(0.00005));
        assertThat(y[1]).isCloseTo(0.00218, within(0.000005));
        assertThat(p.u(1)).isCloseTo(0.00067, within(0.000005));
        assertThat(r(p, 0, 1)).isCloseTo(-0.930, within(0.0005));
        assertThat(y[2]).isCloseTo(-0.1494, within(0.00005));
        assertThat(p.u(2)).isCloseTo(0.0041, within(0.00005));
    }

    private static double r(Propagation p, int j, int k) {
        return p.covariance(j, k) / (p.u(j) * p.u(k));
    }

    private static double mean(double[] x) {
        return Arrays.stream(x).average().orElseThrow();
    }

    /** Of the means of two series of readings taken together, JCGM 100:2008, 5.2.3. */
    private static double covariance(double[] a, double[] b) {
        double sum = 0;
        for (int k = 0; k < a.length; k++) {
            sum += (a[k] - mean(a)) * (b[k] - mean(b));
        }
        return sum / (a.length * (a.length - 1));
    }

    private static Quantity quantity(String name, double value, Contribution contribution) {
        return new Quantity(name, value, 1e-3, null, null, List.of(contribution));
    }
}
