package org.trammel.shop.drift;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A reading from before this program, or of a frame that is not in it.
 *
 * @param frame what it was called then
 * @param value before anything was set straight, in the unit of the series, as are nominal and limits
 * @param welder as written down then; null if not known
 * @param tubeSet the same of the tubes
 */
public record EarlierReading(
        LocalDate readOn,
        String frame,
        BigDecimal value,
        BigDecimal nominal,
        BigDecimal lowerLimit,
        BigDecimal upperLimit,
        @Nullable String welder,
        @Nullable String tubeSet) {}
