package org.trammel.calc.metrology;

import java.math.BigDecimal;

/**
 * A deviation with its uncertainty.
 *
 * @param what which
 * @param value mm, or rad for an angle
 * @param budget in the same unit
 */
public record MeasuredDeviation(Deviation what, double value, Budget budget) {

    /** In mm or degrees, to nine decimals: what is judged, never what is shown. */
    public BigDecimal judgedValue() {
        return Figure.judged(what.angle() ? Math.toDegrees(value) : value);
    }

    /** Standard uncertainty in mm or degrees, rounded up to four digits. */
    public BigDecimal judgedUncertainty() {
        return Figure.uncertainty(statedBudget().u());
    }

    /** The budget in mm or degrees. */
    public Budget statedBudget() {
        return what.angle() ? budget.times(Math.toDegrees(1)) : budget;
    }
}
