package org.trammel.calc.statistics;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.special.Erf;
import org.hipparchus.special.Gamma;
import org.trammel.calc.units.Answer;

/**
 * What the range and the standard deviation of n normal readings are in units of the true σ, and the factors of control
 * limits made from it.
 *
 * <pre>
 * d₂ = E[R]/σ   d₃ = √(E[R²] − E[R]²)/σ   E[Rᵏ] = ∫₀^∞ rᵏ f(r) dr
 * f(r) = n (n − 1) ∫ φ(x − r/2) φ(x + r/2) (Φ(x + r/2) − Φ(x − r/2))ⁿ⁻² dx
 * c₄ = E[s]/σ = √(2/(n − 1)) Γ(n/2)/Γ((n − 1)/2)
 * A₂ = 3/(d₂√n)  A₃ = 3/(c₄√n)  E₂ = 3/d₂  D₃, D₄ = 1 ∓ 3 d₃/d₂  B₃, B₄ = 1 ∓ 3 √(1 − c₄²)/c₄
 * </pre>
 *
 * R range, s standard deviation of n readings, φ and Φ density and distribution of the standard normal. D₃ and B₃ are 0
 * where the formula falls below 0.
 *
 * <p>Validity: independent normal readings, n from 2 to 25 as in the printed tables. Accuracy: eight decimals and more.
 *
 * <p>Source: H. O. Hartley, The range in random samples, Biometrika 32 (1942) 334 (distribution of the range, page from
 * memory); D. C. Montgomery, Introduction to Statistical Quality Control, appendix VI; ISO 7870-2, table of coefficients.
 *
 * @param size n
 */
public record ControlConstants(int size, double d2, double d3, double c4) {

    /** The printed tables end here. */
    public static final int LARGEST = 25;

    private static final double WIDEST = 13;
    private static final double STEP = 0.1;
    private static final Map<Integer, ControlConstants> KNOWN = new ConcurrentHashMap<>();

    /** The constants for groups of this size. */
    public static Answer<ControlConstants> of(int size) {
        return size >= 2 && size <= LARGEST
                ? Answer.of(forSize(size))
                : Answer.none("size", "Groups of " + size + " have no constants here: from 2 to " + LARGEST + " do.");
    }

    static ControlConstants forSize(int size) {
        return KNOWN.computeIfAbsent(size, ControlConstants::computed);
    }

    private static ControlConstants computed(int n) {
        GaussIntegrator rule = new GaussIntegratorFactory().legendre(64, 0, WIDEST);
        double mean = rule.integrate(r -> r * density(r, n));
        double square = rule.integrate(r -> r * r * density(r, n));
        double c4 = Math.sqrt(2.0 / (n - 1)) * Math.exp(Gamma.logGamma(n / 2.0) - Gamma.logGamma((n - 1) / 2.0));
        return new ControlConstants(n, mean, Math.sqrt(square - mean * mean), c4);
    }

    /** Of the range; the integrand is smooth and dies out at both ends, where equal steps lose nothing. */
    private static double density(double r, int n) {
        double sum = 0;
        for (int i = 0; i <= 65; i++) {
            double x = i * STEP;
            double both = Math.exp(-x * x - r * r / 4) / (2 * Math.PI);
            double between = Erf.erf((x - r / 2) / Math.sqrt(2), (x + r / 2) / Math.sqrt(2)) / 2;
            sum += (i == 0 ? 1 : 2) * both * Math.pow(between, n - 2);
        }
        return n * (n - 1) * sum * STEP;
    }

    /** A₂: limits of means by the mean range. */
    public double meanByRange() {
        return 3 / (d2 * Math.sqrt(size));
    }

    /** A₃: limits of means by the mean standard deviation. */
    public double meanByDeviation() {
        return 3 / (c4 * Math.sqrt(size));
    }

    /** E₂: limits of single readings by the mean range. */
    public double singleByRange() {
        return 3 / d2;
    }

    /** D₃: lower limit of ranges by their mean. */
    public double rangeLower() {
        return Math.max(0, 1 - 3 * d3 / d2);
    }

    /** D₄: upper limit of ranges by their mean. */
    public double rangeUpper() {
        return 1 + 3 * d3 / d2;
    }

    /** B₃: lower limit of standard deviations by their mean. */
    public double deviationLower() {
        return Math.max(0, 1 - 3 * Math.sqrt(1 - c4 * c4) / c4);
    }

    /** B₄: upper limit of standard deviations by their mean. */
    public double deviationUpper() {
        return 1 + 3 * Math.sqrt(1 - c4 * c4) / c4;
    }
}
