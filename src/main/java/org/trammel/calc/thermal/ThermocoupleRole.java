package org.trammel.calc.thermal;

/** What a thermocouple did in a run. */
public enum ThermocoupleRole {
    /** The controller heated by it. */
    CONTROL,
    /** It told the temperature of the load, and the run is judged by it. */
    LOAD,
    /** It would have switched the oven off. */
    OVER_TEMPERATURE
}
