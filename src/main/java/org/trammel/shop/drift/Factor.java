package org.trammel.shop.drift;

/** What may have a hand in what a frame reads, and what a chart may follow. */
public enum Factor {
    JIG("jig"),
    WELDER("welder"),
    /** Lots of tube the piece was cut from. */
    TUBE_SET("tube set");

    private final String word;

    Factor(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
