package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.time.Instant;

/** How long a load took from the door to the water, as somebody timed it. */
public record Quench(BigDecimal delay_s, String words, long by, Instant at) {}
