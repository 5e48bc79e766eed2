package org.trammel.shop.travellers;

/** What becomes of an operation that was done under a revision now replaced. */
public enum Carry {
    STILL_VALID("still valid"),
    REPEAT("repeat"),
    /** The part made there is scrapped; the operation is done again on a new one. */
    SCRAP_PART("scrap part"),
    /** Kept although the new revision differs, by a signed concession. */
    CONCESSION("keep by concession");

    private final String word;

    Carry(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    boolean keeps() {
        return this == STILL_VALID || this == CONCESSION;
    }
}
