package org.trammel.calc.thermal;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How long the coldest load thermocouple lay in a band, its limits included.
 *
 * <pre>
 * between two rows every thermocouple runs straight, so that
 * {coldest ≥ L} = ∩ {each ≥ L}, {coldest &gt; U} = ∩ {each &gt; U}: intervals; in band is the first without the second
 * </pre>
 *
 * Exact for lines drawn straight, whichever thermocouple is the coldest when.
 *
 * @param total_h all of it, lines over gaps too
 * @param inGaps_h what of it lies where the record has gaps
 * @param longest_h the longest part without leaving the band
 * @param parts how often it was entered and left
 * @param first the first part's begin, null if it was never there
 * @param last the last part's end
 */
public record TimeInBand(
        double total_h,
        double inGaps_h,
        double longest_h,
        int parts,
        LoadTrace.@Nullable Stretch first,
        LoadTrace.@Nullable Stretch last) {

    private static final double SAME_S = 1e-6;

    /** A part of the time in band, in seconds of the trace. */
    record Part(double from_s, double until_s, double inGaps_s) {}

    /**
     * Finds the time of the whole trace.
     *
     * @param least_degC the lower limit
     * @param most_degC the upper limit
     */
    public static TimeInBand of(LoadTrace trace, double least_degC, double most_degC) {
        return of(trace, parts(trace, least_degC, most_degC));
    }

    static TimeInBand of(LoadTrace trace, List<Part> parts) {
        double total = 0;
        double gaps = 0;
        double longest = 0;
        for (Part part : parts) {
            total += part.until_s() - part.from_s();
            gaps += part.inGaps_s();
            longest = Math.max(longest, part.until_s() - part.from_s());
        }
        return new TimeInBand(
                total / 3600,
                gaps / 3600,
                longest / 3600,
                parts.size(),
                parts.isEmpty() ? null : stretch(trace, parts.get(0)),
                parts.isEmpty() ? null : stretch(trace, parts.get(parts.size() - 1)));
    }

    private static LoadTrace.Stretch stretch(LoadTrace trace, Part part) {
        return new LoadTrace.Stretch(trace.at(part.from_s()), trace.at(part.until_s()));
    }

    static List<Part> parts(LoadTrace trace, double least_degC, double most_degC) {
        List<Part> parts = new ArrayList<>();
        double[] warm = new double[2];
        double[] hot = new double[2];
        for (int row = 0; row + 1 < trace.rows(); row++) {
            if (!above(trace, row, least_degC, true, warm)) {
                continue;
            }
            if (above(trace, row, most_degC, false, hot) && hot[0] < hot[1]) {
                add(parts, trace, row, warm[0], hot[0]);
                add(parts, trace, row, hot[1], warm[1]);
            } else {
                add(parts, trace, row, warm[0], warm[1]);
            }
        }
        return parts;
    }

    /**
     * The shares of the way to the next row between which every thermocouple lies above a temperature.
     *
     * @param at whether one that stays at the temperature counts
     */
    private static boolean above(LoadTrace trace, int row, double degC, boolean at, double[] shares) {
        shares[0] = 0;
        shares[1] = 1;
        for (int channel = 0; channel < trace.channels().size(); channel++) {
            double here = trace.degC(channel, row) - degC;
            double there = trace.degC(channel, row + 1) - degC;
            if (here < 0 && there < 0 || !at && here <= 0 && there <= 0) {
                return false;
            }
            if (here < 0) {
                shares[0] = Math.max(shares[0], here / (here - there));
            } else if (there < 0) {
                shares[1] = Math.min(shares[1], here / (here - there));
            }
        }
        return shares[0] <= shares[1];
    }

    private static void add(List<Part> parts, LoadTrace trace, int row, double fromShare, double untilShare) {
        double width = trace.time_s(row + 1) - trace.time_s(row);
        double from = trace.time_s(row) + fromShare * width;
        double until = untilShare == 1 ? trace.time_s(row + 1) : trace.time_s(row) + untilShare * width;
        if (!(until > from)) {
            return;
        }
        double inGaps = trace.gap(row) ? until - from : 0;
        int end = parts.size() - 1;
        if (end >= 0 && from - parts.get(end).until_s() <= SAME_S) {
            Part before = parts.get(end);
            parts.set(end, new Part(before.from_s(), until, before.inGaps_s() + inGaps));
        } else {
            parts.add(new Part(from, until, inGaps));
        }
    }
}
