package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.util.List;
import org.trammel.calc.metrology.Deviation;
import org.trammel.calc.metrology.ErrorKind;

/**
 * A deviation that was computed, in mm or degrees; plus is the drive side.
 *
 * @param u standard uncertainty with all that raw figures share
 * @param uIndependent as if nothing were shared
 * @param budget one line for each kind of cause
 */
public record DeviationLine(
        long reductionId, Deviation what, BigDecimal value, BigDecimal u, BigDecimal uIndependent, List<Cause> budget) {

    /**
     * One line of the budget.
     *
     * @param share of the variance, 0 to 1
     */
    public record Cause(ErrorKind kind, BigDecimal u, BigDecimal uIndependent, BigDecimal share) {

        /** Name of the line. */
        public String words() {
            return kind.words();
        }
    }
}
