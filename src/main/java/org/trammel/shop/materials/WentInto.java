package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One place a lot went into.
 *
 * @param remnant number of the remnant it was taken from; null if from the lot itself
 * @param quantity null where it was not measured
 * @param scrapped the piece was thrown away; it stays on record
 */
public record WentInto(
        long useId,
        String serial,
        String part,
        String operation,
        String position,
        @Nullable Integer remnant,
        @Nullable BigDecimal quantity,
        String unit,
        long by,
        Instant at,
        boolean scrapped,
        @Nullable String scrappedReason) {

    public WentInto {
        quantity = LotRow.plain(quantity);
    }
}
