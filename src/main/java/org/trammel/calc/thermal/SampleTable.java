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

    private static final int ROW_BITS = 23;

    static final int MOST_ROWS = 1 << ROW_BITS;
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
        if (wall != null && rows > 0) {
            WallClock.settle(wall, at, this::line);
        }
        if (asItStands(at, choices)) {
            lines.clear();
            return new Samples(names, at, columns(null, rows));
        }
        // Out of order, a time and the number of its row share one number: nothing is kept beside it.
        long least = ordered(at);
        int kept = withoutDuplicates(at, least, choices);
        lines.clear();
        if (kept == 0) {
            throw new Unread(0, none());
        }
        int[][] columns = columns(at, kept);
        for (int row = 0; row < kept; row++) {
            at[row] = time(at[row], least);
        }
        return new Samples(names, kept == rows ? at : Arrays.copyOf(at, kept), columns);
    }

    private int line(int row) {
        return lines.get(row >> PIECE_BITS)[row & PIECE - 1];
    }

    private static int row(long key) {
        return (int) (key & MOST_ROWS - 1);
    }

    private static long time(long key, long least) {
        return least + (key >> ROW_BITS);
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
     * @param keys of the rows that stay, in their order, or null for all
     */
    private int[][] columns(long @Nullable [] keys, int kept) {
        int[][] columns = new int[channels][];
        for (int channel = 0; channel < channels; channel++) {
            columns[channel] = new int[kept];
            for (int row = 0; row < kept; row++) {
                columns[channel][row] = reading(channel, keys == null ? row : row(keys[row]));
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

    /**
     * Turns times into keys in the order of time, those of one time in the order of the file.
     *
     * @return the least time
     */
    private long ordered(long[] at) throws Unread {
        long least = Long.MAX_VALUE;
        long greatest = Long.MIN_VALUE;
        for (int row = 0; row < rows; row++) {
            if (Math.abs(at[row] - at[0]) > MOST_MS) {
                throw new Unread(line(row), "Its time lies more than a year from that of the first row.");
            }
            unordered += row > 0 && at[row] < greatest ? 1 : 0;
            least = Math.min(least, at[row]);
            greatest = Math.max(greatest, at[row]);
        }
        for (int row = 0; row < rows; row++) {
            at[row] = at[row] - least << ROW_BITS | row;
        }
        if (unordered > 0) {
            Arrays.sort(at);
        }
        return least;
    }

    /** Moves the keys that stay to the front, and tells how many they are. */
    private int withoutDuplicates(long[] keys, long least, LogChoices choices) throws Unread {
        int kept = 0;
        long from = choices.from() == null ? Long.MIN_VALUE : choices.from().toEpochMilli();
        long until = choices.until() == null ? Long.MAX_VALUE : choices.until().toEpochMilli();
        for (long key : keys) {
            long at = time(key, least);
            if (at < from || at > until) {
                outside++;
                continue;
            }
            if (kept > 0 && time(keys[kept - 1], least) == at) {
                int before = row(keys[kept - 1]);
                if (!alike(before, row(key))) {
                    throw new Unread(
                            line(row(key)), "It has the time of line " + line(before) + " and other temperatures.");
                }
                duplicates++;
                continue;
            }
            keys[kept++] = key;
        }
        return kept;
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
