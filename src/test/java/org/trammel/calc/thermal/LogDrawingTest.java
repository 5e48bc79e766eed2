package org.trammel.calc.thermal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LogDrawingTest {

    private static final int ROWS = 50_000;

    private static Samples noisy(int peakAt) {
        Random random = new Random(3);
        long[] times = new long[ROWS];
        int[][] readings = new int[1][ROWS];
        for (int row = 0; row < ROWS; row++) {
            times[row] = 1000L * row + (row > 30_000 ? 600_000 : 0);
            readings[0][row] = row == peakAt ? 250_000 : row == 20_000 ? Samples.OPEN : 177_000 + random.nextInt(1000);
        }
        return Samples.of(List.of("TC-07"), times, readings);
    }

    @Test
    void fewPointsKeepEveryPeakEveryGapAndBothEnds() {
        Random random = new Random(4);
        for (int i = 0; i < 50; i++) {
            int peak = random.nextInt(19_000) + 500;
            Samples samples = noisy(peak);
            List<LogDrawing.Dot> dots = LogDrawing.of(samples, 0, samples.first(), samples.last(), 400, 120_000);
            assertThat(dots.size()).isLessThanOrEqualTo(4 * 403);
            assertThat(dots).anyMatch(dot -> dot.degC() == 250 && dot.time_ms() == 1000L * peak);
            assertThat(dots.get(0).time_ms()).isZero();
            assertThat(dots.get(dots.size() - 1).time_ms())
                    .isEqualTo(samples.last().toEpochMilli());
            // the first, the one behind the open thermocouple and the one behind the gap
            assertThat(dots.stream().filter(dot -> !dot.joined())).hasSize(3);
            for (int at = 1; at < dots.size(); at++) {
                assertThat(dots.get(at).time_ms())
                        .isGreaterThan(dots.get(at - 1).time_ms());
            }
        }
    }

    /** Least and greatest of every stretch, against a plain search. */
    @Test
    void everyStretchHasItsLeastAndGreatest() {
        Samples samples = noisy(-1);
        int columns = 97;
        List<LogDrawing.Dot> dots = LogDrawing.of(samples, 0, samples.first(), samples.last(), columns, 120_000);
        double width = samples.last().toEpochMilli() / (double) columns;
        for (int column = 0; column < columns; column++) {
            int least = Integer.MAX_VALUE;
            int greatest = Integer.MIN_VALUE;
            for (int row = 0; row < ROWS; row++) {
                if ((long) (samples.time_ms(row) / width) == column && samples.has(0, row)) {
                    least = Math.min(least, samples.reading_mDegC(0, row));
                    greatest = Math.max(greatest, samples.reading_mDegC(0, row));
                }
            }
            int here = column;
            if (least <= greatest) {
                double[] drawn = dots.stream()
                        .filter(dot -> (long) (dot.time_ms() / width) == here)
                        .mapToDouble(LogDrawing.Dot::degC)
                        .toArray();
                assertThat(drawn).contains(least / 1000.0, greatest / 1000.0);
            }
        }
    }

    @Test
    void aSpanWithoutRowsDrawsNothing() {
        Samples samples = noisy(-1);
        assertThat(LogDrawing.of(
                        samples,
                        0,
                        samples.last().plus(Duration.ofHours(1)),
                        samples.last().plus(Duration.ofHours(2)),
                        100,
                        120_000))
                .isEmpty();
    }
}
