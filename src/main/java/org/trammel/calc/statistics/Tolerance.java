package org.trammel.calc.statistics;

import org.jspecify.annotations.Nullable;

/**
 * Limits of the drawing or the route, for comparing with what the process does; in the unit of the readings.
 *
 * @param lower smallest allowed, or null if only the other side is limited
 * @param upper largest allowed, or null
 */
public record Tolerance(@Nullable Double lower, @Nullable Double upper) {

    boolean asked(Asked asked) {
        asked.holds(lower != null || upper != null, "tolerance", "No limit is given to compare with.");
        if (lower != null) {
            asked.number("tolerance", "lower limit", lower);
        }
        if (upper != null) {
            asked.number("tolerance", "upper limit", upper);
        }
        if (lower != null && upper != null && asked.met()) {
            asked.holds(
                    lower < upper,
                    "tolerance",
                    "The limits " + Written.plain(lower) + " and " + Written.plain(upper)
                            + " leave nothing between them.");
        }
        return asked.met();
    }
}
