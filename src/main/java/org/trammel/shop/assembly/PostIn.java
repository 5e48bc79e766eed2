package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How far a seatpost is in.
 *
 * @param least_mm by its own sheet
 * @param drawn_mm what the drawing leaves inside; null where it does not tell
 * @param inserted_mm as measured on the frame; null before
 */
public record PostIn(
        FramePart part,
        BigDecimal least_mm,
        @Nullable BigDecimal drawn_mm,
        @Nullable BigDecimal inserted_mm,
        @Nullable Long by,
        @Nullable Instant at) {

    public boolean enough() {
        return inserted_mm != null && inserted_mm.compareTo(least_mm) >= 0;
    }
}
