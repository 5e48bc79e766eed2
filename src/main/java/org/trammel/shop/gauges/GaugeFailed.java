package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/**
 * A gauge was found wrong. Published inside the transaction that records it, for whoever judges again what was read with
 * it; nobody does yet.
 *
 * @param means the gauge itself and every set-up it is part of
 * @param lastGoodOn day it was last known to be right; null if it never was
 * @param error what it reads too high by (negative: too low); null if not known
 * @param unit unit of the two figures
 * @param errorAt value at which the error was found; null if not known
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
        @Nullable BigDecimal errorAt) {

    public GaugeFailed {
        means = Set.copyOf(means);
    }
}
