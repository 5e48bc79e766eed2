package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A study of a gauge in a list. */
public record StudyLine(
        long id, String what, String unit, @Nullable BigDecimal tolerance, Instant at) {}
