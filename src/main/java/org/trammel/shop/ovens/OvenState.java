package org.trammel.shop.ovens;

/** Whether an oven is used at all; whether it may be loaded today is another question. */
public enum OvenState {
    IN_USE("in use"),
    BLOCKED("blocked"),
    RETIRED("retired");

    private final String word;

    OvenState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
