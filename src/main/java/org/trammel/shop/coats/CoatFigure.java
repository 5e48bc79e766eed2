package org.trammel.shop.coats;

/** A figure that is recorded of a surface or a coat, and that a characteristic of a route may ask for. */
public enum CoatFigure {
    PRESSURE("blast pressure", "bar"),
    MARGIN("metal over the dew point", "°C"),
    EARTH("earth, hook to frame", "MΩ"),
    FILM("film, every reading of the map", "µm"),
    LINE("line of film from its landmark, drive and non-drive, a code to each line", "mm"),
    BLEED("second colour under the edge, a code to each line", "mm");

    private final String word;
    private final String unit;

    CoatFigure(String word, String unit) {
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
