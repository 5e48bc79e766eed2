package org.trammel.shop.ovens;

/** A figure that the record of a run tells, and that a characteristic of a route may ask for. */
public enum RunFigure {
    IN_BAND("time in band, a code to each step", "h"),
    EQUIVALENT("equivalent hours", "h"),
    HIGHEST("highest metal temperature", "°C"),
    SOAK("lowest and highest metal temperature in the soak", "°C"),
    QUENCH("door to water", "s");

    private final String word;
    private final String unit;

    RunFigure(String word, String unit) {
        this.word = word;
        this.unit = unit;
    }

    public String word() {
        return word;
    }

    /** The unit a characteristic must have to take it. */
    public String unit() {
        return unit;
    }
}
