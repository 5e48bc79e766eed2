package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.travellers.CharacteristicState;

/**
 * Verdicts at the deciding operation. Acceptance with a guard band g = 1.65 u on both sides of each limit is the
 * decision rule of ISO 14253-1 with the shop's own factor (from memory); the zones are worked out by hand beside each
 * row.
 */
class VerdictsTest extends AtTheTable {

    /** 0 ± 0.30, u 0.020: g 0.033, so conforming to 0.267, undecided to 0.333. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "0.267,   CONFORMING",
        "-0.267,  CONFORMING",
        "0.267001,UNDECIDED",
        "0.300,   UNDECIDED",
        "-0.300,  UNDECIDED",
        "0.333,   UNDECIDED",
        "0.333001,NOT_CONFORMING",
        "-0.333001,NOT_CONFORMING",
    })
    void theGuardBandLiesOnBothSidesOfTheLimitAndItsEdgesBelongToWhatIsNearerTheNominal(String value, Verdict verdict) {
        WholeShop.Frame frame = frame(wanted(Rule.GUARDED, Reduction.SINGLE, "once"));
        assertThat(read(worker, frame, gauge("0.020"), value).verdict()).isEqualTo(verdict);
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"0.30,CONFORMING", "-0.30,CONFORMING", "0.300001,NOT_CONFORMING", "-0.300001,NOT_CONFORMING"})
    void onThePlainRuleTheLimitItselfConforms(String value, Verdict verdict) {
        WholeShop.Frame frame = frame(wanted(Rule.PLAIN, Reduction.SINGLE, "once"));
        assertThat(read(worker, frame, gauge(null), value).verdict()).isEqualTo(verdict);
    }

    /** 0.3004 is shown as 0.30 with two decimals, which would conform. */
    @Test
    void whatIsShownIsRoundedAndWhatIsJudgedIsNot() {
        WholeShop.Frame frame = frame(wanted(Rule.PLAIN, Reduction.SINGLE, "once"));
        ReadingLine read = read(worker, frame, gauge(null), "0.3004");
        assertThat(read.verdict()).isEqualTo(Verdict.NOT_CONFORMING);
        assertThat(read.value()).isEqualByComparingTo("0.3004");
    }

    /** u 0.0207: 1.65 u is 0.034155, kept as 0.035; 0.30 less 0.035 is 0.265. */
    @Test
    void theGuardBandIsRoundedUpAndNeverDown() {
        WholeShop.Frame frame = frame(wanted(Rule.GUARDED, Reduction.SINGLE, "once"));
        assertThat(read(worker, frame, gauge("0.0207"), "0.2655").verdict()).isEqualTo(Verdict.UNDECIDED);
    }

    /** 0/+0.50 where it is not decided: a hair outside is passed on, what lies three tolerances off is not. */
    @ParameterizedTest(name = "{0} at a limit that is the nominal is {1}")
    @CsvSource({"-0.02,NOTED", "-0.2,NOTED", "-1.5,NOTED", "-1.51,NOT_CONFORMING", "1.5,NOTED", "1.6,NOT_CONFORMING"})
    void aLimitThatIsTheNominalHasATriageOfTheWholeTolerance(String value, Verdict verdict) {
        WholeShop.Frame frame = frame(passedOn(BigDecimal.ZERO, "0", "0.50"));
        assertThat(read(worker, frame, gauge("0.020"), value).verdict()).isEqualTo(verdict);
    }

    /** At most 0,3 off zero: by hand, 0,9 to the one side is as far off as 0,9 to the other. */
    @ParameterizedTest(name = "{0} and {1} are {2}")
    @CsvSource({
        "-0.9,0.1,NOT_CONFORMING",
        "0.9,0.1,NOT_CONFORMING",
        "0.1,-0.300001,NOT_CONFORMING",
        "-0.3,0.1,CONFORMING",
        "0.3,-0.3,CONFORMING"
    })
    void atMostSoFarOffIsAskedToEitherSide(String one, String other, Verdict verdict) {
        for (Reduction reduction : new Reduction[] {Reduction.GREATEST, Reduction.WORST}) {
            WholeShop.Frame frame = frame(atMost("0.3", Rule.PLAIN, reduction, "fore and aft", "up and down"));
            ReadingLine read =
                    readings.read(shop.act(worker), characteristic(frame), input(gauge(null), true, one, other));
            assertThat(read.verdict()).as(reduction.name()).isEqualTo(verdict);
            assertThat(read.value().signum()).isPositive();
            assertThat(read.raw()).containsExactly(new BigDecimal(one), new BigDecimal(other));
        }
    }

    private static CharacteristicSheet atMost(String upper, Rule rule, Reduction reduction, String... points) {
        CharacteristicSheet c = wanted(rule, reduction, points);
        return new CharacteristicSheet(
                c.code(),
                c.name(),
                c.unit(),
                c.decimals(),
                c.fromDesign(),
                BigDecimal.ZERO,
                null,
                new BigDecimal(upper),
                c.gaugeKind(),
                c.points(),
                c.reduction(),
                c.rule(),
                c.signers(),
                c.sided(),
                c.readBack(),
                c.secondPerson(),
                true,
                c.coldSetClock(),
                c.coldSetAttempts(),
                c.triageTolerances(),
                c.coldSetAmount(),
                c.source());
    }

    /** 33 to 39 without a nominal: the middle is 36, and three tolerances are nine. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"27,NOTED", "26.9,NOT_CONFORMING", "45,NOTED", "45.1,NOT_CONFORMING"})
    void withoutANominalTheMiddleOfTheLimitsStandsForIt(String value, Verdict verdict) {
        WholeShop.Frame frame = frame(passedOn(null, "33", "39"));
        assertThat(read(worker, frame, gauge("0.020"), value).verdict()).isEqualTo(verdict);
    }

    private static CharacteristicSheet passedOn(@Nullable BigDecimal nominal, String lower, String upper) {
        CharacteristicSheet c = wanted(Rule.GUARDED, Reduction.SINGLE, "once");
        return new CharacteristicSheet(
                c.code(),
                c.name(),
                c.unit(),
                c.decimals(),
                c.fromDesign(),
                nominal,
                new BigDecimal(lower),
                new BigDecimal(upper),
                c.gaugeKind(),
                c.points(),
                c.reduction(),
                c.rule(),
                c.signers(),
                c.sided(),
                c.readBack(),
                c.secondPerson(),
                false,
                c.coldSetClock(),
                c.coldSetAttempts(),
                c.triageTolerances(),
                c.coldSetAmount(),
                c.source());
    }

    /** u 0.060 of one reading, 0.0849 of a difference: 0.30 less 1.65 times that is 0.159, less 1.65 u would be 0.201. */
    @ParameterizedTest(name = "a span of {0} is {1}")
    @CsvSource({"0.159,CONFORMING", "0.160,UNDECIDED", "0.201,UNDECIDED"})
    void aSpanIsJudgedWithTheUncertaintyOfBothItsReadings(String span, Verdict verdict) {
        WholeShop.Frame frame = frame(wanted(Rule.GUARDED, Reduction.SPAN, "low", "high"));
        assertThat(read(
                                worker,
                                frame,
                                gauge("0.060"),
                                "0.1",
                                new BigDecimal("0.1").add(new BigDecimal(span)).toPlainString())
                        .verdict())
                .isEqualTo(verdict);
    }

    @Test
    void anUndecidedReadingClosesTheGateAndOpensNothingUntilABetterGaugeDecides() {
        WholeShop.Frame frame = frame(wanted(Rule.GUARDED, Reduction.SINGLE, "once"));
        read(worker, frame, gauge("0.020"), "0.280");
        assertThat(state(frame)).isEqualTo(CharacteristicState.UNDECIDED);
        assertThat(standsAt(frame)).isEqualTo("080");
        assertThat(shop.sheet(frame).holds()).isEmpty();
        assertThat(refusal(() -> read(second, frame, gauge("0.020"), "0.250")).why())
                .as("another reading with the same doubt decides nothing")
                .contains("undecided with an uncertainty of 0,02 °", "no smaller");
        read(second, frame, gauge("0.019"), "0.290");
        assertThat(standsAt(frame)).as("twice undecided is not conforming").isEqualTo("080");
        // u 0.005: g 0.00825, kept as 0.009; conforming to 0.291.
        read(worker, frame, gauge("0.005"), "0.280");
        assertThat(standsAt(frame)).isEqualTo("200");
    }

    @Test
    void aBetterGaugeMayAsWellFindItNotConforming() {
        WholeShop.Frame frame = frame(wanted(Rule.GUARDED, Reduction.SINGLE, "once"));
        read(worker, frame, gauge("0.020"), "0.320");
        assertThat(state(frame)).isEqualTo(CharacteristicState.UNDECIDED);
        read(worker, frame, gauge("0.005"), "0.320");
        assertThat(state(frame)).isEqualTo(CharacteristicState.NOT_CONFORMING);
        assertThat(shop.sheet(frame).holds())
                .singleElement()
                .satisfies(hold -> assertThat(hold.source()).startsWith("NC-"));
    }

    @Test
    void everyPointIsReadAndTheReductionJudges() {
        WholeShop.Frame frame = frame(wanted(Rule.PLAIN, Reduction.WORST, "low", "middle", "high"));
        String gauge = gauge(null);
        assertThat(refusal(() -> read(worker, frame, gauge, "0.1", "0.2")).why())
                .contains("low, middle, high", "2 came");
        assertThat(readingsOf(frame)).isZero();
        ReadingLine read = read(worker, frame, gauge, "0.1", "-0.31", "0.2");
        assertThat(read.raw()).extracting(Object::toString).containsExactly("0.1", "-0.31", "0.2");
        assertThat(read.value()).isEqualByComparingTo("-0.31");
        assertThat(read.verdict()).isEqualTo(Verdict.NOT_CONFORMING);
    }

    /** The mean of 0.30, 0.30 and 0.31 is 0.30333…, past 0.30 although it is shown as 0.30. */
    @Test
    void aMeanIsNotRoundedBeforeItIsJudged() {
        WholeShop.Frame frame = frame(wanted(Rule.PLAIN, Reduction.MEAN, "low", "middle", "high"));
        assertThat(read(worker, frame, gauge(null), "0.30", "0.30", "0.31").verdict())
                .isEqualTo(Verdict.NOT_CONFORMING);
    }

    @Test
    void aGaugeThatCannotDecideOnTheLimitsGivesNoVerdict() {
        WholeShop.Frame frame = frame(wanted(Rule.GUARDED, Reduction.SINGLE, "once"));
        String coarse = gauge("0.2");
        assertThat(refusal(() -> read(worker, frame, coarse, "0.0")).what()).contains("Gauge unfit");
        String aid = gauge(null);
        assertThat(refusal(() -> read(worker, frame, aid, "0.0")).what()).contains("Gauge unfit");
        assertThat(readingsOf(frame)).isZero();
    }
}
