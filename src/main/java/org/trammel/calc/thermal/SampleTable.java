package org.trammel.calc.thermal;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rows as they are read, kept in pieces so that nothing is copied while they grow; at the end put in order, without the ones
 * that are there twice.
 */
final class SampleTable {

    static final int MOST_ROWS = 1 << 23;
    static final int MOST_READINGS = 40_000_000;

    /** Two years of milliseconds leave room for the number of a row beside them in 64 bits. */
    private static final long MOST_MS = 366L * 86_400_000;

    private static final int PIECE_BITS = 14;
    private static final int PIECE = 1 << PIECE_BITS;

    private static final long[] GIVEN_AWAY = new long[0];
    private static final int[] NOTHING = new int[0];

    private final int channels;
    private final List<long[]> times = new ArrayList<>();
    private final List<int[]> lines = new ArrayList<>();
    private final List<int[][]> readings = new ArrayList<>();
    private int rows;
    private int duplicates;
    private int unordered;
    private int outside;

    SampleTable(int channels) {
        this.channels = channels;
    }

    int rows() {
        return rows;
    }

    int duplicates() {
        return duplicates;
    }

    int unordered() {
        return unordered;
    }

    int outside() {
        return outside;
    }

    void leftOut() {
        outside++;
    }

    void add(long time_ms, int[] row, long line) throws Unread {
        if (rows == MOST_ROWS || (long) (rows + 1) * channels > MOST_READINGS) {
            throw new Unread(
                    line,
                    "There are more than " + rows
                            + " rows before it, which is more than a run has: say from when to when" + " it went.");
        }
        int at = rows & PIECE - 1;
        if (at == 0) {
            times.add(new long[PIECE]);
            lines.add(new int[PIECE]);
            readings.add(new int[channels][PIECE]);
        }
        int piece = rows >> PIECE_BITS;
        times.get(piece)[at] = time_ms;
        lines.get(piece)[at] = (int) Math.min(Integer.MAX_VALUE, line);
        int[][] into = readings.get(piece);
        for (int channel = 0; channel < channels; channel++) {
            into[channel][at] = row[channel];
        }
        rows++;
    }

    /**
     * All rows as samples.
     *
     * @param wall whose clock the times are, or null if they are in UTC
     */
    Samples samples(List<String> names, @Nullable ZoneId wall, LogChoices choices) throws Unread {
        long[] at = new long[rows];
        for (int piece = 0, row = 0; row < rows; piece++, row += PIECE) {
            System.arraycopy(times.get(piece), 0, at, row, Math.min(PIECE, rows - row));
            times.set(piece, GIVEN_AWAY);
        }
        int[] line = new int[rows];
        for (int piece = 0, row = 0; row < rows; piece++, row += PIECE) {
            System.arraycopy(lines.get(piece), 0, line, row, Math.min(PIECE, rows - row));
        }
        lines.clear();
        if (wall != null && rows > 0) {
            WallClock.settle(wall, at, line);
        }
        if (asItStands(at, choices)) {
            return new Samples(names, at, columns(null));
        }
        int[] kept = withoutDuplicates(at, order(at, line), line, choices);
        if (kept.length == 0) {
            throw new Unread(0, none());
        }
        long[] ordered = new long[kept.length];
        for (int row = 0; row < kept.length; row++) {
            ordered[row] = at[kept[row]];
        }
        return new Samples(names, ordered, columns(kept));
    }

    /** Whether every row stays, in the order of the file: nothing is copied then that is not needed. */
    private boolean asItStands(long[] at, LogChoices choices) {
        boolean rises = rows > 0
                && at[rows - 1] - at[0] <= MOST_MS
                && (choices.from() == null || at[0] >= choices.from().toEpochMilli())
                && (choices.until() == null || at[rows - 1] <= choices.until().toEpochMilli());
        for (int row = 1; row < rows && rises; row++) {
            rises = at[row] > at[row - 1];
        }
        return rises;
    }

    /**
     * The readings by channel; the pieces are given up on the way.
     *
     * @param kept rows that stay, or null for all
     */
    private int[][] columns(int @Nullable [] kept) {
        int[][] columns = new int[channels][];
        for (int channel = 0; channel < channels; channel++) {
            columns[channel] = new int[kept == null ? rows : kept.length];
            for (int row = 0; row < columns[channel].length; row++) {
                columns[channel][row] = reading(channel, kept == null ? row : kept[row]);
            }
            for (int[][] piece : readings) {
                piece[channel] = NOTHING;
            }
        }
        readings.clear();
        return columns;
    }

    private String none() {
        return outside > 0
                ? "None of its " + outside + " rows lies in the time of the run: it is the record of another run."
                : "The file has names of columns and no row.";
    }

    private int reading(int channel, int row) {
        return readings.get(row >> PIECE_BITS)[channel][row & PIECE - 1];
    }

    /** Rows in order of time, those of one time in the order of the file. */
    private int[] order(long[] at, int[] line) throws Unread {
        int[] order = new int[rows];
        Arrays.setAll(order, row -> row);
        long least = Long.MAX_VALUE;
        long greatest = Long.MIN_VALUE;
        for (int row = 0; row < rows; row++) {
            if (Math.abs(at[row] - at[0]) > MOST_MS) {
                throw new Unread(line[row], "Its time lies more than a year from that of the first row.");
            }
            unordered += row > 0 && at[row] < greatest ? 1 : 0;
            least = Math.min(least, at[row]);
            greatest = Math.max(greatest, at[row]);
        }
        if (unordered == 0) {
            return order;
        }
        long[] keys = new long[rows];
        for (int row = 0; row < rows; row++) {
            keys[row] = at[row] - least << 23 | row;
        }
        Arrays.sort(keys);
        for (int row = 0; row < rows; row++) {
            order[row] = (int) (keys[row] & (1 << 23) - 1);
        }
        return order;
    }

    private int[] withoutDuplicates(long[] at, int[] order, int[] line, LogChoices choices) throws Unread {
        int kept = 0;
        long from = choices.from() == null ? Long.MIN_VALUE : choices.from().toEpochMilli();
        long until = choices.until() == null ? Long.MAX_VALUE : choices.until().toEpochMilli();
        for (int row : order) {
            if (at[row] < from || at[row] > until) {
                outside++;
                continue;
            }
            if (kept > 0 && at[order[kept - 1]] == at[row]) {
                if (!alike(order[kept - 1], row)) {
                    throw new Unread(
                            line[row], "It has the time of line " + line[order[kept - 1]] + " and other temperatures.");
                }
                duplicates++;
                continue;
            }
            order[kept++] = row;
        }
        return Arrays.copyOf(order, kept);
    }

    private boolean alike(int one, int two) {
        for (int channel = 0; channel < channels; channel++) {
            if (reading(channel, one) != reading(channel, two)) {
                return false;
            }
        }
        return true;
    }
}
