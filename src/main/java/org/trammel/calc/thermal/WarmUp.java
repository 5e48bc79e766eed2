package org.trammel.calc.thermal;

import org.trammel.calc.units.Answer;

/**
 * How long a part needs to warm up in still air.
 *
 * <pre>t = τ ln((T air − T now) / (T air − T goal))</pre>
 *
 * τ the time in which the part makes up 63 % of the difference, found by watching it once. Source: Newton's law of cooling.
 */
public final class WarmUp {

    private WarmUp() {}

    /**
     * Computes.
     *
     * @param constant_h τ
     * @return hours; 0 where the part is warm enough
     */
    public static Answer<Double> hours(double constant_h, double air_degC, double now_degC, double goal_degC) {
        Wanted wanted = new Wanted()
                .above0("constant", "time constant of the part", constant_h, " h")
                .temperature("air", "air temperature", air_degC)
                .temperature("now", "temperature of the part", now_degC)
                .temperature("goal", "temperature to be reached", goal_degC);
        if (!wanted.met()) {
            return wanted.refusal();
        }
        if (now_degC >= goal_degC) {
            return Answer.of(0.0);
        }
        if (air_degC <= goal_degC) {
            return Answer.none(
                    "air",
                    "In air of " + Said.degC(air_degC) + " the part never comes to " + Said.degC(goal_degC) + ".");
        }
        return Answer.of(constant_h * Math.log((air_degC - now_degC) / (air_degC - goal_degC)));
    }
}
