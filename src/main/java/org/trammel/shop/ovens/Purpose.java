package org.trammel.shop.ovens;

/** What a programme is for. */
public enum Purpose {
    SOLUTION("solution treatment"),
    AGEING("artificial ageing"),
    /** What an age fell short of, made up for. */
    TOP_UP("top-up of an age"),
    /** A bake of a coat. */
    CURE("cure of a coat"),
    /** Drying and whatever else heats a frame. */
    OTHER("drying and other heat");

    private final String word;

    Purpose(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Whether the QA lead releases its runs; a cure is released by an independent second person. */
    public boolean releasedByQa() {
        return this == SOLUTION || ages();
    }

    /** Whether it ages a frame: from the start or by what was missing. */
    public boolean ages() {
        return this == AGEING || this == TOP_UP;
    }

    /** Whether it adds to what an aged frame has seen, and does not begin its age anew. */
    public boolean addsToTheLedger() {
        return this == TOP_UP || !releasedByQa();
    }
}
