package org.trammel.calc.thermal;

import org.jspecify.annotations.Nullable;

/**
 * A step of an oven programme. Its clock runs while the coldest load thermocouple lies in the band.
 *
 * @param set_degC what is aimed at
 * @param below_K how far below it the band reaches, 0 or more
 * @param above_K how far above
 * @param soak_h least time in band, above 0
 * @param longestSoak_h most time in band, or null
 * @param unbroken whether the soak must be one part; else its parts are added
 * @param overshoot_K how far above the set temperature the hottest load thermocouple may come; null for the band's upper limit
 * @param spread_K greatest difference between load thermocouples while the coldest is in band, or null
 * @param steepestRise_KPerH of any load thermocouple on the way to this step, or null
 */
public record OvenStep(
        double set_degC,
        double below_K,
        double above_K,
        double soak_h,
        @Nullable Double longestSoak_h,
        boolean unbroken,
        @Nullable Double overshoot_K,
        @Nullable Double spread_K,
        @Nullable Double steepestRise_KPerH) {

    /** A step with a band as wide above as below, and nothing else. */
    public static OvenStep of(double set_degC, double band_K, double soak_h) {
        return new OvenStep(set_degC, band_K, band_K, soak_h, null, false, null, null, null);
    }

    public OvenStep withOvershoot(double most_K) {
        return new OvenStep(
                set_degC, below_K, above_K, soak_h, longestSoak_h, unbroken, most_K, spread_K, steepestRise_KPerH);
    }

    public OvenStep withSpread(double most_K) {
        return new OvenStep(
                set_degC, below_K, above_K, soak_h, longestSoak_h, unbroken, overshoot_K, most_K, steepestRise_KPerH);
    }

    public OvenStep withRise(double steepest_KPerH) {
        return new OvenStep(
                set_degC, below_K, above_K, soak_h, longestSoak_h, unbroken, overshoot_K, spread_K, steepest_KPerH);
    }

    public double least_degC() {
        return set_degC - below_K;
    }

    public double most_degC() {
        return set_degC + above_K;
    }

    /** The band in words. */
    public String band() {
        return Said.figure(least_degC(), 1) + " to " + Said.degC(most_degC());
    }
}
