package org.trammel.shop.web;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A characteristic and where its reading lands, for the tolerance scale. The verdict is given, never found here.
 *
 * @param lower lower limit; null if that side is open
 * @param upper upper limit; null if that side is open
 * @param nominal null if the drawing gives none
 * @param guard guard band g; null or zero where the plain rule judges
 * @param value the reading; null before there is one
 * @param verdict kind of the state mark: conforming, undecided, not-conforming; null before there is one
 * @param decimals of the limits; the reading keeps its own
 * @param sided negative is non-drive, positive is drive, and both are written
 */
public record ScaleView(
        @Nullable BigDecimal lower,
        @Nullable BigDecimal upper,
        @Nullable BigDecimal nominal,
        @Nullable BigDecimal guard,
        @Nullable BigDecimal value,
        @Nullable String verdict,
        String unit,
        int decimals,
        boolean sided) {

    /** Limits before anything is read. */
    public static ScaleView limits(
            @Nullable BigDecimal lower,
            @Nullable BigDecimal upper,
            @Nullable BigDecimal nominal,
            String unit,
            int decimals) {
        return new ScaleView(lower, upper, nominal, null, null, null, unit, decimals, false);
    }

    public ScaleView guarded(@Nullable BigDecimal guard) {
        return new ScaleView(lower, upper, nominal, guard, value, verdict, unit, decimals, sided);
    }

    public ScaleView reading(@Nullable BigDecimal value, @Nullable String verdict) {
        return new ScaleView(lower, upper, nominal, guard, value, verdict, unit, decimals, sided);
    }

    public ScaleView bySides() {
        return new ScaleView(lower, upper, nominal, guard, value, verdict, unit, decimals, true);
    }
}
