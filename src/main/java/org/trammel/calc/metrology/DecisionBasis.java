package org.trammel.calc.metrology;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What a verdict was given on; kept with it.
 *
 * @param value the reduced reading, never the rounded figure on the screen
 * @param limits the limits
 * @param asked the rule the characteristic asks for
 * @param used the rule that judged; differs where the uncertainty forced the guarded rule
 * @param factor guard band in standard uncertainties
 * @param u standard uncertainty, or null if the aid has none
 * @param guardBand factor × u, rounded up to the resolution; zero under the plain rule
 * @param resolution the step readings of this characteristic are stored in
 * @param share what part of the half tolerance the expanded uncertainty takes
 */
public record DecisionBasis(
        BigDecimal value,
        Limits limits,
        DecisionRule asked,
        DecisionRule used,
        BigDecimal factor,
        @Nullable BigDecimal u,
        BigDecimal guardBand,
        BigDecimal resolution,
        UncertaintyShare share) {

    /** Whether the uncertainty forced the guarded rule on a characteristic that asks for the plain one. */
    public boolean forced() {
        return asked != used;
    }

    /** Least value that conforms, or null if that side is open. */
    public @Nullable BigDecimal conformingFrom() {
        return limits.lower() == null ? null : limits.lower().add(guardBand);
    }

    /** Greatest value that conforms, or null if that side is open. */
    public @Nullable BigDecimal conformingTo() {
        return limits.upper() == null ? null : limits.upper().subtract(guardBand);
    }

    /** Values below do not conform, or null if that side is open. */
    public @Nullable BigDecimal notConformingBelow() {
        return limits.lower() == null ? null : limits.lower().subtract(guardBand);
    }

    /** Values above do not conform, or null if that side is open. */
    public @Nullable BigDecimal notConformingAbove() {
        return limits.upper() == null ? null : limits.upper().add(guardBand);
    }
}
