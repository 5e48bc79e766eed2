package org.trammel.calc.thermal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.function.IntUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Two sound thermocouples and one that is spoiled in a known way, a reading a minute over ten hours. */
class ThermocoupleCheckTest {

    private static final int ROWS = 600;

    private static int sound(int minute) {
        int degC_tenths =
                minute < 60 ? 220 + minute * 25 : minute < 540 ? 1720 + minute % 7 : 1720 - (minute - 540) * 20;
        return 100 * degC_tenths;
    }

    private static Samples samples(IntUnaryOperator third) {
        long[] times = new long[ROWS];
        int[][] readings = new int[3][ROWS];
        for (int row = 0; row < ROWS; row++) {
            times[row] = 60_000L * row;
            readings[0][row] = sound(row);
            readings[1][row] = sound(row) + 1500 + 100 * (row % 3);
            readings[2][row] = third.applyAsInt(row);
        }
        return Samples.of(List.of("TC-05", "TC-07", "TC-08"), times, readings);
    }

    private static List<ThermocoupleCheck.Sign> signs(Samples samples) {
        return ThermocoupleCheck.of(samples, Duration.ofMinutes(2), Duration.ofMinutes(30));
    }

    private static ThermocoupleCheck.Sign only(IntUnaryOperator third) {
        List<ThermocoupleCheck.Sign> signs = signs(samples(third));
        assertThat(signs).extracting(ThermocoupleCheck.Sign::channel).containsOnly("TC-08");
        return signs.get(0);
    }

    @Test
    void soundThermocouplesAreLeftAlone() {
        assertThat(signs(samples(row -> sound(row) + 700 - 100 * (row % 5)))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("org.trammel.calc.thermal.OvenRuns#all")
    void theRecordsAreLeftAlone(OvenRuns.Row row) {
        assertThat(signs(row.samples())).isEmpty();
    }

    @Test
    void anOpenOneIsFound() {
        ThermocoupleCheck.Sign sign = only(row -> row >= 200 && row < 260 ? Samples.OPEN : sound(row) + 700);
        assertThat(sign.kind()).isEqualTo(ThermocoupleCheck.Kind.OPEN);
        assertThat(sign.words()).isEqualTo("TC-08 is open: it gives no reading in 60 rows.");
        assertThat(sign.when().from().getEpochSecond()).isEqualTo(200 * 60);
    }

    @Test
    void aStuckOneIsFoundByItsNeighboursOnly() {
        ThermocoupleCheck.Sign sign = only(row -> row > 20 && row < 90 ? sound(20) : sound(row) + 700);
        assertThat(sign.kind()).isEqualTo(ThermocoupleCheck.Kind.STUCK);
        assertThat(sign.words()).startsWith("TC-08 is stuck: it stood at 72 °C for");
        // an hour without change on a plateau is none
        assertThat(signs(samples(row -> row > 100 && row < 160 ? 172_400 : sound(row) + 700)))
                .isEmpty();
    }

    @Test
    void aReversedOneFallsWhileTheOthersRise() {
        ThermocoupleCheck.Sign sign = only(row -> 44_000 - sound(row));
        assertThat(sign.kind()).isEqualTo(ThermocoupleCheck.Kind.REVERSED);
        assertThat(sign.words()).startsWith("TC-08 is reversed: it fell by 150.6 K while another rose by 15");
        Samples alone =
                Samples.of(List.of("TC-08"), new long[] {0, 60_000, 120_000}, new int[][] {{22_000, -10_000, -80_000}});
        assertThat(signs(alone))
                .singleElement()
                .satisfies(found -> assertThat(found.words())
                        .isEqualTo("TC-08 is reversed: it fell by 102 K to −80 °C in an oven."));
    }

    @Test
    void oneThatComesOffTheLoadJumps() {
        ThermocoupleCheck.Sign sign = only(row -> sound(row) + (row < 300 ? -5000 : 4000) + 100 * (row % 4));
        assertThat(sign.kind()).isEqualTo(ThermocoupleCheck.Kind.JUMPED);
        assertThat(sign.words()).contains("jumped by").contains("within 60 s");
        assertThat(sign.when().until().getEpochSecond()).isEqualTo(300 * 60);
    }

    /** Into an oven at 177 °C, with a time constant of five minutes, which is common for thin tubes (from memory). */
    @Test
    void aColdLoadInAHotOvenWarmsAndDoesNotJump() {
        long[] times = new long[120];
        int[][] readings = new int[2][times.length];
        for (int row = 0; row < times.length; row++) {
            times[row] = 15_000L * row;
            readings[0][row] = 177_000 + 100 * (row % 3);
            readings[1][row] = (int) Math.round((177 - 155 * Math.exp(-row / 20.0)) * 10) * 100;
        }
        assertThat(signs(Samples.of(List.of("TC-05", "TC-08"), times, readings)))
                .isEmpty();
    }

    @Test
    void twoThatReadTheSameAreFound() {
        ThermocoupleCheck.Sign sign = only(ThermocoupleCheckTest::sound);
        assertThat(sign.kind()).isEqualTo(ThermocoupleCheck.Kind.ALIKE);
        assertThat(sign.words()).startsWith("TC-08 reads the same as TC-05 in all 600 rows");
    }

    /** A bake of an hour: the control rises by 8 K a minute, and what reads the load stands at 22 °C for 36 rows. */
    @Test
    void inAShortBakeTheStuckOneIsNamedAndNotTheOneThatMoves() {
        long[] times = new long[60];
        int[][] readings = new int[2][60];
        for (int row = 0; row < 60; row++) {
            times[row] = 30_000L * row;
            readings[0][row] = 22_000 + 4000 * Math.min(row, 35);
            readings[1][row] = 22_000 + 50 * Math.max(0, row - 35);
        }
        assertThat(ThermocoupleCheck.of(
                        Samples.of(List.of("TC-21", "TC-22"), times, readings),
                        Duration.ofMinutes(2),
                        Duration.ofMinutes(10)))
                .extracting(sign -> sign.channel() + " " + sign.kind())
                .containsExactly("TC-22 STUCK");
    }

    @Test
    void manyJumpsAreOneSign() {
        List<ThermocoupleCheck.Sign> signs =
                signs(samples(row -> sound(row) + (row > 100 && row < 160 && row / 5 % 2 == 0 ? 9000 : 0)));
        assertThat(signs)
                .filteredOn(sign -> sign.kind() == ThermocoupleCheck.Kind.JUMPED)
                .singleElement()
                .satisfies(sign -> assertThat(sign.words()).endsWith("such jumps in all."));
    }
}
