package org.trammel.calc.metrology;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * Law of propagation of uncertainty for several results of common inputs.
 *
 * <pre>
 * x_i   = reading + Σ_s a_is q_s             q_s independent causes of unit variance
 * g_js  = Σ_i c_ji a_is,   c_ji = ∂y_j/∂x_i
 * cov(y_j, y_k) = Σ_s g_js g_ks,   u²(y_j) = Σ_s g_js²
 * independent:    u²(y_j) = Σ_i c_ji² Σ_s a_is²
 * </pre>
 *
 * which is Σ_i Σ_k c_i c_k u(x_i, x_k) with the covariances written by their causes. The sensitivities are central
 * differences of the reduction, about 1e-8 of their size off for lengths of millimetres to metres and steps of some
 * micrometres. Valid while the reduction is nearly linear within the uncertainties of its inputs, which for angles and
 * offsets of a frame it is by far.
 *
 * <p>Source: JCGM 100:2008, 5.1.2, 5.1.3 note 2 (numerical sensitivities), 5.2.2, F.1.2.3; several results together as
 * in its example H.2 and in JCGM 102:2011, 6.2.
 */
final class Propagation {

    /** A cause: all contributions of its kind and name. */
    private record Cause(ErrorKind kind, String name) {}

    /** What differences of sensitivities leave of a variance that falls out. */
    private static final double ROUNDING = 1e-12;

    private final double[][] c;
    private final double[][] g;
    private final List<Quantity> inputs;
    private final List<Cause> causes;

    private Propagation(double[][] c, double[][] g, List<Quantity> inputs, List<Cause> causes) {
        this.c = c;
        this.g = g;
        this.inputs = inputs;
        this.causes = causes;
    }

    /**
     * Propagates.
     *
     * @param model from the values of the inputs, in their order, to the results
     */
    static Propagation of(List<Quantity> inputs, UnaryOperator<double[]> model) {
        double[][] c = sensitivities(inputs, values(inputs), model);
        Map<Cause, Integer> numbers = new LinkedHashMap<>();
        for (int i = 0; i < inputs.size(); i++) {
            for (Contribution one : inputs.get(i).contributions()) {
                numbers.putIfAbsent(cause(one, i), numbers.size());
            }
        }
        double[][] g = new double[c.length][numbers.size()];
        for (int i = 0; i < inputs.size(); i++) {
            for (Contribution one : inputs.get(i).contributions()) {
                int s = numbers.get(cause(one, i));
                for (int j = 0; j < c.length; j++) {
                    g[j][s] += c[j][i] * one.u();
                }
            }
        }
        return new Propagation(c, g, List.copyOf(inputs), new ArrayList<>(numbers.keySet()));
    }

    /** ∂y_j/∂x_i at the given values. */
    static double[][] sensitivities(List<Quantity> inputs, double[] at, UnaryOperator<double[]> model) {
        double[] x = at.clone();
        double[][] c = new double[0][0];
        for (int i = 0; i < x.length; i++) {
            double step = inputs.get(i).step();
            x[i] = at[i] + step;
            double[] above = model.apply(x);
            x[i] = at[i] - step;
            double[] below = model.apply(x);
            x[i] = at[i];
            if (i == 0) {
                c = new double[above.length][x.length];
            }
            for (int j = 0; j < above.length; j++) {
                c[j][i] = (above[j] - below[j]) / (2 * step);
            }
        }
        return c;
    }

    static double[] values(List<Quantity> inputs) {
        return inputs.stream().mapToDouble(Quantity::value).toArray();
    }

    /** What is a reading's own is named after its place, which no shared name can be mistaken for. */
    private static Cause cause(Contribution one, int input) {
        return new Cause(one.kind(), one.sharedAs() == null ? "own " + input : "shared " + one.sharedAs());
    }

    double covariance(int j, int k) {
        double sum = 0;
        for (int s = 0; s < causes.size(); s++) {
            sum += g[j][s] * g[k][s];
        }
        return sum;
    }

    /** Standard uncertainty; 0 where all that there is falls out and only rounding is left. */
    double u(int j) {
        return budget(j).u();
    }

    /** Whether the result moves with the input at all; what differences leave of rounding does not count. */
    boolean moves(int j, int input) {
        return Math.abs(c[j][input]) > 1e-7;
    }

    Budget budget(int j) {
        double[] full = new double[ErrorKind.values().length];
        double[] independent = new double[full.length];
        for (int s = 0; s < causes.size(); s++) {
            full[causes.get(s).kind().ordinal()] += g[j][s] * g[j][s];
        }
        for (int i = 0; i < inputs.size(); i++) {
            for (Contribution one : inputs.get(i).contributions()) {
                double term = c[j][i] * one.u();
                independent[one.kind().ordinal()] += term * term;
            }
        }
        double sum = Arrays.stream(independent).sum();
        double variance = covariance(j, j) > ROUNDING * sum ? covariance(j, j) : 0;
        List<Budget.Line> lines = new ArrayList<>();
        for (ErrorKind kind : ErrorKind.values()) {
            int k = kind.ordinal();
            if (independent[k] > 0) {
                lines.add(new Budget.Line(
                        kind, Math.sqrt(full[k]), Math.sqrt(independent[k]), variance > 0 ? full[k] / variance : 0));
            }
        }
        return new Budget(lines, Math.sqrt(variance), Math.sqrt(sum));
    }
}
