package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One piece of a lot that a frame is, or was, made of.
 *
 * @param part part of the frame; empty for the frame itself
 * @param state where the lot stands now
 * @param scrapped the piece was thrown away; it stays on record
 * @param place code of the place it was issued to as a tube; null for everything else
 */
public record MadeOf(
        long useId,
        String lot,
        LotKind kind,
        String what,
        String grade,
        String heat,
        String certificate,
        LotState state,
        String part,
        String operation,
        String position,
        @Nullable Integer remnant,
        @Nullable BigDecimal quantity,
        String unit,
        long by,
        Instant at,
        boolean scrapped,
        @Nullable String place) {

    public MadeOf {
        quantity = LotRow.plain(quantity);
    }
}
