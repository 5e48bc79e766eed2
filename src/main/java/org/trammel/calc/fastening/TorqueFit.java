package org.trammel.calc.fastening;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/**
 * Whether a torque, with all that the tool may err by, lies in the band a sheet allows.
 *
 * <pre>
 * T (1 − e) ≥ least   and   T (1 + e) ≤ most       T set or read in N·m, e greatest error of the tool as a part of T
 * targets that fit:  least / (1 − e) … most / (1 + e);   the greatest e for which there is one:  (most − least) / (most + least)
 * </pre>
 *
 * Limits are inclusive. Source: the permissible deviation of ISO 6789-1 is relative to the torque; the rest follows from
 * asking that no torque within it leaves the band.
 *
 * @param low_Nm least torque it may truly be
 * @param high_Nm greatest torque it may truly be
 * @param leastTarget_Nm least target that fits with this tool, to a hundredth, rounded inwards; null if none fits
 * @param mostTarget_Nm greatest target that fits
 * @param errorThatWouldDo_percent greatest error with which some target fits, rounded down to a tenth
 */
public record TorqueFit(
        Verdict verdict,
        BigDecimal low_Nm,
        BigDecimal high_Nm,
        @Nullable BigDecimal leastTarget_Nm,
        @Nullable BigDecimal mostTarget_Nm,
        BigDecimal errorThatWouldDo_percent) {

    /** What is known of a torque with its error. */
    public enum Verdict {
        /** All it may be lies in the band. */
        INSIDE,
        /** Nothing it may be does. */
        OUTSIDE,
        /** It may lie in the band or not. */
        EITHER
    }

    private static final int DECIMALS = 2;

    /**
     * Compares.
     *
     * @param torque_Nm set or read, above 0
     * @param least_Nm least torque allowed, not below 0
     * @param most_Nm greatest allowed, above the least
     * @param error_percent greatest error of the tool, from 0 to below 100
     */
    public static TorqueFit of(
            BigDecimal torque_Nm, BigDecimal least_Nm, BigDecimal most_Nm, BigDecimal error_percent) {
        BigDecimal e = error_percent.movePointLeft(2);
        BigDecimal less = BigDecimal.ONE.subtract(e);
        BigDecimal more = BigDecimal.ONE.add(e);
        BigDecimal low = torque_Nm.multiply(less);
        BigDecimal high = torque_Nm.multiply(more);
        boolean inside = low.compareTo(least_Nm) >= 0 && high.compareTo(most_Nm) <= 0;
        boolean outside = high.compareTo(least_Nm) < 0 || low.compareTo(most_Nm) > 0;
        BigDecimal leastTarget = least_Nm.divide(less, DECIMALS, RoundingMode.CEILING);
        BigDecimal mostTarget = most_Nm.divide(more, DECIMALS, RoundingMode.FLOOR);
        boolean any = leastTarget.compareTo(mostTarget) <= 0;
        return new TorqueFit(
                inside ? Verdict.INSIDE : outside ? Verdict.OUTSIDE : Verdict.EITHER,
                low,
                high,
                any ? leastTarget : null,
                any ? mostTarget : null,
                most_Nm.subtract(least_Nm)
                        .movePointRight(2)
                        .divide(most_Nm.add(least_Nm), MathContext.DECIMAL64)
                        .setScale(1, RoundingMode.FLOOR));
    }

    public boolean inside() {
        return verdict == Verdict.INSIDE;
    }
}
