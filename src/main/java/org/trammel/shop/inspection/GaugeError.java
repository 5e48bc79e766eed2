package org.trammel.shop.inspection;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Set;

/**
 * The error a gauge may have had while readings were taken with it, unknown when it began. At every height it lies
 * between {@code least} and {@code greatest}; heights near each other share one error, others have each their own.
 *
 * @param gaugeId the gauge itself, also where the reading names a set-up that it is part of
 * @param means the gauge and every set-up it is part of
 * @param since what was read before is not in doubt
 * @param until what was read after is not in doubt
 * @param least most it may have read too low by, 0 or less, in the unit
 * @param greatest most it may have read too high by, 0 or more, in the unit
 * @param equalWithin_mm readings in mm that lie so near each other share one error
 */
public record GaugeError(
        long gaugeId,
        String gaugeCode,
        Set<Long> means,
        Instant since,
        Instant until,
        BigDecimal least,
        BigDecimal greatest,
        String unit,
        BigDecimal equalWithin_mm) {

    public GaugeError {
        means = Set.copyOf(means);
    }

    /** Whether a figure read with those means at that time is in doubt. */
    public boolean reaches(long gauge, Instant at) {
        return means.contains(gauge) && !at.isBefore(since) && !at.isAfter(until);
    }
}
