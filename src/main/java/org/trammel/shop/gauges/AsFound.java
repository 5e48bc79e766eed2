package org.trammel.shop.gauges;

/** What a calibration says of the gauge as it came. */
public enum AsFound {
    /** In words at most; nothing was computed. */
    NOT_STATED("not stated in figures"),
    WITHIN("within at every point"),
    OVER("over");

    private final String word;

    AsFound(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
