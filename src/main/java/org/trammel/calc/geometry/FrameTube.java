package org.trammel.calc.geometry;

/** A tube that is cut for a frame. Its first end is named first. */
public enum FrameTube {
    /** From head tube to shell. */
    DOWN_TUBE("down tube", "downTube", 1),
    /** From head tube to seat tube. */
    TOP_TUBE("top tube", "topTube", 1),
    /** From shell to its top. */
    SEAT_TUBE("seat tube", "seatTube", 1),
    /** From shell to dropout. */
    CHAINSTAY("chainstay", "chainstay", 2),
    /** From seat tube to dropout. */
    SEATSTAY("seatstay", "seatstay", 2);

    private final String word;
    private final String input;
    private final int count;

    FrameTube(String word, String input, int count) {
        this.word = word;
        this.input = input;
        this.count = count;
    }

    /** Its name in a sentence. */
    public String word() {
        return word;
    }

    /** How many of them a frame has; two are mirror images. */
    public int count() {
        return count;
    }

    String input(String field) {
        return input + "." + field;
    }
}
