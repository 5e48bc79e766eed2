package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/**
 * A gauge was found wrong. Published inside the transaction that records it, for whoever judges again what was read with
 * it.
 *
 * @param means the gauge itself and every set-up it is part of
 * @param lastGoodOn day it was last known to be right; null if it never was
 * @param error what it reads too high by (negative: too low); null if not known
 * @param unit unit of the figures
 * @param errorAt value at which the error was found; null if not known
 * @param least least error it may have had meanwhile, 0 or less; null if no error is known
 * @param greatest greatest error it may have had meanwhile, 0 or more; null if no error is known
 */
public record GaugeFailed(
        Act act,
        long gaugeId,
        String code,
        Set<Long> means,
        @Nullable LocalDate lastGoodOn,
        LocalDate foundOn,
        @Nullable BigDecimal error,
        String unit,
        @Nullable BigDecimal errorAt,
        @Nullable BigDecimal least,
        @Nullable BigDecimal greatest) {

    public GaugeFailed {
        means = Set.copyOf(means);
    }
}
