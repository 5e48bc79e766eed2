package org.trammel.calc.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConformityProbabilityTest {

    /** Two digits of the examples as they are printed. */
    private static final double PRINTED = 0.005;

    @ParameterizedTest
    @CsvSource({
        // JCGM 106:2012, example of 7.4, kinematic viscosity of oil, printed 0,66 (from memory)
        "13.6, 1.8, 12.5, 16.3, 0.66",
        // the shop's worked example: twist in degrees about the limit ±0,30
        "0.331, 0.056, -0.30, 0.30, 0.29",
        "0.25, 0.056, -0.30, 0.30, 0.81",
        "0.25, 0.020, -0.30, 0.30, 0.99"
    })
    void twoSidedExamplesComeOut(BigDecimal y, BigDecimal u, BigDecimal lower, BigDecimal upper, double printed) {
        assertThat(p(y, Limits.between(lower, upper), u)).isCloseTo(printed, within(PRINTED));
    }

    /** JCGM 106:2012, 7.3, Table 1: distance to a single limit in standard uncertainties and the probability. */
    @ParameterizedTest
    @CsvSource({"0.8416, 0.80", "1.2816, 0.90", "1.6449, 0.95", "2.3263, 0.99", "3.0902, 0.999"})
    void theTableOfOneSidedLimitsComesOut(BigDecimal z, double probability) {
        assertThat(p(BigDecimal.ZERO, Limits.atMost(z), BigDecimal.ONE)).isCloseTo(probability, within(5e-5));
        assertThat(p(BigDecimal.ZERO, Limits.atLeast(z.negate()), BigDecimal.ONE))
                .isCloseTo(probability, within(5e-5));
    }

    /** Standard normal distribution, Abramowitz and Stegun (1964), Table 26.1: Φ(1) and Φ(2), fifteen digits. */
    @Test
    void tabulatedValuesOfTheNormalDistributionComeOut() {
        assertThat(p(BigDecimal.ZERO, Limits.atMost(BigDecimal.ONE), BigDecimal.ONE))
                .isCloseTo(0.841344746068543, within(1e-14));
        assertThat(p(BigDecimal.ZERO, Limits.atMost(BigDecimal.valueOf(2)), BigDecimal.ONE))
                .isCloseTo(0.977249868051821, within(1e-14));
    }

    @Test
    void onASingleLimitItIsAHalf() {
        assertThat(p(BigDecimal.TEN, Limits.atMost(BigDecimal.TEN), BigDecimal.ONE))
                .isCloseTo(0.5, within(1e-15));
    }

    /** ILAC-G8:09/2019, Table 1: at the bound drawn in by U = 2 u the false-acceptance probability is 2,3 %. */
    @Test
    void atABoundDrawnInByTheExpandedUncertaintyTheRiskIsThatOfTheGuide() {
        assertThat(1 - p(new BigDecimal("8"), Limits.atMost(BigDecimal.TEN), BigDecimal.ONE))
                .isCloseTo(0.0227501, within(5e-8));
    }

    @Test
    void farOutsideItIsSmallAndNeverNegative() {
        assertThat(p(BigDecimal.ZERO, Limits.between(BigDecimal.TEN, BigDecimal.valueOf(11)), BigDecimal.ONE))
                .isCloseTo(7.6e-24, within(1e-24)); // Φ(−10) = 7,62e-24, Abramowitz and Stegun, Table 26.2
        assertThat(p(BigDecimal.valueOf(1_000_000), Limits.atMost(BigDecimal.ONE), BigDecimal.ONE))
                .isZero();
    }

    @Test
    void withoutUncertaintyThereIsNoProbability() {
        for (BigDecimal u : new BigDecimal[] {null, BigDecimal.ZERO, new BigDecimal("-0.1")}) {
            assertThat(ConformityProbability.of(BigDecimal.ONE, Limits.atMost(BigDecimal.TEN), u))
                    .isInstanceOf(ConformityProbability.NotDeterminable.class);
        }
    }

    @Test
    void doubtIsNeverRoundedAway() {
        assertThat(new ConformityProbability.Determined(0.9999).words()).isEqualTo("over 99 %");
        assertThat(new ConformityProbability.Determined(0.0004).words()).isEqualTo("under 1 %");
        assertThat(new ConformityProbability.Determined(0.2899).words()).isEqualTo("29 %");
    }

    private static double p(BigDecimal y, Limits limits, BigDecimal u) {
        return ((ConformityProbability.Determined) ConformityProbability.of(y, limits, u)).probability();
    }
}
