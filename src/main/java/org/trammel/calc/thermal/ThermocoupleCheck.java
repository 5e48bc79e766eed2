package org.trammel.calc.thermal;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Looks for thermocouples that do not tell the temperature, by themselves and against their neighbours.
 *
 * <p>Open: no reading for longer than the longest gap. Stuck: not a thousandth changed for as long as is asked, while a
 * neighbour went by more than {@value #NEIGHBOUR_MOVED_K} K. Reversed: falling where its neighbours, or a load that was heated,
 * rose. Jumped: it went {@value #JUMP_K} K more than the middle of its neighbours within a minute, and not as fast before, as one
 * that has come off the load does. Alike: it reads the same as another in every row, as one that is wired twice does. All are common practice and
 * places to look, no verdicts.
 */
public final class ThermocoupleCheck {

    private static final double NEIGHBOUR_MOVED_K = 5;
    private static final double JUMP_K = 5;
    private static final long JUMP_MS = 60_000;
    private static final double HEATED_K = 30;
    private static final double BELOW_START_K = 15;
    private static final int ALIKE_ROWS = 20;

    private final Samples samples;
    private final int[] stuckFrom;
    private final int[] stuckUntil;
    private final List<Sign> signs = new ArrayList<>();

    private ThermocoupleCheck(Samples samples) {
        this.samples = samples;
        this.stuckFrom = new int[samples.channels().size()];
        this.stuckUntil = new int[samples.channels().size()];
    }

    /** What is wrong with it. */
    public enum Kind {
        OPEN,
        STUCK,
        REVERSED,
        JUMPED,
        ALIKE
    }

    /**
     * Something to look at.
     *
     * @param words one sentence
     */
    public record Sign(String channel, Kind kind, LoadTrace.Stretch when, String words) {}

    /**
     * Looks.
     *
     * @param longestGap without a reading
     * @param still how long a reading may stand still
     */
    public static List<Sign> of(Samples samples, Duration longestGap, Duration still) {
        ThermocoupleCheck check = new ThermocoupleCheck(samples);
        for (int channel = 0; channel < samples.channels().size(); channel++) {
            check.stuck(channel, still.toMillis());
        }
        for (int channel = 0; channel < samples.channels().size(); channel++) {
            check.open(channel, longestGap.toMillis());
            check.reversed(channel);
            check.jumped(channel, longestGap.toMillis());
            check.alike(channel);
        }
        return List.copyOf(check.signs);
    }

    private void add(int channel, Kind kind, int from, int until, String words) {
        signs.add(new Sign(
                samples.channels().get(channel),
                kind,
                new LoadTrace.Stretch(samples.at(from), samples.at(until)),
                samples.channels().get(channel) + words));
    }

    private void open(int channel, long longest_ms) {
        int rows = 0;
        int from = -1;
        int until = -1;
        for (int row = 0; row < samples.rows(); row++) {
            if (samples.has(channel, row)) {
                continue;
            }
            int end = row;
            while (end + 1 < samples.rows() && !samples.has(channel, end + 1)) {
                end++;
            }
            int edge = Math.min(end + 1, samples.rows() - 1);
            if (samples.time_ms(edge) - samples.time_ms(Math.max(0, row - 1)) > longest_ms) {
                from = from < 0 ? row : from;
                until = end;
                rows += end - row + 1;
            }
            row = end;
        }
        if (rows > 0) {
            add(channel, Kind.OPEN, from, until, " is open: it gives no reading in " + rows + " rows.");
        }
    }

    private void stuck(int channel, long still_ms) {
        int from = -1;
        for (int row = 0; row < samples.rows(); row++) {
            if (!samples.has(channel, row)) {
                continue;
            }
            if (from >= 0 && samples.reading_mDegC(channel, row) == samples.reading_mDegC(channel, from)) {
                if (samples.time_ms(row) - samples.time_ms(from) >= still_ms && lastAlike(channel, row)) {
                    double moved = neighbourMoved(channel, from, row);
                    if (moved > NEIGHBOUR_MOVED_K) {
                        stuckFrom[channel] = from;
                        stuckUntil[channel] = row;
                        add(
                                channel,
                                Kind.STUCK,
                                from,
                                row,
                                " is stuck: it stood at " + Said.degC(samples.degC(channel, row)) + " for "
                                        + Said.hours((samples.time_ms(row) - samples.time_ms(from)) / 3_600_000.0)
                                        + " while another went by " + Said.kelvins(moved) + ".");
                        return;
                    }
                }
            } else {
                from = row;
            }
        }
    }

    private boolean lastAlike(int channel, int row) {
        int next = row + 1;
        while (next < samples.rows() && !samples.has(channel, next)) {
            next++;
        }
        return next == samples.rows() || samples.reading_mDegC(channel, next) != samples.reading_mDegC(channel, row);
    }

    private double neighbourMoved(int channel, int from, int until) {
        double moved = 0;
        for (int other = 0; other < samples.channels().size(); other++) {
            int least = Integer.MAX_VALUE;
            int greatest = Integer.MIN_VALUE;
            for (int row = from; row <= until && other != channel; row++) {
                if (samples.has(other, row)) {
                    least = Math.min(least, samples.reading_mDegC(other, row));
                    greatest = Math.max(greatest, samples.reading_mDegC(other, row));
                }
            }
            moved = Math.max(moved, least > greatest ? 0 : (greatest - least) / 1000.0);
        }
        return moved;
    }

    /** Falls where the others rise; or, alone, far below where it began. */
    private void reversed(int channel) {
        int first = -1;
        int coldest = -1;
        for (int row = 0; row < samples.rows(); row++) {
            if (samples.has(channel, row)) {
                first = first < 0 ? row : first;
                coldest = coldest < 0 || samples.degC(channel, row) < samples.degC(channel, coldest) ? row : coldest;
            }
        }
        if (first < 0) {
            return;
        }
        double fell = samples.degC(channel, first) - samples.degC(channel, coldest);
        if (fell < BELOW_START_K) {
            return;
        }
        double others = Double.NEGATIVE_INFINITY;
        for (int other = 0; other < samples.channels().size(); other++) {
            if (other != channel && samples.has(other, first) && samples.has(other, coldest)) {
                others = Math.max(others, samples.degC(other, coldest) - samples.degC(other, first));
            }
        }
        boolean against = others > HEATED_K;
        boolean alone = samples.channels().size() == 1 && samples.degC(channel, coldest) < 0;
        if (against || alone) {
            add(
                    channel,
                    Kind.REVERSED,
                    first,
                    coldest,
                    " is reversed: it fell by " + Said.kelvins(fell)
                            + (against
                                    ? " while another rose by " + Said.kelvins(others) + "."
                                    : " to " + Said.degC(samples.degC(channel, coldest)) + " in an oven."));
        }
    }

    private void jumped(int channel, long longest_ms) {
        int others = samples.channels().size() - 1;
        if (others == 0) {
            return;
        }
        double[] moves = new double[others];
        int before = 0;
        int found = 0;
        int from = 0;
        int until = 0;
        String words = "";
        for (int row = 1; row < samples.rows(); row++) {
            while (before + 1 < row && samples.time_ms(row) - samples.time_ms(before + 1) >= JUMP_MS) {
                before++;
            }
            long span = samples.time_ms(row) - samples.time_ms(before);
            if (span > Math.max(JUMP_MS, longest_ms) || !samples.has(channel, row) || !samples.has(channel, before)) {
                continue;
            }
            int count = 0;
            for (int other = 0; other <= others; other++) {
                if (other != channel
                        && samples.has(other, row)
                        && samples.has(other, before)
                        && !stuck(other, before, row)) {
                    moves[count++] = samples.degC(other, row) - samples.degC(other, before);
                }
            }
            double own = samples.degC(channel, row) - samples.degC(channel, before);
            if (count > 0
                    && Math.abs(own - middle(moves, count)) > JUMP_K * Math.max(1, span / (double) JUMP_MS)
                    && Math.abs(own) > Math.abs(middle(moves, count))
                    && sudden(channel, before, row, own)) {
                if (found == 0) {
                    from = before;
                    until = row;
                    words = " jumped by " + Said.kelvins(own) + " within " + Said.figure(span / 1000.0, 0)
                            + " s, and the others by " + Said.kelvins(middle(moves, count));
                }
                found++;
                before = row;
            }
        }
        if (found > 0) {
            add(channel, Kind.JUMPED, from, until, words + (found == 1 ? "." : "; " + found + " such jumps in all."));
        }
    }

    /** One that stands still tells nothing of what its neighbours do. */
    private boolean stuck(int channel, int from, int until) {
        return until > stuckFrom[channel] && from < stuckUntil[channel];
    }

    /** Whether it did not move nearly as fast before: a cold load that warms in a hot oven does not jump. */
    private boolean sudden(int channel, int before, int row, double own) {
        long span = samples.time_ms(row) - samples.time_ms(before);
        int earlier = before;
        while (earlier > 0 && samples.time_ms(before) - samples.time_ms(earlier) < span) {
            earlier--;
        }
        long ago = samples.time_ms(before) - samples.time_ms(earlier);
        if (ago < span || !samples.has(channel, earlier)) {
            return false;
        }
        double moved = (samples.degC(channel, before) - samples.degC(channel, earlier)) * span / ago;
        return Math.signum(moved) != Math.signum(own) || Math.abs(own) - Math.abs(moved) > JUMP_K;
    }

    private static double middle(double[] moves, int count) {
        double[] sorted = Arrays.copyOf(moves, count);
        Arrays.sort(sorted);
        return (sorted[(count - 1) / 2] + sorted[count / 2]) / 2;
    }

    private void alike(int channel) {
        for (int other = 0; other < channel; other++) {
            int same = 0;
            boolean differs = false;
            for (int row = 0; row < samples.rows() && !differs; row++) {
                differs = samples.reading_mDegC(channel, row) != samples.reading_mDegC(other, row);
                same += samples.has(channel, row) ? 1 : 0;
            }
            if (!differs && same >= ALIKE_ROWS) {
                add(
                        channel,
                        Kind.ALIKE,
                        0,
                        samples.rows() - 1,
                        " reads the same as " + samples.channels().get(other) + " in all " + same
                                + " rows: one of them may be wired twice.");
                return;
            }
        }
    }
}
