package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One piece of a lot that a frame is, or was, made of.
 *
 * @param part part of the frame; empty for the frame itself
 * @param state where the lot stands now
 * @param scrapped the piece was thrown away, alone or with its part; it stays on record
 * @param scrappedAt null while it was not
 * @param goneWith traveller of the piece it was scrapped with, in whose place another was made; null where it was not
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
        @Nullable String place,
        @Nullable Instant scrappedAt,
        @Nullable Long goneWith) {

    public MadeOf {
        quantity = LotRow.plain(quantity);
        scrapped = scrapped || goneWith != null;
    }

    /** Thrown away from the piece there is; what went with a piece that is no more is asked of nobody again. */
    boolean missing() {
        return scrapped && goneWith == null;
    }
}
