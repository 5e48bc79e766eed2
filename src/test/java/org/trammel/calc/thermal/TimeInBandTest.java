package org.trammel.calc.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.calc.thermal.OvenRuns.value;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TimeInBandTest {

    /** Worked by hand: in at 60 min; out where 177 to 150 in 15 min crosses 172, at 557.8; 8.30 h. */
    @Test
    void theRecordOfTwelvePointsLiesInItsBandAsLongAsIsWorkedByHand() {
        Samples points = EquivalentTimeTest.line(
                0, 22, 15, 95, 30, 142, 45, 163, 60, 172, 75, 176, 90, 177, 300, 178, 480, 177, 555, 177, 570, 150, 600,
                90);
        TimeInBand time = TimeInBand.of(EquivalentTimeTest.trace(points), 172, 182);
        assertThat(time.total_h())
                .isCloseTo((555 + 15 * 5 / 27.0 - 60) / 60, within(1e-9))
                .isCloseTo(8.30, within(0.005));
        assertThat(time.parts()).isEqualTo(1);
        assertThat(time.first().from()).isEqualTo(Instant.ofEpochSecond(3600));
    }

    @ParameterizedTest
    @MethodSource("org.trammel.calc.thermal.OvenRuns#all")
    void theRecordsLieInTheirBandAsTheScriptSays(OvenRuns.Row row) {
        LoadTrace trace = value(LoadTrace.of(row.samples(), OvenRuns.thermocouples(), Duration.ofMinutes(2)));
        double reference = row.value("reference_degC");
        assertThat(TimeInBand.of(trace, reference - 5, reference + 5).total_h())
                .isCloseTo(row.value("in_band_h"), within(1e-5));
    }

    /** Random records of one to four thermocouples, against counting tiny steps. */
    @Test
    void randomRecordsAgreeWithCounting() {
        for (int seed = 0; seed < 80; seed++) {
            Random random = new Random(seed);
            int channels = 1 + random.nextInt(4);
            Samples samples = EquivalentTimeTest.random(random, channels, 10);
            LoadTrace trace = EquivalentTimeTest.trace(samples);
            double low = 162 + random.nextInt(8);
            double high = low + 2 + random.nextInt(10);
            int inside = 0;
            int all = 0;
            for (double second = 0.025; second < trace.length_s(); second += 0.05, all++) {
                double coldest = Double.MAX_VALUE;
                for (int channel = 0; channel < channels; channel++) {
                    coldest = Math.min(coldest, EquivalentTimeTest.drawn(samples, channel, second));
                }
                inside += coldest >= low && coldest <= high ? 1 : 0;
            }
            TimeInBand time = TimeInBand.of(trace, low, high);
            assertThat(time.total_h() * 3600).as("seed %d", seed).isCloseTo(inside * 0.05, within(1.5));
            assertThat(all).isPositive();
            assertThat(time.longest_h()).isLessThanOrEqualTo(time.total_h() + 1e-12);
        }
    }

    @Test
    void limitsBelongToTheBandAndGapsAreToldApart() {
        Samples flat = EquivalentTimeTest.line(0, 172, 60, 172, 120, 172);
        TimeInBand time = TimeInBand.of(EquivalentTimeTest.trace(flat), 172, 182);
        assertThat(time.total_h()).isEqualTo(2);
        assertThat(time.inGaps_h()).isZero();
        LoadTrace strict = value(
                LoadTrace.of(flat, List.of(Thermocouple.of("TC-07", ThermocoupleRole.LOAD)), Duration.ofMinutes(59)));
        assertThat(TimeInBand.of(strict, 172, 182).inGaps_h()).isEqualTo(2);
        assertThat(TimeInBand.of(strict, 160, 172).total_h()).isEqualTo(2);
        assertThat(TimeInBand.of(strict, 172.001, 182).parts()).isZero();
        assertThat(strict.gaps(10)).hasSize(1);
    }

    @Test
    void aThermocoupleThatIsMissingForLongIsAGapAndItsEndsAreNotDrawnOn() {
        int open = Samples.OPEN;
        Samples samples = Samples.of(
                List.of("A", "B"), new long[] {0, 60_000, 120_000, 180_000, 240_000, 300_000, 360_000}, new int[][] {
                    {100_000, 100_000, 100_000, 100_000, 100_000, 100_000, 100_000},
                    {open, 90_000, open, open, 96_000, 97_000, open}
                });
        List<Thermocouple> both =
                List.of(Thermocouple.of("A", ThermocoupleRole.LOAD), Thermocouple.of("B", ThermocoupleRole.LOAD));
        LoadTrace trace = value(LoadTrace.of(samples, both, Duration.ofMinutes(2)));
        assertThat(trace.from()).isEqualTo(Instant.ofEpochSecond(60));
        assertThat(trace.until()).isEqualTo(Instant.ofEpochSecond(300));
        assertThat(trace.coldest_degC(1, 0)).isCloseTo(92, within(1e-12));
        assertThat(TimeInBand.of(trace, 0, 200).inGaps_h()).isCloseTo(3 / 60.0, within(1e-12));
        assertThat(value(LoadTrace.of(samples, both, Duration.ofMinutes(3))).gaps(9))
                .isEmpty();
        assertThat(EquivalentTimeTest.refusal(LoadTrace.of(
                        samples, List.of(Thermocouple.of("C", ThermocoupleRole.LOAD)), Duration.ofMinutes(2))))
                .isEqualTo("The record has no C: it has A, B.");
        assertThat(EquivalentTimeTest.refusal(LoadTrace.of(
                        samples, List.of(Thermocouple.of("A", ThermocoupleRole.CONTROL)), Duration.ofMinutes(2))))
                .isEqualTo("No thermocouple told the temperature of the load.");
    }

    /** Errors found at 100 and 200 °C: drawn straight between, kept beyond. */
    @Test
    void errorsThatWereFoundAreTakenOff() {
        Thermocouple found = new Thermocouple(
                "A",
                ThermocoupleRole.LOAD,
                List.of(new Thermocouple.ErrorPoint(100, 1), new Thermocouple.ErrorPoint(200, 3)));
        assertThat(found.corrected_degC(150)).isCloseTo(148, within(1e-12));
        assertThat(found.corrected_degC(50)).isEqualTo(49);
        assertThat(found.corrected_degC(250)).isEqualTo(247);
        assertThat(found.alsoHighBy(2).corrected_degC(150)).isCloseTo(146, within(1e-12));
    }
}
