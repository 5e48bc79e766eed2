package org.trammel.shop.drift;

/**
 * An axis watched on a jig.
 *
 * @param code of the characteristic, such as 080-3
 * @param unit of its readings
 * @param scaled whether the chart shows shares of the half tolerance; otherwise deviations from the nominal in the unit
 */
public record Series(long id, String jig, String code, String name, String unit, boolean scaled) {

    /** What the chart is in, in words. */
    public String chartUnit() {
        return scaled ? "share of the half tolerance" : unit;
    }
}
