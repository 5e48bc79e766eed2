package org.trammel.calc.metrology;

/** How a reading is judged against its limits. */
public enum DecisionRule {
    /** The measurement uncertainty counts against whoever wants to show something; there is a third verdict between. */
    GUARDED,
    /** The reading itself against the limits, which are included; two verdicts. */
    PLAIN
}
