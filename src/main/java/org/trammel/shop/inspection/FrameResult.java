package org.trammel.shop.inspection;

/** What came of a frame that was not cleared. */
public enum FrameResult {
    /** Every reading in doubt was read again with another gauge; a new verdict did what it does anywhere. */
    MEASURED_AGAIN("measured again"),
    /** What cannot be measured any more was decided otherwise, with the reason in words. */
    DECIDED("decided without measuring"),
    OWNER_CONTACTED("owner contacted");

    private final String word;

    FrameResult(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
