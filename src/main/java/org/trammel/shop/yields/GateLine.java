package org.trammel.shop.yields;

import org.trammel.calc.statistics.Proportion;

/**
 * What a gate let through.
 *
 * @param firstPass share of frames that passed at the first attempt, with its interval
 * @param hoursKnown of how many that did not the hours are written down
 * @param hours to put one right, the mean of those; 0 if none is
 * @param reworkHours of a frame, on average
 * @param cost the same in the shop's currency
 * @param share of all hours of rework, 0 to 1
 */
public record GateLine(
        String code,
        String name,
        Proportion firstPass,
        int hoursKnown,
        double hours,
        double reworkHours,
        double cost,
        double share) {

    /** Frames that did not pass as they came. */
    public int stopped() {
        return firstPass.count() - firstPass.hits();
    }
}
