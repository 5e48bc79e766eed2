package org.trammel.calc.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.calc.thermal.OvenRuns.value;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.units.Answer;

class EquivalentTimeTest {

    private static final Duration LONG = Duration.ofDays(1);

    static Samples line(double... minutesAndDegrees) {
        long[] times = new long[minutesAndDegrees.length / 2];
        int[][] readings = new int[1][times.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = Math.round(minutesAndDegrees[2 * i] * 60_000);
            readings[0][i] = (int) Math.round(minutesAndDegrees[2 * i + 1] * 1000);
        }
        return Samples.of(List.of("TC-07"), times, readings);
    }

    static LoadTrace trace(Samples samples) {
        return value(LoadTrace.of(
                samples,
                samples.channels().stream()
                        .map(name -> Thermocouple.of(name, ThermocoupleRole.LOAD))
                        .toList(),
                LONG));
    }

    private static double hours(Samples samples, double reference, double energy) {
        Activation activation = value(Activation.of(energy, energy, energy, "test"));
        return value(EquivalentTime.of(trace(samples), reference, activation))
                .coldest()
                .usual_h();
    }

    /** Rates relative to 177 °C by two activation energies; computed apart with R 8.314, four digits. */
    @ParameterizedTest
    @CsvSource({
        "100, 150, 0.1818", "100, 160, 0.3504", "100, 165, 0.4811", "100, 170, 0.6557", "100, 175, 0.8876",
                "100, 177, 1",
        "100, 180, 1.1935", "100, 185, 1.5945", "100, 190, 2.1169", "100, 200, 3.6648", "80, 150, 0.2557",
                "80, 160, 0.4322",
        "80, 170, 0.7135", "80, 180, 1.1520", "80, 190, 1.8220", "80, 200, 2.8265", "115, 165, 0.431",
                "115, 172, 0.708",
        "115, 182, 1.402", "115, 190, 2.369"
    })
    void theRateIsThatOfArrhenius(double energy, double degC, double factor) {
        assertThat(Activation.factor(degC, 177, energy)).isCloseTo(factor, within(6e-4));
    }

    /** 20 to 180 °C in an hour, eight hours there, down to 60 in an hour: exact integrals, computed apart, four decimals. */
    @ParameterizedTest
    @CsvSource({"58, 9.2873", "80, 9.5448", "100, 9.8249", "120, 10.1336"})
    void aTrapeziumIsIntegratedExactly(double energy, double exact) {
        assertThat(hours(line(0, 20, 60, 180, 540, 180, 600, 60), 177, energy)).isCloseTo(exact, within(1e-4));
    }

    /**
     * Mean kinetic temperature of 2, 2, 5, 8, 8, 8, 8 °C is 6.3 °C (6.2503 computed apart) with an activation energy of
     * 83.144 kJ/mol and R 8.3144, so that E/R is 10 000 K: USP 29, 1160; the example by Haynes 1971 as cited second-hand. The
     * steady temperature that is worth the same is found by halving.
     */
    @Test
    void theMeanKineticTemperatureOfAPublishedExampleComesOut() {
        double energy = 10_000 * Activation.R_J_PER_MOL_K / 1000;
        double[] days = {2, 2, 5, 8, 8, 8, 8};
        double mean = 0;
        for (double degC : days) {
            mean += Activation.factor(degC, 25, energy) / days.length;
        }
        double low = 2;
        double high = 8;
        while (high - low > 1e-9) {
            double middle = (low + high) / 2;
            if (Activation.factor(middle, 25, energy) < mean) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertThat(low).isCloseTo(6.2503, within(1e-4)).isCloseTo(6.3, within(0.05));
    }

    /** 1 h at 400 °F is called equal to 4 h and to 5 h at 350 °F: implied 89.1 and 103.5 kJ/mol, computed apart. */
    @ParameterizedTest
    @CsvSource({"89.1, 4", "103.5, 5"})
    void agesThatTheTradeCallsEqualAreWorthTheSame(double energy, double hours) {
        assertThat(Activation.factor(204.44, 176.67, energy)).isCloseTo(hours, within(0.01));
    }

    /** Worked: 24 h at 180 °C is 29.4 h at 177 and 226 h at 149; 20 min at 190, 200 and 160 as printed beside it. */
    @ParameterizedTest
    @CsvSource({
        "24, 180, 177, 29.4, 0.05",
        "24, 180, 149, 226, 0.5",
        "0.33333, 190, 177, 0.79, 0.005",
        "0.33333, 200, 149, 11.4, 0.05",
        "0.33333, 160, 149, 0.77, 0.005"
    })
    void bakesAreWorthWhatIsWorkedByHand(double hours, double degC, double reference, double worth, double within) {
        assertThat(OvenRuns.activation().equivalent(hours, degC, reference).usual_h())
                .isCloseTo(worth, within(within));
    }

    /** The twelve points of a record, far apart: 8.73 h by straight lines; rates of the points alone would give 8.80. */
    @Test
    void pointsFarApartAreJoinedByLinesFirst() {
        Samples points = line(
                0, 22, 15, 95, 30, 142, 45, 163, 60, 172, 75, 176, 90, 177, 300, 178, 480, 177, 555, 177, 570, 150, 600,
                90);
        assertThat(hours(points, 177, 115)).isCloseTo(8.73, within(0.005));
    }

    @ParameterizedTest
    @MethodSource("org.trammel.calc.thermal.OvenRuns#all")
    void theRecordsAreWorthWhatTheScriptSays(OvenRuns.Row row) {
        LoadTrace trace = value(LoadTrace.of(row.samples(), OvenRuns.thermocouples(), Duration.ofMinutes(2)));
        EquivalentTime time = value(EquivalentTime.of(trace, row.value("reference_degC"), OvenRuns.activation()));
        // the script has R 8.314 and steps of two seconds
        assertThat(time.coldest().usual_h()).isCloseTo(row.value("zero_h"), within(2e-3));
        assertThat(time.coldest().lowEnergy_h()).isCloseTo(row.value("zero_80_h"), within(2e-3));
        assertThat(time.coldest().highEnergy_h()).isCloseTo(row.value("zero_130_h"), within(2e-3));
        assertThat(time.hottest().usual_h()).isCloseTo(row.value("without_h"), within(2e-3));
    }

    /** Random records of three thermocouples, against sums of rates in steps of a tenth of a second. */
    @Test
    void randomRecordsAgreeWithASumOfTinySteps() {
        for (int seed = 0; seed < 60; seed++) {
            Samples samples = random(new Random(seed), 3, 12);
            LoadTrace trace = trace(samples);
            EquivalentTime time = value(EquivalentTime.of(trace, 177, OvenRuns.activation()));
            double coldest = 0;
            double hottest = 0;
            for (double second = 0.05; second < trace.length_s(); second += 0.1) {
                double low = Double.MAX_VALUE;
                double high = -Double.MAX_VALUE;
                for (int channel = 0; channel < 3; channel++) {
                    double degC = drawn(samples, channel, second);
                    low = Math.min(low, degC);
                    high = Math.max(high, degC);
                }
                coldest += Math.exp(115_000 / 8.314462618 * (1 / 450.15 - 1 / (low + 273.15))) * 0.1 / 3600;
                hottest += Math.exp(115_000 / 8.314462618 * (1 / 450.15 - 1 / (high + 273.15))) * 0.1 / 3600;
            }
            assertThat(time.coldest().usual_h()).as("seed %d", seed).isCloseTo(coldest, within(coldest * 1e-3 + 1e-9));
            assertThat(time.hottest().usual_h()).as("seed %d", seed).isCloseTo(hottest, within(hottest * 1e-3 + 1e-9));
        }
    }

    static Samples random(Random random, int channels, int rows) {
        long[] times = new long[rows];
        int[][] readings = new int[channels][rows];
        for (int row = 0; row < rows; row++) {
            times[row] = (row == 0 ? 0 : times[row - 1]) + 1000L * (20 + random.nextInt(300));
            for (int channel = 0; channel < channels; channel++) {
                readings[channel][row] = 160_000 + 100 * random.nextInt(300);
            }
        }
        return Samples.of(IntStream.range(0, channels).mapToObj(i -> "TC-" + i).toList(), times, readings);
    }

    static double drawn(Samples samples, int channel, double second) {
        int row = 0;
        while (row + 2 < samples.rows() && (samples.time_ms(row + 1) - samples.time_ms(0)) / 1000.0 < second) {
            row++;
        }
        double from = (samples.time_ms(row) - samples.time_ms(0)) / 1000.0;
        double until = (samples.time_ms(row + 1) - samples.time_ms(0)) / 1000.0;
        double share = (second - from) / (until - from);
        return samples.degC(channel, row) * (1 - share) + samples.degC(channel, row + 1) * share;
    }

    /** A hold at the reference is worth its time, halves add up, and more rows on the same lines change nothing. */
    @Test
    void sumsHold() {
        assertThat(hours(line(0, 177, 480, 177), 177, 115)).isCloseTo(8, within(1e-9));
        double whole = hours(line(0, 20, 100, 180, 300, 170), 177, 115);
        double halves = hours(line(0, 20, 100, 180), 177, 115) + hours(line(100, 180, 300, 170), 177, 115);
        assertThat(halves).isCloseTo(whole, within(1e-9));
        assertThat(hours(line(0, 20, 25, 60, 50, 100, 100, 180, 200, 175, 300, 170), 177, 115))
                .isCloseTo(whole, within(1e-6));
    }

    @Test
    void whatIsNoActivationEnergyIsRefusedInWords() {
        assertThat(refusal(Activation.of(115, 80, 130, " "))).contains("The activation energy has no source.");
        assertThat(refusal(Activation.of(115, 120, 130, "x")))
                .contains("does not lie between its low 120 and its high 130");
        assertThat(refusal(Activation.of(Double.NaN, 80, 130, "x"))).contains("no number");
        assertThat(refusal(Activation.of(115, 80, 1e308, "x"))).contains("more than 1000 kJ/mol");
        assertThat(refusal(EquivalentTime.of(trace(line(0, 1, 1, 2)), -300, OvenRuns.activation())))
                .contains("The reference temperature");
    }

    static String refusal(Answer<?> answer) {
        return ((Answer.NotDeterminable<?>) answer).gaps().get(0).words();
    }
}
