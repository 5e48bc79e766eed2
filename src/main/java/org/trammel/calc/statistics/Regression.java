package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import org.trammel.calc.units.Answer;

/**
 * A straight line, or a plane, through what was done before, by least squares; what the next occasion will bring, and
 * between which figures.
 *
 * <pre>
 * y = b₀ + b₁ x₁ + … + bₚ xₚ     Σ (y − ŷ)² least     s² = Σ (y − ŷ)² / (n − p − 1)
 * leverage of a place  h = 1/n + (x − x̄)ᵀ C (x − x̄),   C = (Σ (xᵢ − x̄)(xᵢ − x̄)ᵀ)⁻¹
 * next reading  ŷ ± t s √(1 + h)     mean of many  ŷ ± t s √h     t for n − p − 1 degrees of freedom, 95 % both sides
 * </pre>
 *
 * Validity: errors independent, normal, as large everywhere; xs known without error. It is not drawn out: a place is
 * refused if one of its figures lies outside those that were had, or if they were not had together (h above the largest
 * of the occasions). Refused as a whole: as many occasions as coefficients or fewer (two points for a line), a column of
 * one value, a column that follows from others, occasions exactly on the line.
 *
 * <p>Accuracy: orthogonal decomposition of centred, scaled columns; certified values of hard data
 * come to nine digits and more.
 *
 * <p>Source: N. R. Draper, H. Smith, Applied Regression Analysis (3rd ed. 1998), chapters 1, 5 (formulas); D. C.
 * Montgomery, E. A. Peck, G. G. Vining, Introduction to Linear Regression Analysis, "Hidden extrapolation" (leverage; both
 * from memory of the chapters).
 *
 * @param count n, occasions
 * @param degreesOfFreedom n − p − 1
 * @param residualDeviation s, in the unit of y
 * @param rSquared share of the spread of y that the line takes up, 0 to 1
 * @param constant b₀
 * @param terms one for each column of xs, in their order
 * @param farthest largest leverage among the occasions
 * @param inverse C, by rows
 */
public record Regression(
        int count,
        int degreesOfFreedom,
        double residualDeviation,
        double rSquared,
        Coefficient constant,
        List<Term> terms,
        double farthest,
        List<List<Double>> inverse) {

    public Regression {
        terms = List.copyOf(terms);
        inverse = inverse.stream().map(List::copyOf).toList();
    }

    /**
     * A coefficient.
     *
     * @param interval of the estimate at 95 %
     */
    public record Coefficient(double estimate, double standardError, Interval interval) {}

    /**
     * What one column of xs adds.
     *
     * @param coefficient change of y for one more of x
     * @param span the smallest and the largest x that were had
     * @param mean x̄
     */
    public record Term(String name, Coefficient coefficient, Interval span, double mean) {}

    /**
     * What is to be expected.
     *
     * @param value ŷ
     * @param next where the next reading falls
     * @param mean where the mean of many at this place lies
     */
    public record Prediction(double value, Interval next, Interval mean) {}

    /**
     * Lays the line.
     *
     * @param xs one column or more
     * @param y what hangs on them
     */
    public static Answer<Regression> of(List<Column> xs, Column y) {
        Asked asked = new Asked();
        asked.holds(!xs.isEmpty(), "xs", "Nothing is given that the " + y.name() + " could hang on.");
        int count = y.readings().size();
        for (Column x : xs) {
            asked.holds(
                    x.readings().size() == count,
                    x.name(),
                    "There are " + x.readings().size() + " readings of the " + x.name() + " and " + count + " of the "
                            + y.name() + ": each occasion needs both.");
            asked.numbers(x.name(), "Of the " + x.name() + ", reading", x.readings());
        }
        asked.numbers(y.name(), "Of the " + y.name() + ", reading", y.readings());
        asked.holds(
                count >= xs.size() + 2,
                y.name(),
                "There are " + count + " occasions: " + (xs.size() + 1)
                        + " always lie on a line of this kind exactly, and only from " + (xs.size() + 2)
                        + " on can be told how far the next falls from it.");
        return asked.met() ? LeastSquares.of(xs, y) : asked.refusal();
    }

    /**
     * What the next occasion will bring.
     *
     * @param at one figure for each term, in their order
     */
    public Answer<Prediction> predict(List<Double> at) {
        Asked asked = new Asked();
        asked.holds(
                at.size() == terms.size(),
                "at",
                "The line hangs on " + terms.size() + " figures, " + at.size() + " are given.");
        if (!asked.met() || !asked.numbers("at", "Figure", at)) {
            return asked.refusal();
        }
        double value = constant.estimate();
        double leverage = 1.0 / count;
        List<Double> off = new ArrayList<>();
        for (int i = 0; i < terms.size(); i++) {
            Term term = terms.get(i);
            value += term.coefficient().estimate() * at.get(i);
            off.add(at.get(i) - term.mean());
            asked.holds(
                    term.span().holds(at.get(i)),
                    term.name(),
                    "A " + term.name() + " of " + Written.plain(at.get(i)) + " lies outside what was done so far, "
                            + Written.plain(term.span().low()) + " to "
                            + Written.plain(term.span().high()) + ": the line is not drawn out.");
        }
        for (int i = 0; i < off.size(); i++) {
            for (int j = 0; j < off.size(); j++) {
                leverage += off.get(i) * inverse.get(i).get(j) * off.get(j);
            }
        }
        if (asked.met()) {
            asked.holds(
                    leverage <= farthest * (1 + 1e-9),
                    "at",
                    "Each of these figures was had before, but nothing near them together: the line is not drawn out.");
        }
        if (!asked.met()) {
            return asked.refusal();
        }
        double mean = quantile() * residualDeviation * Math.sqrt(leverage);
        double next = quantile() * residualDeviation * Math.sqrt(1 + leverage);
        return Answer.of(new Prediction(
                value, new Interval(value - next, value + next), new Interval(value - mean, value + mean)));
    }

    private double quantile() {
        return quantile(degreesOfFreedom);
    }

    static double quantile(int degreesOfFreedom) {
        return new TDistribution(degreesOfFreedom).inverseCumulativeProbability(1 - Interval.TAIL);
    }
}
