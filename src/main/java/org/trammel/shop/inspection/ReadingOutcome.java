package org.trammel.shop.inspection;

/** What becomes of one reading; said as it is said of its frame. */
public enum ReadingOutcome {
    CLEARED(FrameOutcome.CLEARED),
    MEASURE_AGAIN(FrameOutcome.MEASURE_AGAIN);

    private final FrameOutcome ofFrame;

    ReadingOutcome(FrameOutcome ofFrame) {
        this.ofFrame = ofFrame;
    }

    public String word() {
        return ofFrame.word();
    }

    /** Kind of the mark that goes with the word. */
    public String mark() {
        return ofFrame.mark();
    }
}
