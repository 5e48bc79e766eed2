package org.trammel.calc.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.calc.thermal.OvenRuns.value;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.units.DecimalSign;

class RunVerdictTest {

    private static final List<Thermocouple> ONE = List.of(Thermocouple.of("TC-07", ThermocoupleRole.LOAD));
    private static final RunRules WHOLE = RunRules.usual().withGap(Duration.ofDays(1));

    private static OvenProgramme programme(OvenStep... steps) {
        return value(OvenProgramme.of(List.of(steps), null, null));
    }

    private static RunVerdict judged(Samples samples, OvenProgramme programme, RunRules rules) {
        return value(RunVerdict.of(samples, ONE, programme, rules));
    }

    /** The record with its gap of four minutes and a row that is there twice: 8.30 h in band, 0.07 h of it in the gap. */
    @Test
    void theRecordOfAnAgeIsReadAndJudged() {
        ReadLog log = OvenRuns.read("HT-0226");
        assertThat(log.how().duplicates()).isEqualTo(1);
        assertThat(log.how().decimalSign()).isEqualTo(DecimalSign.COMMA);
        OvenProgramme programme = value(OvenProgramme.of(
                List.of(OvenStep.of(177, 5, 8).withSpread(6)),
                200.0,
                new OvenProgramme.Worth(177, OvenRuns.activation(), 8.0, 12.0)));
        RunVerdict verdict = value(RunVerdict.of(log.samples(), OvenRuns.thermocouples(), programme, RunRules.usual()));
        assertThat(verdict.judged()).isEqualTo(Judged.CONFORMING);
        StepResult step = verdict.steps().get(0);
        assertThat(step.soak().total_h()).isCloseTo(8.30, within(0.005));
        assertThat(step.soak().inGaps_h()).isCloseTo(4 / 60.0, within(1e-9));
        assertThat(step.spread_K()).isBetween(2.5, 2.7);
        assertThat(verdict.worth().coldest().usual_h()).isCloseTo(8.73, within(0.005));
        assertThat(verdict.gaps()).hasSize(1);
        assertThat(verdict.gaps().get(0).from()).isEqualTo(Instant.parse("2026-03-10T20:20:00Z"));
        assertThat(step.findings().get(0).words())
                .isEqualTo("The coldest load thermocouple lay in 172 to 182 °C for 8.3 h, 0.07 h of it in gaps of the"
                        + " record; at least 8 h are asked for.");
        assertThat(verdict.findings().get(0).words())
                .isEqualTo("TC-08 came to 180.6 °C, and 200 °C must not be reached.");
    }

    @Test
    void twoStepsAreToldApartAndTheWayBackDoesNotCount() {
        OvenRuns.Row row = OvenRuns.all().get(2);
        OvenProgramme programme =
                programme(OvenStep.of(107, 5, 8), OvenStep.of(149, 5, 16).withRise(25));
        RunVerdict verdict = value(RunVerdict.of(row.samples(), OvenRuns.thermocouples(), programme, RunRules.usual()));
        assertThat(verdict.judged()).isEqualTo(Judged.CONFORMING);
        // 40 K in 110 min is 21.8 K/h; cooling through the first band at the end is not counted to it
        assertThat(verdict.steps().get(1).rise_KPerH()).isCloseTo(21.8, within(1.5));
        assertThat(verdict.steps().get(0).soak().parts()).isEqualTo(1);
        assertThat(verdict.steps().get(1).soak().total_h()).isCloseTo(row.value("in_band_h"), within(1e-5));
    }

    /** Six hours at 177 °C, an hour at 120 °C without power, three more hours: nine in two parts, six the longest. */
    @Test
    void aPowerCutBreaksASoakInTwo() {
        Samples cut =
                EquivalentTimeTest.line(0, 20, 60, 177, 420, 177, 430, 120, 480, 120, 490, 177, 670, 177, 700, 20);
        RunVerdict added = judged(cut, programme(OvenStep.of(177, 5, 8)), WHOLE);
        assertThat(added.judged()).isEqualTo(Judged.CONFORMING);
        assertThat(added.steps().get(0).soak().parts()).isEqualTo(2);
        OvenStep unbroken = new OvenStep(177, 5, 5, 8, null, true, null, null, null);
        RunVerdict one = judged(cut, programme(unbroken), WHOLE);
        assertThat(one.judged()).isEqualTo(Judged.NOT_CONFORMING);
        assertThat(one.steps().get(0).findings().get(0).words())
                .matches(
                        "The coldest .* for 9\\.0\\d h in 2 parts, the longest 6\\.0\\d h; at least 8 h in one part are asked for\\.");
    }

    @Test
    void aRunThatNeverGetsThereSaysHowFarItCame() {
        RunVerdict verdict =
                judged(EquivalentTimeTest.line(0, 20, 60, 165.3, 600, 164), programme(OvenStep.of(177, 5, 8)), WHOLE);
        assertThat(verdict.judged()).isEqualTo(Judged.NOT_CONFORMING);
        assertThat(verdict.steps().get(0).findings().get(0).words())
                .isEqualTo("The coldest load thermocouple never lay in 172 to 182 °C; it came to 165.3 °C.");
    }

    /** Eight hours of soak in all, four of them only by a line over a gap: neither shown nor refuted. */
    @Test
    void aSoakThatHangsOnAGapIsUndecided() {
        Samples samples = EquivalentTimeTest.line(0, 177, 1, 177, 241, 177, 242, 177, 480, 177);
        RunRules rules = RunRules.usual().withGap(Duration.ofMinutes(239));
        assertThat(soak(samples, 8, rules)).isEqualTo(Judged.UNDECIDED);
        assertThat(soak(samples, 3, rules)).isEqualTo(Judged.CONFORMING);
        assertThat(soak(samples, 8.01, rules)).isEqualTo(Judged.NOT_CONFORMING);
    }

    private static Judged soak(Samples samples, double least_h, RunRules rules) {
        return judged(samples, programme(OvenStep.of(177, 5, least_h)), rules)
                .steps()
                .get(0)
                .findings()
                .get(0)
                .judged();
    }

    /** Recorded but for one gap, at 177 °C throughout: whether it went higher in the gap is known of a short one only. */
    @ParameterizedTest
    @CsvSource({"14, 177, CONFORMING", "16, 177, UNDECIDED", "60, 177, UNDECIDED", "60, 190, NOT_CONFORMING"})
    void whatALongGapMayHideIsNotTakenForALimitKept(int gap_min, double end_degC, Judged judged) {
        double[] line = IntStream.rangeClosed(0, 400)
                .mapToObj(i -> 2 * i)
                .filter(minute -> minute <= 300 || minute >= 300 + gap_min)
                .flatMapToDouble(minute -> DoubleStream.of(minute, minute == 800 ? end_degC : 177))
                .toArray();
        OvenProgramme never = value(OvenProgramme.of(List.of(OvenStep.of(177, 5, 4)), 200.0, null));
        RunRules rules = RunRules.usual().withGap(Duration.ofMinutes(2));
        RunVerdict verdict = judged(EquivalentTimeTest.line(line), never, rules);
        assertThat(verdict.steps().get(0).findings().get(1).judged()).isEqualTo(judged);
        assertThat(verdict.findings().get(0).judged()).isEqualTo(gap_min > 15 ? Judged.UNDECIDED : Judged.CONFORMING);
        if (judged == Judged.UNDECIDED) {
            assertThat(verdict.findings().get(0).words()).contains("nothing was recorded");
        }
    }

    @ParameterizedTest
    @CsvSource({"5, 8, CONFORMING", "2, 8, NOT_CONFORMING", "3, 8, CONFORMING", "5, 8.2, NOT_CONFORMING"})
    void overshootAndSoakKeepTheirLimits(double overshoot, double soak, Judged judged) {
        Samples samples = EquivalentTimeTest.line(0, 177, 60, 180, 120, 177, 480, 177);
        assertThat(judged(samples, programme(OvenStep.of(177, 5, soak).withOvershoot(overshoot)), WHOLE)
                        .judged())
                .isEqualTo(judged);
    }

    /** The survey's coldest place lies 3 K below the thermocouple: a steady 174 °C is 171 °C there, below the band. */
    @Test
    void theColdestPlaceOfTheSurveyDecides() {
        Samples samples = EquivalentTimeTest.line(0, 174, 480, 174);
        assertThat(judged(samples, programme(OvenStep.of(177, 5, 8)), WHOLE).judged())
                .isEqualTo(Judged.CONFORMING);
        RunVerdict surveyed = judged(samples, programme(OvenStep.of(177, 5, 8)), WHOLE.surveyed(-3, 2));
        assertThat(surveyed.judged()).isEqualTo(Judged.NOT_CONFORMING);
        assertThat(surveyed.steps().get(0).findings().get(0).words()).endsWith("it came to 171 °C.");
        Samples hot = EquivalentTimeTest.line(0, 181, 480, 181);
        assertThat(judged(hot, programme(OvenStep.of(177, 5, 8)), WHOLE.surveyed(-3, 2))
                        .judged())
                .isEqualTo(Judged.NOT_CONFORMING);
    }

    @Test
    void aRecordOfAnotherRunOrOfPartOfItIsSeen() {
        Samples samples = EquivalentTimeTest.line(0, 177, 480, 177);
        OvenProgramme programme = programme(OvenStep.of(177, 5, 8));
        Instant day = Instant.EPOCH.plus(Duration.ofDays(1));
        RunVerdict other = judged(samples, programme, WHOLE.between(day, day.plusSeconds(3600)));
        assertThat(other.findings().get(0).words()).contains("it is that of another run");
        assertThat(other.judged()).isEqualTo(Judged.NOT_CONFORMING);
        RunVerdict part = judged(
                samples,
                programme,
                WHOLE.between(Instant.EPOCH.minusSeconds(3600), Instant.EPOCH.plus(Duration.ofHours(9))));
        assertThat(part.findings().get(0).words())
                .isEqualTo(
                        "The record begins 60 min behind the begin of the run and ends 60 min before its end; what is not"
                                + " recorded does not count.");
    }

    /** Nine hours at temperature are recorded, seven of them while the run ran; at 177 °C an hour is worth an hour. */
    @Test
    void heatBeforeAndBehindTheRunCountsForNothing() {
        Samples samples = EquivalentTimeTest.line(0, 177, 540, 177);
        OvenProgramme asked = value(OvenProgramme.of(
                List.of(OvenStep.of(177, 5, 8)), null, new OvenProgramme.Worth(177, OvenRuns.activation(), 8.0, null)));
        assertThat(judged(samples, asked, WHOLE).judged()).isEqualTo(Judged.CONFORMING);
        RunVerdict run = judged(
                samples, asked, WHOLE.between(Instant.EPOCH.plusSeconds(3600), Instant.EPOCH.plusSeconds(8 * 3600)));
        assertThat(run.judged()).isEqualTo(Judged.NOT_CONFORMING);
        assertThat(run.steps().get(0).soak().total_h()).isCloseTo(7, within(1e-9));
        assertThat(run.worth().coldest().usual_h()).isCloseTo(7, within(1e-9));
        RunVerdict none = judged(samples, asked, WHOLE.between(Instant.EPOCH, Instant.EPOCH));
        assertThat(none.judged()).isEqualTo(Judged.NOT_CONFORMING);
        assertThat(none.findings().get(0).words()).contains("another run");
    }

    /** 8.73 h usual, 8.72 to 8.79 by the energies held possible: limits among them are undecided. */
    @ParameterizedTest
    @CsvSource({"8.70, CONFORMING", "8.725, UNDECIDED", "8.74, NOT_CONFORMING"})
    void aWorthThatHangsOnTheActivationEnergyIsUndecided(double least, Judged judged) {
        OvenProgramme programme = value(OvenProgramme.of(
                List.of(OvenStep.of(177, 5, 8)),
                null,
                new OvenProgramme.Worth(177, OvenRuns.activation(), least, null)));
        // the record without gap
        RunVerdict verdict = value(RunVerdict.of(
                OvenRuns.read("HT-0223").samples(), OvenRuns.thermocouples(), programme, RunRules.usual()));
        assertThat(verdict.findings().get(0).judged()).isEqualTo(judged);
    }

    @Test
    void aProgrammeThatDoesNotHoldTogetherIsRefused() {
        assertThat(EquivalentTimeTest.refusal(OvenProgramme.of(List.of(), null, null)))
                .isEqualTo("The programme has no step.");
        assertThat(EquivalentTimeTest.refusal(
                        OvenProgramme.of(List.of(OvenStep.of(107, 5, 8), OvenStep.of(117, 5, 8)), null, null)))
                .contains("102 to 112 °C, and of step 2, 112 to 122 °C, touch");
        assertThat(EquivalentTimeTest.refusal(OvenProgramme.of(List.of(OvenStep.of(177, 5, 8)), 180.0, null)))
                .contains("lies in the band of 172 to 182 °C or below it");
        assertThat(EquivalentTimeTest.refusal(OvenProgramme.of(List.of(OvenStep.of(Double.NaN, 5, 8)), null, null)))
                .startsWith("The set temperature of step 1, no number");
        assertThat(EquivalentTimeTest.refusal(OvenProgramme.of(List.of(OvenStep.of(177, 5, 0)), null, null)))
                .startsWith("The soak of step 1, 0 h, is not above 0.");
    }
}
