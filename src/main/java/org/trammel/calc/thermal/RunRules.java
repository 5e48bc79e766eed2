package org.trammel.calc.thermal;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How the record of a run is judged.
 *
 * @param longestGap between readings, beyond which time counts as not recorded; 2 min is common practice
 * @param coldestPlace_K how much colder the coldest place that the oven's survey found is than where the load
 *     thermocouples are; 0 or below
 * @param hottestPlace_K how much hotter the hottest; 0 or above
 * @param rise over how long a rise is looked at, so that a flicker is none; a quarter of an hour is common practice
 * @param began when the load went in, as it is told; null where nobody says
 * @param ended when it came out
 */
public record RunRules(
        Duration longestGap,
        double coldestPlace_K,
        double hottestPlace_K,
        Duration rise,
        @Nullable Instant began,
        @Nullable Instant ended) {

    public RunRules {
        if (longestGap.isNegative() || longestGap.isZero() || rise.isNegative() || rise.isZero()) {
            throw new IllegalArgumentException("Spans are longer than nothing");
        }
        if (!(coldestPlace_K <= 0) || !(hottestPlace_K >= 0)) {
            throw new IllegalArgumentException("The coldest place is not hotter, the hottest not colder");
        }
        if (began != null && ended != null && ended.isBefore(began)) {
            throw new IllegalArgumentException("A run ends after it began: " + began + " to " + ended);
        }
    }

    /** The usual: gaps of 2 min, no survey, rises over a quarter of an hour, no times told. */
    public static RunRules usual() {
        return new RunRules(Duration.ofMinutes(2), 0, 0, Duration.ofMinutes(15), null, null);
    }

    public RunRules surveyed(double coldest_K, double hottest_K) {
        return new RunRules(longestGap, coldest_K, hottest_K, rise, began, ended);
    }

    public RunRules between(Instant begin, Instant end) {
        return new RunRules(longestGap, coldestPlace_K, hottestPlace_K, rise, begin, end);
    }

    /** What of a record is heat of the run: all of it where nobody tells when it began and ended. */
    public LoadTrace of(LoadTrace trace) {
        return began == null || ended == null ? trace : trace.within(began, ended);
    }

    public RunRules withGap(Duration longest) {
        return new RunRules(longest, coldestPlace_K, hottestPlace_K, rise, began, ended);
    }
}
