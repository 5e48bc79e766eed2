package org.trammel.shop.gauges;

import java.math.BigDecimal;

/**
 * What a calibration found at one value, before anything was adjusted.
 *
 * <p>Rule: the gauge is found wrong where the amount of its error is greater than the permissible one; equal is within.
 * That is simple acceptance, JCGM 106:2012, 8.2. What the calibration itself is in doubt by belongs to the gauge's
 * standard uncertainty.
 *
 * @param at value it was set to, in the unit of the calibration
 * @param error what it reads too high by (negative: too low), in the same unit
 * @param permissible greatest amount of error it may have there, above 0, in the same unit
 */
public record CalibrationPoint(BigDecimal at, BigDecimal error, BigDecimal permissible) {

    /** The rule in the words of the page. */
    static final String RULE = "An error is over where its amount is greater than the permissible one; equal is within"
            + " (simple acceptance, JCGM 106:2012, 8.2).";

    /** Whether the error is greater than it may be. */
    public boolean over() {
        return error.abs().compareTo(permissible) > 0;
    }
}
