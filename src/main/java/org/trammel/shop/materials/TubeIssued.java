package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A tube that stands at a place of a frame.
 *
 * @param kind and metal, grade, heat, state: what the lot says now
 * @param section it was taken for
 * @param reason why the QA lead took a section that is not the drawing's own; null where it is
 */
record TubeIssued(
        long useId,
        String place,
        String lot,
        long lotId,
        LotKind kind,
        @Nullable String metal,
        @Nullable Integer remnant,
        String grade,
        String heat,
        LotState state,
        @Nullable Section section,
        @Nullable String reason,
        long by,
        Instant at) {

    /** As the columns have it. */
    TubeIssued(
            long useId,
            String place,
            String lot,
            long lotId,
            LotKind kind,
            @Nullable String metal,
            @Nullable Integer remnant,
            String grade,
            String heat,
            LotState state,
            @Nullable BigDecimal outside,
            @Nullable BigDecimal wall,
            @Nullable BigDecimal middle,
            @Nullable BigDecimal other,
            @Nullable String reason,
            long by,
            Instant at) {
        this(
                useId,
                place,
                lot,
                lotId,
                kind,
                metal,
                remnant,
                grade,
                heat,
                state,
                Section.of(outside, wall, middle, other),
                reason,
                by,
                at);
    }
}
