package org.trammel.calc.metrology;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.DecimalSign;

/**
 * Verdict on one reading. Guarded rule, with the guard band g = factor × u rounded up to the stored resolution:
 *
 * <pre>
 * conforming      LL + g ≤ y ≤ UL − g
 * not conforming  y &lt; LL − g or y &gt; UL + g
 * undecided       between
 * </pre>
 *
 * Plain rule: limits included, no third verdict. An open side has no bound. All comparisons are of exact decimals.
 *
 * <p>The guarded rule is used although the plain one is asked where the expanded uncertainty takes more than a tenth of
 * the half tolerance ({@link UncertaintyShare}); of one limit alone the half tolerance is its distance from the nominal,
 * if there is one. Where u is missing or zero under the guarded rule, or LL + g &gt; UL −
 * g, the gauge is unfit for these limits and there is no verdict.
 *
 * <p>Source: ISO 14253-1:2017 (uncertainty counts against whoever proves conformity or nonconformity; 95 % one-sided,
 * factor 1,65); JCGM 106:2012, 8.3 (guarded acceptance and guarded rejection).
 */
public sealed interface ConformityDecision {

    /** Lies inside the limits drawn in by the guard band. */
    record Conforming(DecisionBasis basis) implements ConformityDecision {}

    /** Lies outside the limits moved out by the guard band. */
    record NotConforming(DecisionBasis basis) implements ConformityDecision {}

    /** Lies within the guard band of a limit: neither is shown. */
    record Undecided(DecisionBasis basis) implements ConformityDecision {}

    /** There is no verdict: this gauge cannot decide on these limits. */
    record GaugeUnfit(DecisionBasis basis, String reason) implements ConformityDecision {}

    /** What the verdict was given on. */
    DecisionBasis basis();

    /**
     * Judges a reading.
     *
     * @param value the reduced reading y
     * @param limits LL and UL in the unit of the reading
     * @param rule the rule the characteristic asks for
     * @param u standard uncertainty in the same unit, or null for an aid without uncertainty
     * @param factor guard band in standard uncertainties, greater than zero, such as 1.65
     * @param resolution step in which readings are stored, greater than zero, such as 0.001
     */
    static ConformityDecision of(
            BigDecimal value,
            Limits limits,
            DecisionRule rule,
            @Nullable BigDecimal u,
            BigDecimal factor,
            BigDecimal resolution) {
        return of(value, limits, null, rule, u, factor, resolution);
    }

    /**
     * Judges a reading of a characteristic that may have a nominal.
     *
     * @param nominal what the limits lie about, or null if there is none
     */
    static ConformityDecision of(
            BigDecimal value,
            Limits limits,
            @Nullable BigDecimal nominal,
            DecisionRule rule,
            @Nullable BigDecimal u,
            BigDecimal factor,
            BigDecimal resolution) {
        if (factor.signum() <= 0 || resolution.signum() <= 0) {
            throw new IllegalArgumentException("Factor and resolution are greater than zero");
        }
        UncertaintyShare share = UncertaintyShare.of(limits, nominal, u);
        DecisionRule used = used(rule, limits, nominal, u);
        BigDecimal g = used == DecisionRule.PLAIN || u == null ? BigDecimal.ZERO : guardBand(u, factor, resolution);
        DecisionBasis basis = new DecisionBasis(value, limits, rule, used, factor, u, g, resolution, share);
        if (used == DecisionRule.PLAIN) {
            return limits.include(value) ? new Conforming(basis) : new NotConforming(basis);
        }
        if (u == null || u.signum() <= 0) {
            return new GaugeUnfit(basis, "its measurement uncertainty is not known");
        }
        return guarded(basis, limits.ofSize(nominal));
    }

    private static ConformityDecision guarded(DecisionBasis basis, boolean ofSize) {
        BigDecimal y = basis.value();
        BigDecimal from = basis.conformingFrom();
        BigDecimal to = basis.conformingTo();
        boolean none = ofSize ? to != null && to.signum() < 0 : from != null && to != null && from.compareTo(to) > 0;
        if (none) {
            return new GaugeUnfit(basis, "its guard band leaves nothing of the tolerance");
        }
        if ((from == null || y.compareTo(from) >= 0) && (to == null || y.compareTo(to) <= 0)) {
            return new Conforming(basis);
        }
        BigDecimal below = basis.notConformingBelow();
        BigDecimal above = basis.notConformingAbove();
        boolean outside = below != null && y.compareTo(below) < 0 || above != null && y.compareTo(above) > 0;
        return outside ? new NotConforming(basis) : new Undecided(basis);
    }

    /**
     * Guard band of an uncertainty.
     *
     * @return factor × u, rounded up to a multiple of the resolution
     */
    static BigDecimal guardBand(BigDecimal u, BigDecimal factor, BigDecimal resolution) {
        return factor.multiply(u).divide(resolution, 0, RoundingMode.CEILING).multiply(resolution);
    }

    /** The rule a verdict is given by: the guarded one too where u takes too much of the limits for the plain one. */
    static DecisionRule used(DecisionRule asked, Limits limits, @Nullable BigDecimal nominal, @Nullable BigDecimal u) {
        return forces(limits, nominal, u) ? DecisionRule.GUARDED : asked;
    }

    private static boolean forces(Limits limits, @Nullable BigDecimal nominal, @Nullable BigDecimal u) {
        BigDecimal zone = limits.zone(nominal);
        return u != null && zone != null && u.multiply(BigDecimal.valueOf(40)).compareTo(zone) > 0;
    }

    /** The verdict's word: conforming, not conforming, undecided, gauge unfit. */
    default String word() {
        if (this instanceof Conforming) {
            return "conforming";
        }
        if (this instanceof NotConforming) {
            return "not conforming";
        }
        return this instanceof Undecided ? "undecided" : "gauge unfit";
    }

    /** One sentence that explains the verdict, with the bounds it was given by. */
    default String words(DecimalSign sign) {
        return DecisionWords.of(this, sign);
    }
}
