package org.trammel.shop.designs;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What a design says about one characteristic, in the characteristic's unit.
 *
 * @param nominal the wanted value
 * @param lowerDeviation with {@code overridesLimits}: the design's own lower deviation, null for an open side
 * @param upperDeviation with {@code overridesLimits}: the design's own upper deviation, null for an open side
 * @param overridesLimits false: the route's deviations hold, whatever the two above say
 */
public record Nominal(
        BigDecimal nominal,
        @Nullable BigDecimal lowerDeviation,
        @Nullable BigDecimal upperDeviation,
        boolean overridesLimits) {

    /** A nominal whose limits are the route's. */
    public static Nominal of(BigDecimal nominal) {
        return new Nominal(nominal, null, null, false);
    }
}
