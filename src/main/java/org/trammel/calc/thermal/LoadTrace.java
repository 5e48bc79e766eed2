package org.trammel.calc.thermal;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.trammel.calc.units.Answer;

/**
 * The temperatures of a load over time, as its load thermocouples told them: each drawn straight from reading to reading and
 * corrected by what it was found to read wrong. The coldest of them stands for the load.
 *
 * <p>The trace runs as long as every load thermocouple gives readings. Where one gives none for longer than the longest gap,
 * the line is drawn over it and the time is marked: it counts in sums and is told apart in each.
 */
public final class LoadTrace {

    /**
     * A gap longer than this hides what a limit upward asks about. Our own choice: within a quarter of an hour a load of
     * metal does not go far up and come back; see what a rise is looked at over.
     */
    private static final double HIDES_S = 15 * 60;

    private final List<String> channels;
    private final long begin_ms;
    private final double[] time_s;
    private final double[][] degC;
    private final boolean[] gap;

    private LoadTrace(List<String> channels, long begin_ms, double[] time_s, double[][] degC, boolean[] gap) {
        this.channels = channels;
        this.begin_ms = begin_ms;
        this.time_s = time_s;
        this.degC = degC;
        this.gap = gap;
    }

    /**
     * Draws the trace.
     *
     * @param thermocouples of the run; those whose role is the load are drawn
     * @param longestGap between two readings, that a line may be drawn over without a mark
     */
    public static Answer<LoadTrace> of(Samples samples, List<Thermocouple> thermocouples, Duration longestGap) {
        List<Thermocouple> load = thermocouples.stream()
                .filter(thermocouple -> thermocouple.role() == ThermocoupleRole.LOAD)
                .toList();
        if (load.isEmpty()) {
            return Answer.none("thermocouples", "No thermocouple told the temperature of the load.");
        }
        int first = 0;
        int last = samples.rows() - 1;
        for (Thermocouple thermocouple : load) {
            int channel = samples.channel(thermocouple.channel());
            if (channel < 0) {
                return Answer.none(
                        "thermocouples",
                        "The record has no " + thermocouple.channel() + ": it has "
                                + String.join(", ", samples.channels()) + ".");
            }
            int from = 0;
            while (from < samples.rows() && !samples.has(channel, from)) {
                from++;
            }
            int until = samples.rows() - 1;
            while (until >= 0 && !samples.has(channel, until)) {
                until--;
            }
            if (from > until) {
                return Answer.none("thermocouples", thermocouple.channel() + " gives no reading at all.");
            }
            first = Math.max(first, from);
            last = Math.min(last, until);
        }
        if (first >= last) {
            return Answer.none(
                    "samples", "There is no time in which all load thermocouples give two readings or more.");
        }
        return Answer.of(drawn(samples, load, first, last, longestGap.toMillis()));
    }

    private static LoadTrace drawn(Samples samples, List<Thermocouple> load, int first, int last, long longest_ms) {
        int rows = last - first + 1;
        long begin = samples.time_ms(first);
        double[] time = new double[rows];
        boolean[] gap = new boolean[rows - 1];
        for (int row = 0; row < rows; row++) {
            time[row] = (samples.time_ms(first + row) - begin) / 1000.0;
        }
        double[][] degC = new double[load.size()][rows];
        List<String> names = new ArrayList<>();
        for (int i = 0; i < load.size(); i++) {
            Thermocouple thermocouple = load.get(i);
            names.add(thermocouple.channel());
            draw(samples, samples.channel(thermocouple.channel()), thermocouple, first, degC[i], gap, longest_ms);
        }
        return new LoadTrace(names, begin, time, degC, gap);
    }

    private static void draw(
            Samples samples,
            int channel,
            Thermocouple thermocouple,
            int first,
            double[] into,
            boolean[] gap,
            long longest) {
        int before = first;
        while (before > 0 && !samples.has(channel, before)) {
            before--;
        }
        int rows = into.length;
        int row = before;
        while (row - first < rows) {
            int next = row + 1;
            while (next < samples.rows() && !samples.has(channel, next)) {
                next++;
            }
            double here = thermocouple.corrected_degC(samples.degC(channel, row));
            if (next == samples.rows()) {
                into[row - first] = here;
                return;
            }
            double there = thermocouple.corrected_degC(samples.degC(channel, next));
            long span = samples.time_ms(next) - samples.time_ms(row);
            for (int i = Math.max(row, first); i < next && i - first < rows; i++) {
                into[i - first] = here + (there - here) * (samples.time_ms(i) - samples.time_ms(row)) / span;
                if (i - first < gap.length) {
                    gap[i - first] |= span > longest;
                }
            }
            row = next;
        }
    }

    /**
     * The part of it between two instants, its ends drawn on the line between readings: heat before a run began and after it
     * ended is no heat of the run. All of it where they have no time in common.
     */
    LoadTrace within(Instant begin, Instant end) {
        double from = Math.max(0, (begin.toEpochMilli() - begin_ms) / 1000.0);
        double until = Math.min(length_s(), (end.toEpochMilli() - begin_ms) / 1000.0);
        if (!(from < until) || from == 0 && until == length_s()) {
            return this;
        }
        int first = row(from);
        int last = row(until);
        int inside = 0;
        for (int row = first; row <= last; row++) {
            inside += time_s[row] > from && time_s[row] < until ? 1 : 0;
        }
        double[] time = new double[inside + 2];
        double[][] cut = new double[degC.length][inside + 2];
        boolean[] open = new boolean[inside + 1];
        time[inside + 1] = until - from;
        open[0] = gap[first];
        int to = 1;
        for (int row = first; row <= last; row++) {
            if (time_s[row] > from && time_s[row] < until) {
                time[to] = time_s[row] - from;
                open[to] = gap[row];
                for (int channel = 0; channel < cut.length; channel++) {
                    cut[channel][to] = degC[channel][row];
                }
                to++;
            }
        }
        for (int channel = 0; channel < cut.length; channel++) {
            cut[channel][0] = degC(channel, from);
            cut[channel][inside + 1] = degC(channel, until);
        }
        return new LoadTrace(channels, begin_ms + Math.round(from * 1000), time, cut, open);
    }

    public List<String> channels() {
        return channels;
    }

    public Instant from() {
        return at(0);
    }

    public Instant until() {
        return at(length_s());
    }

    Instant at(double second) {
        return Instant.ofEpochMilli(begin_ms + Math.round(second * 1000));
    }

    double length_s() {
        return time_s[time_s.length - 1];
    }

    int rows() {
        return time_s.length;
    }

    double time_s(int row) {
        return time_s[row];
    }

    double degC(int channel, int row) {
        return degC[channel][row];
    }

    /** Whether the line from a row to the next is drawn over a gap. */
    boolean gap(int row) {
        return gap[row];
    }

    /** The temperature of the coldest load thermocouple a share of the way from a row to the next. */
    double coldest_degC(int row, double share) {
        double coldest = Double.POSITIVE_INFINITY;
        for (double[] channel : degC) {
            coldest = Math.min(coldest, between(channel, row, share));
        }
        return coldest;
    }

    /** The same of the hottest. */
    double hottest_degC(int row, double share) {
        double hottest = Double.NEGATIVE_INFINITY;
        for (double[] channel : degC) {
            hottest = Math.max(hottest, between(channel, row, share));
        }
        return hottest;
    }

    /** Whether one thermocouple is the coldest and one the hottest all the way to the next row. */
    boolean straight(int row) {
        boolean coldest = false;
        boolean hottest = false;
        double coldHere = coldest_degC(row, 0);
        double coldThere = coldest_degC(row + 1, 0);
        double hotHere = hottest_degC(row, 0);
        double hotThere = hottest_degC(row + 1, 0);
        for (double[] channel : degC) {
            coldest |= channel[row] == coldHere && channel[row + 1] == coldThere;
            hottest |= channel[row] == hotHere && channel[row + 1] == hotThere;
        }
        return coldest && hottest;
    }

    private static double between(double[] channel, int row, double share) {
        return share == 0 ? channel[row] : channel[row] + share * (channel[row + 1] - channel[row]);
    }

    /** One channel at any second of the trace. */
    double degC(int channel, double second) {
        int row = row(second);
        double share = (second - time_s[row]) / (time_s[row + 1] - time_s[row]);
        return between(degC[channel], row, share);
    }

    /** The row from which the line over a second starts. */
    int row(double second) {
        int found = Arrays.binarySearch(time_s, second);
        int row = found >= 0 ? found : -found - 2;
        return Math.max(0, Math.min(time_s.length - 2, row));
    }

    /** Stretches of the record that are longer than the longest gap, at most so many. */
    public List<Stretch> gaps(int most) {
        List<Stretch> gaps = new ArrayList<>();
        for (int row = 0; row < gap.length && gaps.size() < most; row++) {
            if (gap[row]) {
                int end = row;
                while (end < gap.length && gap[end]) {
                    end++;
                }
                gaps.add(new Stretch(at(time_s[row]), at(time_s[end])));
                row = end;
            }
        }
        return gaps;
    }

    /**
     * Longest time without a reading that touches a span of seconds, where it is long enough to hide a visit to any
     * temperature; 0 if there is none.
     */
    double hidden_h(double from, double until) {
        double longest = 0;
        for (int row = 0; row < gap.length; row++) {
            if (gap[row]) {
                int end = row;
                while (end < gap.length && gap[end]) {
                    end++;
                }
                if (time_s[row] < until && time_s[end] > from) {
                    longest = Math.max(longest, time_s[end] - time_s[row]);
                }
                row = end;
            }
        }
        return longest > HIDES_S ? longest / 3600 : 0;
    }

    /** The same anywhere in the trace. */
    double hidden_h() {
        return hidden_h(0, length_s());
    }

    /** From one instant to another. */
    public record Stretch(Instant from, Instant until) {

        public double hours() {
            return Duration.between(from, until).toMillis() / 3_600_000.0;
        }
    }
}
