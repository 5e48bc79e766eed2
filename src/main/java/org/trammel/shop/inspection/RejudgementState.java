package org.trammel.shop.inspection;

/** Where a re-judgement stands. */
public enum RejudgementState {
    JUDGING("being judged"),
    OPEN("open"),
    CLOSED("closed");

    private final String word;

    RejudgementState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
