package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How far a kind of characteristic may lie from what the drawing says.
 *
 * @param id names these very deviations
 * @param lower deviation; null for an open side
 * @param upper deviation; null for an open side
 * @param source where they come from: a standard, a data sheet, a trial of the shop
 * @param by id of the person who put them in force; 0 for what the program came with
 */
public record Tolerance(
        long id,
        String code,
        String name,
        String explanation,
        String unit,
        @Nullable BigDecimal lower,
        @Nullable BigDecimal upper,
        String source,
        String reason,
        Instant since,
        long by) {

    /** Whether a value lies further from another than this allows; one that is equal never does. */
    boolean isBeyond(BigDecimal value, BigDecimal from) {
        BigDecimal off = value.subtract(from);
        return off.signum() < 0 ? lower != null && off.compareTo(lower) < 0 : upper != null && off.compareTo(upper) > 0;
    }
}
