package org.trammel.shop.materials;

/** Where a lot stands. Being past its date is no state: it follows from the date. */
public enum LotState {
    QUARANTINED("quarantined"),
    RELEASED("released"),
    /** Something is wrong with it, or may be; what it went into is held. */
    BLOCKED("blocked"),
    USED_UP("used up");

    private final String word;

    LotState(String word) {
        this.word = word;
    }

    /** The state in the shop's words. */
    public String word() {
        return word;
    }
}
