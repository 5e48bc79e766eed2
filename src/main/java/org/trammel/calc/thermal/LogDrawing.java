package org.trammel.calc.thermal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * A channel of a log in as few points as a drawing has columns. In each stretch of time the first, least, greatest and last
 * reading are kept in the order they came, so that no peak and no gap is lost however many rows there are.
 */
public final class LogDrawing {

    private LogDrawing() {}

    /**
     * A point of the drawing.
     *
     * @param joined whether a line leads to it from the point before; not over a gap or an open thermocouple
     */
    public record Dot(long time_ms, double degC, boolean joined) {}

    /**
     * Thins out a channel.
     *
     * @param columns stretches of even length that the time is cut into, at least 1; 4 points a stretch at most
     * @param longestGap_ms between two readings, beyond which no line joins them
     */
    public static List<Dot> of(
            Samples samples, int channel, Instant from, Instant until, int columns, long longestGap_ms) {
        List<Dot> dots = new ArrayList<>();
        long begin = from.toEpochMilli();
        double width = Math.max(1, (until.toEpochMilli() - begin) / (double) Math.max(1, columns));
        int first = -1;
        int least = -1;
        int greatest = -1;
        int last = -1;
        int before = -1;
        long column = Long.MIN_VALUE;
        boolean broken = true;
        boolean brokenHere = true;
        for (int row = 0; row < samples.rows(); row++) {
            long time = samples.time_ms(row);
            if (time < begin || time > until.toEpochMilli()) {
                continue;
            }
            if (!samples.has(channel, row)) {
                broken = true;
                continue;
            }
            broken |= before < 0 || time - samples.time_ms(before) > longestGap_ms;
            long here = (long) ((time - begin) / width);
            if (broken || here != column) {
                keep(dots, samples, channel, brokenHere, first, least, greatest, last);
                column = here;
                first = least = greatest = row;
                brokenHere = broken;
                broken = false;
            }
            last = row;
            before = row;
            least = samples.reading_mDegC(channel, row) < samples.reading_mDegC(channel, least) ? row : least;
            greatest = samples.reading_mDegC(channel, row) > samples.reading_mDegC(channel, greatest) ? row : greatest;
        }
        keep(dots, samples, channel, brokenHere, first, least, greatest, last);
        return dots;
    }

    private static void keep(
            List<Dot> dots,
            Samples samples,
            int channel,
            boolean broken,
            int first,
            int least,
            int greatest,
            int last) {
        if (first < 0) {
            return;
        }
        int before = -1;
        for (int row : new int[] {first, Math.min(least, greatest), Math.max(least, greatest), last}) {
            if (row > before) {
                dots.add(new Dot(samples.time_ms(row), samples.degC(channel, row), before >= 0 || !broken));
                before = row;
            }
        }
    }
}
