package org.trammel.calc.metrology;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.metrology.Plausibility.FarOff;
import org.trammel.calc.metrology.Plausibility.Slip;
import org.trammel.calc.units.DecimalSign;

/**
 * Sources: the inch is 25,4 mm exactly and t(°C) = (t(°F) − 32) · 5/9 (NIST SP 811:2008, Appendix B); the slips are those
 * the workshop has seen. Five tolerances is the shop's setting.
 */
class PlausibilityTest {

    private static final BigDecimal FIVE = BigDecimal.valueOf(5);

    @ParameterizedTest
    @CsvSource({
        "3.5, 0, -0.5, 0.5, mm, DECIMAL_SIGN, 0.35",
        "35, 0, -0.5, 0.5, mm, DECIMAL_SIGN, 0.35",
        "655, 65.5, 65.2, 65.8, °, DECIMAL_SIGN, 65.5",
        "514, 541, 540, 542, mm, SWAPPED_DIGITS, 541",
        "17.5, 444.5, 443.5, 445.5, mm, INCHES, 444.5",
        "351, 177, 172, 182, °C, FAHRENHEIT, 177.2",
        "-12.0, 12.0, 11.9, 12.1, mm, DROPPED_SIGN, 12.0"
    })
    void aLikelySlipIsNamedWithTheValueThatWasMeant(
            BigDecimal typed,
            BigDecimal nominal,
            BigDecimal lower,
            BigDecimal upper,
            String unit,
            Slip.Kind kind,
            BigDecimal meant) {
        assertThat(Plausibility.of(typed, nominal, Limits.between(lower, upper), FIVE, unit))
                .isInstanceOfSatisfying(FarOff.class, far -> {
                    assertThat(far.slip().orElseThrow().kind()).isEqualTo(kind);
                    assertThat(far.slip().orElseThrow().meant()).isEqualByComparingTo(meant);
                });
    }

    @Test
    void theQuestionIsAskedInWords() {
        Limits limits = Limits.between(new BigDecimal("-0.5"), new BigDecimal("0.5"));
        FarOff far = (FarOff) Plausibility.of(new BigDecimal("3.5"), BigDecimal.ZERO, limits, FIVE, "mm");
        assertThat(far.words(DecimalSign.COMMA))
                .isEqualTo("3,5 is 7 tolerances off. Did you mean 0,35? The decimal sign may have slipped.");
    }

    @Test
    void withoutALikelySlipTheGaugeIsReadAgain() {
        Limits limits = Limits.between(new BigDecimal("99"), new BigDecimal("101"));
        FarOff far = (FarOff) Plausibility.of(new BigDecimal("77"), BigDecimal.valueOf(100), limits, FIVE, "mm");
        assertThat(far.slip()).isEmpty();
        assertThat(far.words(DecimalSign.COMMA)).contains("Read the gauge again");
    }

    @ParameterizedTest
    @CsvSource({"1.5, false", "1.501, true", "-1.5, false", "-1.501, true", "0.31, false"})
    void moreThanFiveTolerancesOffIsAskedAbout(BigDecimal typed, boolean asked) {
        Limits limits = Limits.between(new BigDecimal("-0.3"), new BigDecimal("0.3"));
        assertThat(Plausibility.of(typed, BigDecimal.ZERO, limits, FIVE, "°") instanceof FarOff)
                .isEqualTo(asked);
    }

    @ParameterizedTest
    @CsvSource({"950, true", "120, false", "60, false"})
    void oneOpenSideIsMeasuredByItsLimit(BigDecimal typed, boolean asked) {
        Limits hardness = Limits.atLeast(BigDecimal.valueOf(95));
        assertThat(Plausibility.of(typed, null, hardness, FIVE, "HB") instanceof FarOff)
                .isEqualTo(asked);
    }

    @Test
    void aNominalGivesAnOpenSideItsTolerance() {
        Limits wall = Limits.atLeast(new BigDecimal("0.9"));
        assertThat(Plausibility.of(new BigDecimal("10"), new BigDecimal("1.0"), wall, FIVE, "mm"))
                .isInstanceOf(FarOff.class);
    }

    @Test
    void aLimitOfZeroHasNoToleranceToMeasureBy() {
        assertThat(Plausibility.of(BigDecimal.ONE, null, Limits.atMost(BigDecimal.ZERO), FIVE, "mm"))
                .isInstanceOf(Plausibility.Plausible.class);
    }

    @Test
    void theSameValueThreeTimesRunningIsAskedAbout() {
        assertThat(Plausibility.ofRun(values("0.31", "0.30", "0.30"))).isInstanceOf(Plausibility.Plausible.class);
        assertThat(Plausibility.ofRun(values("0.31", "0.30", "0.3", "0.30")))
                .isEqualTo(new Plausibility.SameAgain(new BigDecimal("0.30"), 3));
        assertThat(Plausibility.ofRun(values("0.30", "0.30", "0.31", "0.30")))
                .isInstanceOf(Plausibility.Plausible.class);
        assertThat(Plausibility.ofRun(List.of())).isInstanceOf(Plausibility.Plausible.class);
    }

    private static List<BigDecimal> values(String... typed) {
        return Stream.of(typed).map(BigDecimal::new).toList();
    }
}
