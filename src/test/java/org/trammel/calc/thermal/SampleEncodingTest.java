package org.trammel.calc.thermal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.trammel.calc.units.Answer;

class SampleEncodingTest {

    private static Samples decoded(byte[] bytes) {
        return ((Answer.Determined<Samples>) SampleEncoding.decode(bytes)).value();
    }

    @Test
    void samplesComeBackAsTheyWere() {
        for (int seed = 0; seed < 300; seed++) {
            Samples samples = new RandomLogs(seed).meant();
            assertThat(decoded(SampleEncoding.encode(samples))).isEqualTo(samples);
        }
        Random random = new Random(1);
        int[][] wild = new int[2][500];
        long[] times = new long[500];
        for (int row = 0; row < 500; row++) {
            times[row] = (row == 0 ? -5_000_000_000L : times[row - 1]) + 1 + random.nextInt(1_000_000_000);
            wild[0][row] = random.nextInt();
            wild[1][row] = random.nextBoolean() ? Samples.OPEN : Integer.MAX_VALUE;
        }
        Samples samples = Samples.of(List.of("åäö", "b"), times, wild);
        assertThat(decoded(SampleEncoding.encode(samples))).isEqualTo(samples);
    }

    /** A reading to a tenth each second that drifts slowly: a byte of time and one for the change of each reading. */
    @Test
    void aSteadyRecordTakesAByteAReading() {
        int rows = 100_000;
        long[] times = new long[rows];
        int[][] readings = new int[2][rows];
        Random random = new Random(2);
        for (int row = 0; row < rows; row++) {
            times[row] = 1_773_162_000_000L + 1000L * row;
            readings[0][row] = 177_000 + 100 * (random.nextInt(7) - 3);
            readings[1][row] = 176_000 + 100 * (random.nextInt(7) - 3);
        }
        Samples samples = Samples.of(List.of("TC-07", "TC-08"), times, readings);
        byte[] bytes = SampleEncoding.encode(samples);
        assertThat(bytes.length).isLessThan(3 * rows + 100);
        assertThat(decoded(bytes)).isEqualTo(samples);
    }

    @Test
    void bytesThatWereChangedOrCutAreRefused() {
        byte[] bytes = SampleEncoding.encode(new RandomLogs(7).meant());
        for (int at = 0; at < bytes.length; at++) {
            byte[] changed = bytes.clone();
            changed[at] ^= 1;
            assertThat(SampleEncoding.decode(changed)).isInstanceOf(Answer.NotDeterminable.class);
            assertThat(SampleEncoding.decode(Arrays.copyOf(bytes, at))).isInstanceOf(Answer.NotDeterminable.class);
        }
    }
}
