package org.trammel.calc.thermal;

import java.time.Duration;
import java.util.Optional;

/**
 * How cold and how hot the load got by its thermocouples' readings, corrected for what they are known to read wrong; lines
 * between readings never go beyond them.
 *
 * @param lowest_degC by any load thermocouple
 * @param highest_degC likewise
 */
public record MetalExtremes(double lowest_degC, double highest_degC) {

    /** Ends of a stretch are known to the millisecond. */
    private static final double SAME_S = 0.001;

    /** Over the whole record. */
    public static MetalExtremes of(LoadTrace trace) {
        return over(trace, 0, trace.length_s()).orElseThrow();
    }

    /** Over the readings of a part of it; empty where none lies in it. */
    public static Optional<MetalExtremes> of(LoadTrace trace, LoadTrace.Stretch part) {
        return over(
                trace,
                Duration.between(trace.from(), part.from()).toNanos() / 1e9 - SAME_S,
                Duration.between(trace.from(), part.until()).toNanos() / 1e9 + SAME_S);
    }

    private static Optional<MetalExtremes> over(LoadTrace trace, double from_s, double until_s) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int row = 0; row < trace.rows(); row++) {
            if (trace.time_s(row) >= from_s && trace.time_s(row) <= until_s) {
                lowest = Math.min(lowest, trace.coldest_degC(row, 0));
                highest = Math.max(highest, trace.hottest_degC(row, 0));
            }
        }
        return lowest > highest ? Optional.empty() : Optional.of(new MetalExtremes(lowest, highest));
    }
}
