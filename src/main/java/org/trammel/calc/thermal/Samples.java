package org.trammel.calc.thermal;

import java.time.Instant;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;

/**
 * Temperatures that a logger recorded, in order of time: one row for each instant, one channel for each thermocouple.
 *
 * <p>Invariants: times rise strictly; a reading is kept in thousandths of a degree Celsius, {@value #OPEN} where the
 * thermocouple gave none; at least one channel and one row; names of channels differ. Four bytes a reading and eight a
 * row, in memory.
 */
public final class Samples {

    /** Stands where a thermocouple gave no reading. */
    public static final int OPEN = Integer.MIN_VALUE;

    private final List<String> channels;
    private final long[] times_ms;
    private final int[][] readings_mDegC;

    /** Takes the arrays as they are; who calls gives them away. */
    Samples(List<String> channels, long[] times_ms, int[][] readings_mDegC) {
        this.channels = List.copyOf(channels);
        this.times_ms = times_ms;
        this.readings_mDegC = readings_mDegC;
    }

    /**
     * Samples of one's own.
     *
     * @param times_ms since 1970-01-01 in UTC, strictly rising
     * @param readings_mDegC by channel, then by row, thousandths of a degree; {@link #OPEN} where there is none
     */
    public static Samples of(List<String> channels, long[] times_ms, int[][] readings_mDegC) {
        require(channels, times_ms, readings_mDegC);
        int[][] copy = new int[readings_mDegC.length][];
        for (int channel = 0; channel < copy.length; channel++) {
            copy[channel] = readings_mDegC[channel].clone();
        }
        return new Samples(channels, times_ms.clone(), copy);
    }

    /** The same of arrays that the caller gives away. */
    static Samples given(List<String> channels, long[] times_ms, int[][] readings_mDegC) {
        require(channels, times_ms, readings_mDegC);
        return new Samples(channels, times_ms, readings_mDegC);
    }

    private static void require(List<String> channels, long[] times_ms, int[][] readings_mDegC) {
        if (channels.isEmpty() || new HashSet<>(channels).size() != channels.size()) {
            throw new IllegalArgumentException("Channels have names that differ: " + channels);
        }
        if (times_ms.length == 0 || readings_mDegC.length != channels.size()) {
            throw new IllegalArgumentException("Every channel has readings");
        }
        for (int row = 1; row < times_ms.length; row++) {
            if (times_ms[row] <= times_ms[row - 1]) {
                throw new IllegalArgumentException("Times rise strictly: row " + row);
            }
        }
        for (int[] readings : readings_mDegC) {
            if (readings.length != times_ms.length) {
                throw new IllegalArgumentException("Every channel has a reading or none for each row");
            }
        }
    }

    public List<String> channels() {
        return channels;
    }

    /** Where a channel stands, or −1 if none has that name. */
    public int channel(String name) {
        return channels.indexOf(name);
    }

    public int rows() {
        return times_ms.length;
    }

    public long time_ms(int row) {
        return times_ms[row];
    }

    public Instant at(int row) {
        return Instant.ofEpochMilli(times_ms[row]);
    }

    public Instant first() {
        return at(0);
    }

    public Instant last() {
        return at(rows() - 1);
    }

    /** Whether the thermocouple gave a reading. */
    public boolean has(int channel, int row) {
        return readings_mDegC[channel][row] != OPEN;
    }

    /** The reading in thousandths of a degree, or {@link #OPEN}. */
    public int reading_mDegC(int channel, int row) {
        return readings_mDegC[channel][row];
    }

    /** The reading; only where there is one. */
    public double degC(int channel, int row) {
        int reading = readings_mDegC[channel][row];
        if (reading == OPEN) {
            throw new IllegalStateException(channels.get(channel) + " has no reading in row " + row);
        }
        return reading / 1000.0;
    }

    @Override
    public boolean equals(Object other) {
        if (!(other instanceof Samples that)
                || !channels.equals(that.channels)
                || !Arrays.equals(times_ms, that.times_ms)) {
            return false;
        }
        return Arrays.deepEquals(readings_mDegC, that.readings_mDegC);
    }

    @Override
    public int hashCode() {
        return 31 * channels.hashCode() + Arrays.hashCode(times_ms);
    }

    @Override
    public String toString() {
        return rows() + " rows of " + channels + " from " + first() + " to " + last();
    }
}
