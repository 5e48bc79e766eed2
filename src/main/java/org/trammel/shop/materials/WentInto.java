package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One place a lot went into.
 *
 * @param remnant number of the remnant it was taken from; null if from the lot itself
 * @param quantity null where it was not measured
 * @param scrapped the piece was thrown away, alone or with its part; it stays on record
 * @param goneWith traveller of the piece it was scrapped with; null where it was not
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
        @Nullable String scrappedReason,
        @Nullable Long goneWith) {

    public WentInto {
        quantity = LotRow.plain(quantity);
        scrappedReason = goneWith == null || scrapped ? scrappedReason : "with its part";
        scrapped = scrapped || goneWith != null;
    }
}
