package org.trammel.calc.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.trammel.calc.units.DecimalSign;

/**
 * Source of the rule: ISO 14253-1:2017 as ILAC-G8:09/2019 retells it (conformity inside the zone reduced by the guard
 * band, nonconformity outside the zone enlarged by it, neither between; 95 % one-sided gives 1,645 u, rounded up to 1,65
 * in the shop). The bounds below are worked by hand: ±0,30 with u 0,056 gives g = 0,0924, in thousandths 0,093, so 0,207
 * and 0,393; with u 0,020 g = 0,033, so 0,267 and 0,333.
 */
class ConformityDecisionTest {

    private static final Limits TWIST = Limits.between(new BigDecimal("-0.30"), new BigDecimal("0.30"));
    private static final BigDecimal FACTOR = new BigDecimal("1.65");
    private static final BigDecimal THOUSANDTH = new BigDecimal("0.001");

    @ParameterizedTest
    @CsvSource({
        "0.207, 0.056, conforming",
        "0.2071, 0.056, undecided",
        "0.2074, 0.056, undecided",
        "-0.207, 0.056, conforming",
        "0.30, 0.056, undecided",
        "-0.331, 0.056, undecided",
        "0.393, 0.056, undecided",
        "0.3931, 0.056, not conforming",
        "-0.394, 0.056, not conforming",
        "0.25, 0.056, undecided",
        "0.25, 0.020, conforming",
        "0.267, 0.020, conforming",
        "0.268, 0.020, undecided",
        "0.333, 0.020, undecided",
        "-0.344, 0.020, not conforming"
    })
    void theGuardedRuleHasThreeVerdicts(BigDecimal y, BigDecimal u, String word) {
        assertThat(guarded(y, TWIST, u).word()).isEqualTo(word);
    }

    @ParameterizedTest
    @CsvSource({
        "0.30, conforming",
        "-0.30, conforming",
        "0.3004, not conforming", // shown with two decimals this is 0,30: the stored value is judged
        "0.300000001, not conforming",
        "-0.301, not conforming"
    })
    void thePlainRuleIncludesTheLimitsAndHasTwoVerdicts(BigDecimal y, String word) {
        assertThat(ConformityDecision.of(y, TWIST, DecisionRule.PLAIN, null, FACTOR, THOUSANDTH)
                        .word())
                .isEqualTo(word);
    }

    @Test
    void aReadingJustInsideTheBoundConformsAndItsBoundIsKept() {
        // ±1,0 with u 0,060: g = 0,099, bound 0,901
        Limits offset = Limits.between(new BigDecimal("-1.0"), new BigDecimal("1.0"));
        ConformityDecision decision = guarded(new BigDecimal("0.9"), offset, new BigDecimal("0.060"));
        assertThat(decision.word()).isEqualTo("conforming");
        assertThat(decision.basis().conformingTo()).isEqualByComparingTo("0.901");
        assertThat(decision.basis().notConformingAbove()).isEqualByComparingTo("1.099");
        assertThat(decision.basis().guardBand()).isEqualByComparingTo("0.099");
    }

    @Test
    void theGuardBandIsRoundedUpToTheStoredResolution() {
        assertThat(ConformityDecision.guardBand(new BigDecimal("0.056"), FACTOR, new BigDecimal("0.01")))
                .isEqualByComparingTo("0.10");
        assertThat(ConformityDecision.guardBand(new BigDecimal("0.020"), FACTOR, THOUSANDTH))
                .isEqualByComparingTo("0.033");
        assertThat(ConformityDecision.guardBand(new BigDecimal("2"), FACTOR, new BigDecimal("0.5")))
                .isEqualByComparingTo("3.5");
    }

    @ParameterizedTest
    @CsvSource({"96.65, conforming", "96.64, undecided", "93.35, undecided", "93.34, not conforming", "400, conforming"
    })
    void anOpenSideHasNoBound(BigDecimal y, String word) {
        ConformityDecision decision = ConformityDecision.of(
                y,
                Limits.atLeast(new BigDecimal("95")),
                DecisionRule.GUARDED,
                BigDecimal.ONE,
                FACTOR,
                new BigDecimal("0.01"));
        assertThat(decision.word()).isEqualTo(word);
        assertThat(decision.basis().conformingTo()).isNull();
    }

    @Test
    void atMostIsTheMirrorImage() {
        Limits limit = Limits.atMost(new BigDecimal("0.5"));
        assertThat(guarded(new BigDecimal("0.45"), limit, new BigDecimal("0.02"))
                        .word())
                .isEqualTo("conforming");
        assertThat(guarded(new BigDecimal("0.5"), limit, new BigDecimal("0.02")).word())
                .isEqualTo("undecided");
        assertThat(guarded(new BigDecimal("0.534"), limit, new BigDecimal("0.02"))
                        .word())
                .isEqualTo("not conforming");
        assertThat(guarded(new BigDecimal("-7"), limit, new BigDecimal("0.02")).word())
                .isEqualTo("conforming");
    }

    @Test
    void withoutUncertaintyTheGuardedRuleGivesNoVerdict() {
        for (BigDecimal u : new BigDecimal[] {null, BigDecimal.ZERO, new BigDecimal("0.000")}) {
            ConformityDecision decision =
                    ConformityDecision.of(BigDecimal.ZERO, TWIST, DecisionRule.GUARDED, u, FACTOR, THOUSANDTH);
            assertThat(decision).isInstanceOf(ConformityDecision.GaugeUnfit.class);
            assertThat(decision.words(DecimalSign.COMMA)).contains("not known");
        }
    }

    @Test
    void aGuardBandThatLeavesNothingOfTheToleranceGivesNoVerdict() {
        assertThat(guarded(BigDecimal.ZERO, TWIST, new BigDecimal("0.19")))
                .isInstanceOf(ConformityDecision.GaugeUnfit.class);
        // g = 0,300 exactly leaves one conforming value, which is a zone still
        Limits narrow = Limits.between(new BigDecimal("-0.33"), new BigDecimal("0.33"));
        assertThat(guarded(BigDecimal.ZERO, narrow, new BigDecimal("0.2")).word())
                .isEqualTo("conforming");
        assertThat(guarded(new BigDecimal("0.001"), narrow, new BigDecimal("0.2"))
                        .word())
                .isEqualTo("undecided");
    }

    /** ±0,30: a tenth of the half tolerance is U = 0,030, u = 0,015; a quarter is U = 0,075, u = 0,0375. */
    @ParameterizedTest
    @CsvSource({"0.015, false, false", "0.0151, true, false", "0.0375, true, false", "0.0376, true, true"})
    void aLargeUncertaintyForcesTheGuardedRuleAndALargerWarns(BigDecimal u, boolean forced, boolean warns) {
        ConformityDecision decision =
                ConformityDecision.of(new BigDecimal("0.299"), TWIST, DecisionRule.PLAIN, u, FACTOR, THOUSANDTH);
        assertThat(decision.basis().forced()).isEqualTo(forced);
        assertThat(decision.word()).isEqualTo(forced ? "undecided" : "conforming");
        assertThat(((UncertaintyShare.Determined) UncertaintyShare.of(TWIST, u)).warns())
                .isEqualTo(warns);
    }

    @Test
    void aShareNeedsTwoLimitsAndAnUncertainty() {
        assertThat(UncertaintyShare.of(Limits.atMost(BigDecimal.ONE), BigDecimal.ONE))
                .isInstanceOf(UncertaintyShare.NotDeterminable.class);
        assertThat(UncertaintyShare.of(TWIST, null)).isInstanceOf(UncertaintyShare.NotDeterminable.class);
        assertThat(UncertaintyShare.of(Limits.between(BigDecimal.ONE, BigDecimal.ONE), BigDecimal.ONE))
                .isInstanceOf(UncertaintyShare.NotDeterminable.class);
    }

    @Test
    void theSentenceNamesTheBoundsTheGuardBandAndTheRule() {
        assertThat(guarded(new BigDecimal("-0.344"), TWIST, new BigDecimal("0.020"))
                        .words(DecimalSign.COMMA))
                .isEqualTo(
                        "−0,344 lies below −0,333: the limit −0,30 moved out by the guard band 0,033 (1,65 × 0,020).");
        assertThat(guarded(new BigDecimal("0.331"), TWIST, new BigDecimal("0.056"))
                        .words(DecimalSign.POINT))
                .isEqualTo("0.331 lies in the uncertainty band from 0.207 to 0.393 about the limit 0.30,"
                        + " the guard band 0.093 (1.65 × 0.056): a reading with a smaller uncertainty decides.");
        assertThat(guarded(new BigDecimal("0.1"), TWIST, new BigDecimal("0.056"))
                        .words(DecimalSign.COMMA))
                .isEqualTo("0,1 lies within −0,207 to 0,207: the limits −0,30 to 0,30 drawn in by"
                        + " the guard band 0,093 (1,65 × 0,056).");
        assertThat(ConformityDecision.of(new BigDecimal("0.31"), TWIST, DecisionRule.PLAIN, null, FACTOR, THOUSANDTH)
                        .words(DecimalSign.COMMA))
                .isEqualTo("Plain rule: 0,31 lies outside −0,30 to 0,30, limits included.");
    }

    @Test
    void aSingleLimitIsTooLowOrTooHighAndNotOutside() {
        Limits three = new Limits(new BigDecimal("3"), null);
        Limits tenth = new Limits(null, new BigDecimal("0.10"));
        assertThat(ConformityDecision.of(new BigDecimal("1.5"), three, DecisionRule.PLAIN, null, FACTOR, THOUSANDTH)
                        .words(DecimalSign.COMMA))
                .isEqualTo("Plain rule: 1,5 is not at least 3.");
        assertThat(ConformityDecision.of(new BigDecimal("0.07"), tenth, DecisionRule.PLAIN, null, FACTOR, THOUSANDTH)
                        .words(DecimalSign.COMMA))
                .isEqualTo("Plain rule: 0,07 is at most 0,10.");
        assertThat(guarded(new BigDecimal("0.07"), tenth, new BigDecimal("0.010"))
                        .words(DecimalSign.COMMA))
                .isEqualTo("0,07 is at most 0,083: the limit at most 0,10 drawn in by"
                        + " the guard band 0,017 (1,65 × 0,010).");
    }

    @Test
    void limitsTheWrongWayRoundOrNoneAreRefused() {
        assertThatThrownBy(() -> new Limits(null, null)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Limits.between(BigDecimal.ONE, BigDecimal.ZERO))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** From the definition alone: the three zones cover the axis, are mirror images, and shrink with u as they must. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 5, 8, 13})
    void aSmallerUncertaintyNeverTurnsAVerdictRound(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            BigDecimal y = BigDecimal.valueOf(random.nextInt(1200) - 600, 3);
            BigDecimal u = BigDecimal.valueOf(1 + random.nextInt(150), 3);
            BigDecimal smaller =
                    BigDecimal.valueOf(1 + random.nextInt(u.unscaledValue().intValue()), 3);
            String coarse = guarded(y, TWIST, u).word();
            String fine = guarded(y, TWIST, smaller).word();
            assertThat(guarded(y.negate(), TWIST, u).word()).isEqualTo(coarse);
            if (coarse.equals("conforming") || coarse.equals("not conforming")) {
                assertThat(fine).isEqualTo(coarse);
                boolean plain = TWIST.include(y);
                assertThat(coarse).isEqualTo(plain ? "conforming" : "not conforming");
            }
        }
    }

    private static ConformityDecision guarded(BigDecimal y, Limits limits, BigDecimal u) {
        return ConformityDecision.of(y, limits, DecisionRule.GUARDED, u, FACTOR, THOUSANDTH);
    }

    /**
     * At most 0,3 off zero: U = 2 u is more than a tenth of 0,3 from u = 0,015 on; at 0,03 the guard band is 0,05 and the
     * limit less it 0,25; at 0,25 it is 0,413 and leaves nothing. The plain rule had called all of them conforming.
     */
    @Test
    void oneLimitAboutANominalHasAHalfTolerance() {
        assertThat(off("0.3", "0.015").word()).isEqualTo("conforming");
        assertThat(off("0.3", "0.015").basis().used()).isEqualTo(DecisionRule.PLAIN);
        assertThat(off("0.3", "0.0151").basis().used()).isEqualTo(DecisionRule.GUARDED);
        assertThat(off("0.25", "0.03").word()).isEqualTo("conforming");
        assertThat(off("0.251", "0.03").word()).isEqualTo("undecided");
        assertThat(off("0", "0.25").word()).isEqualTo("gauge unfit");
        assertThat(off("0.3", null).word()).isEqualTo("conforming");
        assertThat(UncertaintyShare.of(
                        Limits.atMost(new BigDecimal("2.5")), new BigDecimal("2.0"), new BigDecimal("0.025")))
                .isEqualTo(new UncertaintyShare.Determined(new BigDecimal("0.100"), false, false));
    }

    private static ConformityDecision off(String value, @Nullable String u) {
        return ConformityDecision.of(
                new BigDecimal(value),
                Limits.atMost(new BigDecimal("0.3")),
                BigDecimal.ZERO,
                DecisionRule.PLAIN,
                u == null ? null : new BigDecimal(u),
                new BigDecimal("1.65"),
                new BigDecimal("0.001"));
    }
}
