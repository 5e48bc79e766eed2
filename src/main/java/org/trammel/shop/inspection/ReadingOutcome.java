package org.trammel.shop.inspection;

/** What becomes of one reading. */
public enum ReadingOutcome {
    CLEARED("cleared by calculation", "conforming"),
    MEASURE_AGAIN("measure again", "undecided");

    private final String word;
    private final String mark;

    ReadingOutcome(String word, String mark) {
        this.word = word;
        this.mark = mark;
    }

    public String word() {
        return word;
    }

    /** Kind of the mark that goes with the word. */
    public String mark() {
        return mark;
    }
}
