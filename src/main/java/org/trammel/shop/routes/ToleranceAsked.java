package org.trammel.shop.routes;

import java.math.BigDecimal;

/**
 * A tolerance that a route in force has judged, both sides closed.
 *
 * @param code of the characteristic, the same on every route that asks for the same
 * @param lowerDeviation in the unit
 * @param upperDeviation in the unit
 */
public record ToleranceAsked(
        String gaugeKind,
        String unit,
        String code,
        String name,
        BigDecimal lowerDeviation,
        BigDecimal upperDeviation) {}
