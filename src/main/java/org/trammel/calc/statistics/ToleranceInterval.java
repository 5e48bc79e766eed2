package org.trammel.calc.statistics;

import java.util.List;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.trammel.calc.units.Answer;

/**
 * The interval in which a stated share of all pieces lies, with a stated confidence, told from a sample of pieces that are
 * normally distributed.
 *
 * <pre>
 * mean ± k s,  k = z((1+p)/2) · √( ν (1 + 1/n) / χ²(1−γ; ν) ),  ν = n − 1
 * </pre>
 *
 * <p>Source: W. G. Howe, Journal of the American Statistical Association 64 (1969) 610, as in the NIST/SEMATECH e-Handbook of
 * Statistical Methods, 7.2.6.3. For ten pieces it lies within a hundredth of the exact factor.
 *
 * @param factor k
 */
public record ToleranceInterval(double mean, double deviation, double factor) {

    /** A deviation needs two pieces; fewer than these say next to nothing of their kind. */
    public static final int LEAST = 10;

    /**
     * Computes it.
     *
     * @param x one value for each piece
     * @param share p, above 0 and below 1
     * @param confidence γ, above 0 and below 1
     */
    public static Answer<ToleranceInterval> of(List<Double> x, double share, double confidence) {
        int n = x.size();
        if (n < LEAST) {
            return Answer.none("x", "There are " + n + " pieces; an interval is told from " + LEAST + " or more.");
        }
        double mean = x.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double squares =
                x.stream().mapToDouble(one -> (one - mean) * (one - mean)).sum();
        if (squares == 0) {
            return Answer.none("x", "All " + n + " pieces read alike, which says nothing of how far they differ.");
        }
        return Answer.of(new ToleranceInterval(mean, Math.sqrt(squares / (n - 1)), factor(n, share, confidence)));
    }

    static double factor(int n, double share, double confidence) {
        double z = new NormalDistribution().inverseCumulativeProbability((1 + share) / 2);
        double chi = new ChiSquaredDistribution(n - 1).inverseCumulativeProbability(1 - confidence);
        return z * Math.sqrt((n - 1) * (1 + 1.0 / n) / chi);
    }

    public double least() {
        return mean - factor * deviation;
    }

    public double greatest() {
        return mean + factor * deviation;
    }
}
