package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What was found wrong with a gauge.
 *
 * @param error what it reads too high by (negative: too low); null if no figure was found
 * @param unit unit of the figures; empty without figures
 * @param errorAt value at which the error was found; null if not known
 * @param note in words
 */
public record Failure(
        LocalDate foundOn,
        @Nullable BigDecimal error,
        String unit,
        @Nullable BigDecimal errorAt,
        String note) {}
