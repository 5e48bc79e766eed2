package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What was recorded last of one line of film.
 *
 * @param laid whether it was laid; else it was drawn off
 * @param drive_mm from its landmark, measured as it was laid; null where it was drawn off
 * @param nonDrive_mm the same on the other side
 * @param bleed_mm of the second colour under its edge, at the worst place; null where it was laid
 */
public record MaskLine(
        String name,
        boolean laid,
        @Nullable BigDecimal drive_mm,
        @Nullable BigDecimal nonDrive_mm,
        @Nullable BigDecimal bleed_mm,
        String gauge,
        long by,
        Instant at) {}
