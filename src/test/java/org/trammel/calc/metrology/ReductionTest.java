package org.trammel.calc.metrology;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Sources: ISO 3534-1:2006, 1.7 (sample range), 1.15 (mean), from memory; the other reductions are named by what they take. */
class ReductionTest {

    private static final Limits ABOUT_ZERO = Limits.between(new BigDecimal("-1"), new BigDecimal("1"));

    @Test
    void theMeanIsExact() {
        assertThat(reduced(Reduction.MEAN, "0.10", "0.20", "0.30")).isEqualByComparingTo("0.20");
        assertThat(reduced(Reduction.MEAN, "0.1", "0.2")).isEqualByComparingTo("0.15");
    }

    @Test
    void aMeanBesideTheLimitIsNotRoundedOntoIt() {
        // 0,901 twice and 0,900 make 0,900666…: above 0,9, whatever is shown
        BigDecimal mean = reduced(Reduction.MEAN, "0.901", "0.901", "0.900");
        assertThat(mean).isGreaterThan(new BigDecimal("0.9")).isLessThan(new BigDecimal("0.901"));
    }

    @Test
    void spanGreatestAndLeastAreWhatTheySay() {
        assertThat(reduced(Reduction.SPAN, "0.02", "-0.03", "0.01")).isEqualByComparingTo("0.05");
        assertThat(reduced(Reduction.GREATEST, "0.02", "-0.03", "0.01")).isEqualByComparingTo("0.02");
        assertThat(reduced(Reduction.LEAST, "0.02", "-0.03", "0.01")).isEqualByComparingTo("-0.03");
    }

    /** By hand: of 0,1 and −0,9 the one that lies farther off is 0,9, whatever its side. */
    @Test
    void ofSizesTheOneFartherOffCountsToWhicheverSideItLies() {
        for (Reduction one : List.of(Reduction.GREATEST, Reduction.WORST)) {
            assertThat(sizes(one, "-0.9", "0.1")).as(one.name()).isEqualByComparingTo("0.9");
        }
        assertThat(sizes(Reduction.SINGLE, "-0.9")).isEqualByComparingTo("0.9");
        assertThat(sizes(Reduction.MEAN, "-0.9", "0.1")).isEqualByComparingTo("0.4");
        assertThat(sizes(Reduction.SPAN, "-0.9", "0.1")).isEqualByComparingTo("1.0");
    }

    @Test
    void sizesAreAskedForAboutZeroUnderAnUpperLimitAlone() {
        Limits upper = Limits.atMost(new BigDecimal("0.3"));
        assertThat(upper.ofSize(BigDecimal.ZERO)).isTrue();
        assertThat(upper.ofSize(new BigDecimal("0.00"))).isTrue();
        assertThat(upper.ofSize(null)).isFalse();
        assertThat(upper.ofSize(new BigDecimal("-1"))).isFalse();
        assertThat(ABOUT_ZERO.ofSize(BigDecimal.ZERO)).isFalse();
        assertThat(Limits.atLeast(BigDecimal.ONE).ofSize(BigDecimal.ZERO)).isFalse();
    }

    private static BigDecimal sizes(Reduction reduction, String... raw) {
        List<BigDecimal> values = Stream.of(raw).map(BigDecimal::new).toList();
        return ((Reduction.Result.Reduced) reduction.ofSizes(values, Limits.atMost(new BigDecimal("0.3")))).value();
    }

    /** JCGM 100:2008, 5.1.2: the difference of two uncorrelated readings of u = 0,030 has u = 0,042 43, given as 0,042 5. */
    @Test
    void aSpanCarriesTheUncertaintyOfBothItsReadings() {
        BigDecimal u = new BigDecimal("0.030");
        assertThat(Reduction.SPAN.uncertainty(u)).isEqualByComparingTo("0.0425");
        assertThat(Reduction.SPAN.uncertainty(null)).isNull();
        for (Reduction other : Reduction.values()) {
            if (other != Reduction.SPAN && other != Reduction.COAXIAL) {
                assertThat(other.uncertainty(u)).as(other.name()).isEqualByComparingTo(u);
            }
        }
    }

    @Test
    void theWorstHasTheLeastMarginToTheLimits() {
        assertThat(reduced(Reduction.WORST, "0.2", "-0.4", "0.3")).isEqualByComparingTo("-0.4");
        assertThat(worst(Limits.between(BigDecimal.ZERO, new BigDecimal("1")), "0.3", "0.6", "0.1"))
                .isEqualByComparingTo("0.1");
        assertThat(worst(Limits.atLeast(new BigDecimal("95")), "101", "97", "99"))
                .isEqualByComparingTo("97");
        assertThat(worst(Limits.atMost(new BigDecimal("0.5")), "0.1", "0.7", "0.3"))
                .isEqualByComparingTo("0.7");
    }

    @Test
    void theFirstOfEquallyBadValuesIsTaken() {
        assertThat(reduced(Reduction.WORST, "0.4", "-0.4")).isEqualByComparingTo("0.4");
    }

    @ParameterizedTest
    @EnumSource(Reduction.class)
    void withoutReadingsThereIsNoValue(Reduction reduction) {
        assertThat(reduction.of(List.of(), ABOUT_ZERO)).isInstanceOf(Reduction.Result.NotReducible.class);
    }

    @Test
    void aSpanOfOneAndASingleOfTwoHaveNoValue() {
        assertThat(Reduction.SPAN.of(values("1"), ABOUT_ZERO)).isInstanceOf(Reduction.Result.NotReducible.class);
        assertThat(Reduction.SINGLE.of(values("1", "2"), ABOUT_ZERO)).isInstanceOf(Reduction.Result.NotReducible.class);
        assertThat(reduced(Reduction.SINGLE, "0.30")).isEqualTo(new BigDecimal("0.30"));
    }

    /**
     * ISO 19840:2012, acceptance of dry film thickness, as told by guides of coating associations (the standard itself
     * from memory): single readings between 80 % and 100 % of the nominal are allowed while they are fewer than 20 % of
     * all. Other specifications say at most 20 %. The sets for 80 µm are worked examples of that rule: one reading of
     * ten below is inside it, three of ten are not; two of ten are where the two forms part.
     */
    @ParameterizedTest(name = "{0}: {1} below {2} um")
    @CsvSource({
        "85 92 78 101 88 96 83 110 80 97, 1, 80, true, true",
        "82 70 90 95 79 88 100 85 77 96, 3, 80, false, false",
        "72 68 81 77 64 59 88 73 70 66, 1, 60, true, true",
        "72 68 81 77 58 59 88 73 70 66, 2, 60, true, false",
        "60 60 60 60 60 60 60 60 59 59, 2, 60, true, false",
        "60 60 60 60 60 60 60 59 59 59, 3, 60, false, false",
        "60 60 60 60 59, 1, 60, true, false",
        "60 60 60 59, 1, 60, false, false",
        "61 59 61 61 61 61, 1, 60, true, true"
    })
    void aShareOfTheReadingsMayLieBelowTheLimit(
            String readings, int below, BigDecimal limit, boolean atMostAFifth, boolean fewerThanAFifth) {
        String[] raw = readings.split(" ");
        assertThat(values(raw).stream().filter(one -> one.compareTo(limit) < 0)).hasSize(below);
        assertThat(reduced(Reduction.ALL_BUT_FIFTH, raw).compareTo(limit) >= 0).isEqualTo(atMostAFifth);
        assertThat(reduced(Reduction.ALL_BUT_UNDER_FIFTH, raw).compareTo(limit) >= 0)
                .isEqualTo(fewerThanAFifth);
    }

    /** The count the rule speaks of, made independently: every share of every number of readings to a hundred. */
    @Test
    void theValueReachesTheLimitExactlyIfTheShareBelowAllowsIt() {
        for (int n = 1; n <= 100; n++) {
            for (int below = 0; below <= n; below++) {
                String[] raw = new String[n];
                for (int i = 0; i < n; i++) {
                    raw[i] = i < below ? "59" : "60";
                }
                BigDecimal limit = new BigDecimal("60");
                assertThat(reduced(Reduction.ALL_BUT_FIFTH, raw).compareTo(limit) >= 0)
                        .as("%d of %d", below, n)
                        .isEqualTo(100 * below <= 20 * n);
                assertThat(reduced(Reduction.ALL_BUT_UNDER_FIFTH, raw).compareTo(limit) >= 0)
                        .as("%d of %d, strict", below, n)
                        .isEqualTo(below == 0 || 100 * below < 20 * n);
            }
        }
    }

    private static BigDecimal reduced(Reduction reduction, String... raw) {
        return ((Reduction.Result.Reduced) reduction.of(values(raw), ABOUT_ZERO)).value();
    }

    private static BigDecimal worst(Limits limits, String... raw) {
        return ((Reduction.Result.Reduced) Reduction.WORST.of(values(raw), limits)).value();
    }

    private static List<BigDecimal> values(String... raw) {
        return Stream.of(raw).map(BigDecimal::new).toList();
    }

    /** A coaxiality is a diameter (ISO 1101:2017): an axis 0.009 and 0.012 off lies 0.015 off, in a cylinder of 0.030. */
    @Test
    void aCoaxialityIsTwiceTheDistanceOfTheAxis() {
        assertThat(reduced(Reduction.COAXIAL, "0.009", "-0.012")).isEqualByComparingTo("0.030");
        assertThat(Reduction.COAXIAL.uncertainty(new BigDecimal("0.003"))).isEqualByComparingTo("0.006");
        assertThat(Reduction.COAXIAL.of(List.of(BigDecimal.ONE), new Limits(null, BigDecimal.ONE)))
                .isInstanceOf(Reduction.Result.NotReducible.class);
    }

    @Test
    void anAxisThatMayLieOnEitherSideMayLieOnItsDatum() {
        ReadingSpan span = ((org.trammel.calc.units.Answer.Determined<ReadingSpan>) ReadingSpan.over(
                        Reduction.COAXIAL,
                        List.of(new BigDecimal("-0.003"), new BigDecimal("0.004")),
                        List.of(new BigDecimal("0.001"), new BigDecimal("0.004")),
                        new Limits(null, new BigDecimal("0.03"))))
                .value();
        assertThat(span.least()).isEqualByComparingTo("0.008");
        assertThat(span.greatest()).isEqualByComparingTo("0.010");
    }
}
