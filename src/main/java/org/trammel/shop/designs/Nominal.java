package org.trammel.shop.designs;

import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What a design says about one characteristic, in the characteristic's unit.
 *
 * @param nominal the wanted value
 * @param lowerDeviation with {@code overridesLimits}: the design's own lower deviation, null for an open side
 * @param upperDeviation with {@code overridesLimits}: the design's own upper deviation, null for an open side
 * @param overridesLimits false: the route's deviations hold, whatever the two above say
 */
@Embeddable
public record Nominal(
        BigDecimal nominal,
        @Nullable BigDecimal lowerDeviation,
        @Nullable BigDecimal upperDeviation,
        boolean overridesLimits) {

    /** A nominal whose limits are the route's. */
    public static Nominal of(BigDecimal nominal) {
        return new Nominal(nominal, null, null, false);
    }

    /** The same numbers without the zeros a column adds. */
    Nominal plain() {
        return new Nominal(
                plain(nominal),
                lowerDeviation == null ? null : plain(lowerDeviation),
                upperDeviation == null ? null : plain(upperDeviation),
                overridesLimits);
    }

    /** Inputs by code, written without those zeros. */
    static Map<String, String> plain(Map<GeometryInput, BigDecimal> inputs) {
        Map<String, String> plain = new TreeMap<>();
        inputs.forEach((input, amount) -> plain.put(input.code(), plain(amount).toPlainString()));
        return plain;
    }

    static BigDecimal plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
