package org.trammel.shop.drift;

/**
 * An axis to be watched.
 *
 * @param by what its chart follows
 * @param of which one: a jig's code, a welder's initials, a tube set as the lots that are in it
 * @param code of the characteristic on the routes, such as 080-3
 * @param unit of its readings
 * @param scaled whether the chart shows shares of the half tolerance; otherwise deviations from the nominal in the unit
 */
public record NewSeries(Factor by, String of, String code, String name, String unit, boolean scaled) {

    /** An axis of a jig. */
    public static NewSeries onJig(String jig, String code, String name, String unit, boolean scaled) {
        return new NewSeries(Factor.JIG, jig, code, name, unit, scaled);
    }
}
