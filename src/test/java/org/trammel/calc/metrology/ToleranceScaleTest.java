package org.trammel.calc.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

/** Places worked by hand from the rule of the axis; ISO 129-1 has no rule for such a scale. */
class ToleranceScaleTest {

    private static final Limits LIMITS = Limits.between(new BigDecimal("-0.30"), new BigDecimal("0.30"));

    @Test
    void theScaleIsLaidOutFromTheLimitsAndTheGuardBand() {
        // lines −0,4 … 0,4, axis −0,4 − 0,8/3 to 0,4 + 0,8/3: length 4/3
        ToleranceScale scale = ToleranceScale.of(LIMITS, BigDecimal.ZERO, new BigDecimal("0.1"), new BigDecimal("0.2"));
        assertThat(scale.nominal().orElseThrow()).isCloseTo(0.5, within(1e-12));
        assertThat(scale.lowerLimit().orElseThrow()).isCloseTo(0.5 - 0.3 * 0.75, within(1e-12));
        assertThat(scale.upperLimit().orElseThrow()).isCloseTo(0.5 + 0.3 * 0.75, within(1e-12));
        assertThat(scale.conforming().orElseThrow().from()).isCloseTo(0.5 - 0.2 * 0.75, within(1e-12));
        assertThat(scale.conforming().orElseThrow().to()).isCloseTo(0.5 + 0.2 * 0.75, within(1e-12));
        assertThat(scale.upperBand().orElseThrow().to()).isCloseTo(0.5 + 0.4 * 0.75, within(1e-12));
        assertThat(scale.point().orElseThrow().at()).isCloseTo(0.5 + 0.2 * 0.75, within(1e-12));
    }

    @Test
    void aReadingOffTheScaleStandsAtItsEndAndSaysSo() {
        assertThat(ToleranceScale.of(LIMITS, null, BigDecimal.ZERO, new BigDecimal("35"))
                        .point())
                .contains(new ToleranceScale.Point(1, 1));
        assertThat(ToleranceScale.of(LIMITS, null, BigDecimal.ZERO, new BigDecimal("-35"))
                        .point())
                .contains(new ToleranceScale.Point(0, -1));
    }

    @Test
    void aGuardBandThatLeavesNothingHasNoConformingField() {
        assertThat(ToleranceScale.of(LIMITS, null, new BigDecimal("0.31"), null).conforming())
                .isEmpty();
    }

    @Test
    void anOpenSideRunsToTheEndOfTheAxis() {
        ToleranceScale scale = ToleranceScale.of(Limits.atMost(new BigDecimal("0.6")), null, BigDecimal.ZERO, null);
        // axis 0 to 0,8
        assertThat(scale.lowerLimit()).isEmpty();
        assertThat(scale.conforming().orElseThrow().from()).isZero();
        assertThat(scale.upperLimit().orElseThrow()).isCloseTo(0.75, within(1e-12));
        assertThat(scale.upperBand()).isEmpty();
        ToleranceScale zero = ToleranceScale.of(Limits.atMost(BigDecimal.ZERO), null, BigDecimal.ZERO, null);
        assertThat(zero.upperLimit().orElseThrow()).isBetween(0.0, 1.0);
    }
}
