package org.trammel.shop.nonconformance;

/** Where a nonconformance stands. */
public enum NonconformanceState {
    OPEN("to decide"),
    /** A decision is put forward; somebody must still agree. */
    PROPOSED("to agree"),
    DECIDED("decided"),
    CLOSED("closed");

    private final String word;

    NonconformanceState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
