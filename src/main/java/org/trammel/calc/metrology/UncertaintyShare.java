package org.trammel.calc.metrology;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/**
 * Share of the half tolerance that the expanded uncertainty takes: U / (half of upper − lower), U = 2 u. Of
 * one limit alone the half tolerance is its distance from the nominal.
 *
 * <p>Above 1/10 the plain rule would hide the uncertainty, so the guarded rule is forced; above 1/4 little of the
 * tolerance is left to make parts in, which is said when a design is released. Both comparisons are exact.
 *
 * <p>Source: the 1:10 and 1:4 proportions of gauge maker's practice, as discussed in ILAC-G8:09/2019, and U = 2 u of
 * JCGM 100:2008, 6.2 (coverage about 95 %).
 */
public sealed interface UncertaintyShare {

    /**
     * The share is known.
     *
     * @param share U over half tolerance, rounded up to three decimals
     * @param forcesGuarded above 1/10
     * @param warns above 1/4
     */
    record Determined(BigDecimal share, boolean forcesGuarded, boolean warns) implements UncertaintyShare {}

    /** One side is open and no nominal is known, the zone has no width, or no uncertainty is known. */
    record NotDeterminable(String reason) implements UncertaintyShare {}

    /**
     * Computes the share.
     *
     * @param u standard uncertainty of the reading in the unit of the limits, or null if the aid has none
     */
    static UncertaintyShare of(Limits limits, @Nullable BigDecimal u) {
        return of(limits, null, u);
    }

    /**
     * Computes the share where there may be a nominal.
     *
     * @param nominal what the limits lie about, or null if there is none
     */
    static UncertaintyShare of(Limits limits, @Nullable BigDecimal nominal, @Nullable BigDecimal u) {
        if (u == null || u.signum() <= 0) {
            return new NotDeterminable("No measurement uncertainty is known.");
        }
        BigDecimal zone = limits.zone(nominal);
        if (zone == null) {
            return new NotDeterminable("One side is open, so there is no half tolerance to compare with.");
        }
        if (zone.signum() == 0) {
            return new NotDeterminable("The limits leave no zone between them.");
        }
        BigDecimal fourU = u.multiply(BigDecimal.valueOf(4));
        return new Determined(
                fourU.divide(zone, 3, RoundingMode.UP),
                fourU.multiply(BigDecimal.TEN).compareTo(zone) > 0,
                fourU.multiply(BigDecimal.valueOf(4)).compareTo(zone) > 0);
    }
}
