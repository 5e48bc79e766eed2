package org.trammel.shop.orders;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * The rider the frame is made for.
 *
 * @param height body height, cm
 * @param inseam inside leg, cm
 * @param arm length of the arm, cm
 * @param foot length of the foot, cm
 * @param mass kg
 * @param flexibility in a few words
 */
public record RiderDetails(
        @Nullable BigDecimal height,
        @Nullable BigDecimal inseam,
        @Nullable BigDecimal arm,
        @Nullable BigDecimal foot,
        @Nullable BigDecimal mass,
        @Nullable String flexibility) {

    /** Nothing known yet. */
    public static final RiderDetails UNKNOWN = new RiderDetails(null, null, null, null, null, null);
}
