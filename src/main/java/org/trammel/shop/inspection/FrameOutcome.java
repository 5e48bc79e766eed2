package org.trammel.shop.inspection;

/** What the readings of a frame come to when they are judged again, the worst first. */
public enum FrameOutcome {
    /** Not cleared, and the frame has left the shop. */
    CONTACT_OWNER("contact the owner", "not-conforming"),
    MEASURE_AGAIN("measure again", "undecided"),
    CLEARED("cleared by calculation", "conforming");

    private final String word;
    private final String mark;

    FrameOutcome(String word, String mark) {
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

    /** Where it stands in a list. */
    int place() {
        return ordinal();
    }
}
