package org.trammel.calc.thermal;

import java.util.function.DoubleBinaryOperator;

/**
 * Hours at a reference temperature that some heat is worth.
 *
 * @param usual_h by the activation energy that judges
 * @param lowEnergy_h by the low one; above the reference less hours than by the usual, below it more
 * @param highEnergy_h by the high one
 */
public record EquivalentHours(double usual_h, double lowEnergy_h, double highEnergy_h) {

    public static final EquivalentHours NONE = new EquivalentHours(0, 0, 0);

    public EquivalentHours plus(EquivalentHours more) {
        return with(more, Double::sum);
    }

    public EquivalentHours minus(EquivalentHours less) {
        return with(less, (one, other) -> one - other);
    }

    private EquivalentHours with(EquivalentHours other, DoubleBinaryOperator does) {
        return new EquivalentHours(
                does.applyAsDouble(usual_h, other.usual_h),
                does.applyAsDouble(lowEnergy_h, other.lowEnergy_h),
                does.applyAsDouble(highEnergy_h, other.highEnergy_h));
    }

    /** The least of the three. */
    public double least_h() {
        return Math.min(usual_h, Math.min(lowEnergy_h, highEnergy_h));
    }

    /** The greatest of the three. */
    public double greatest_h() {
        return Math.max(usual_h, Math.max(lowEnergy_h, highEnergy_h));
    }
}
