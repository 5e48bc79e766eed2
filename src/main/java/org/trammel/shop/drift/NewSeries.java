package org.trammel.shop.drift;

/**
 * An axis to be watched on a jig.
 *
 * @param code of the characteristic on the routes, such as 080-3
 * @param unit of its readings
 * @param scaled whether the chart shows shares of the half tolerance; otherwise deviations from the nominal in the unit
 */
public record NewSeries(String jig, String code, String name, String unit, boolean scaled) {}
