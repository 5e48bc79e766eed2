package org.trammel.calc.metrology;

/** What makes a reading doubtful; the lines of an uncertainty budget. */
public enum ErrorKind {
    /** Calibration and resolution of the gauge. */
    GAUGE("gauge"),
    /** Scatter of readings taken one after the other. */
    REPEATABILITY("repeatability"),
    /** Flatness of the surface plate. */
    PLATE("plate"),
    /** How the frame lies after it was clamped anew. */
    CLAMP("clamp"),
    /** Tube out of round at the station. */
    OVALITY("ovality"),
    /** Part and gauge away from 20 °C. */
    TEMPERATURE("temperature"),
    /** How truly the shell sits on its post. */
    POST("seat on the post"),
    /** Form of bar, mandrel or probe tip. */
    BAR("bar");

    private final String words;

    ErrorKind(String words) {
        this.words = words;
    }

    /** Name of the budget line. */
    public String words() {
        return words;
    }
}
