package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.time.Instant;

/**
 * What was left of a piece and put back into the rack.
 *
 * @param code the lot's code and its number, as on its tag: L-0042/R1
 */
public record Remnant(String code, BigDecimal quantity, BigDecimal quantityLeft, String unit, long by, Instant at) {}
