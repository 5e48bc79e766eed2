package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A raw figure of a sheet.
 *
 * @param spot code of a {@link Spot}, or of a {@link Feature} for a point
 * @param name of a point, once in a sheet; of a figure on the plate the spot's code
 * @param mm as it was read; z of a point; null where it was struck out
 * @param x_mm of a point; null of a figure on the plate
 * @param y_mm likewise
 * @param gaugeKind kind it was read by, such as HEIGHT
 * @param u_mm standard uncertainty of the gauge when it was read
 * @param replacesId the one whose place it took
 * @param reason why it took its place
 * @param replaced whether another took its place
 */
public record RawLine(
        long readingId,
        long sheetId,
        String spot,
        String name,
        @Nullable BigDecimal mm,
        @Nullable BigDecimal x_mm,
        @Nullable BigDecimal y_mm,
        long gaugeId,
        String gauge,
        String gaugeKind,
        BigDecimal u_mm,
        long personId,
        Instant at,
        @Nullable Long replacesId,
        @Nullable String reason,
        boolean replaced) {

    /** Whether it counts. */
    public boolean stands() {
        return !replaced && mm != null;
    }

    /** The same figure under another gauge's name. */
    RawLine readWith(String other) {
        return new RawLine(
                readingId,
                sheetId,
                spot,
                name,
                mm,
                x_mm,
                y_mm,
                gaugeId,
                other,
                gaugeKind,
                u_mm,
                personId,
                at,
                replacesId,
                reason,
                replaced);
    }

    public boolean point() {
        return x_mm != null;
    }
}
