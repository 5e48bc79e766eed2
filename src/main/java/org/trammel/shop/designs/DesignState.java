package org.trammel.shop.designs;

/** Where a design revision stands. */
public enum DesignState {
    /** Being drawn: the only state in which anything of it changes. */
    DRAFT("draft"),
    /** With the customer. */
    SENT("sent"),
    /** The customer approved it, for a file with a known hash. */
    APPROVED("approved"),
    /** Owner and QA lead signed the design gate. */
    CHECKED("checked"),
    /** A traveller was made from it. */
    RELEASED("released"),
    /** A later revision took its place. */
    SUPERSEDED("superseded"),
    /** Given up before it was released. */
    WITHDRAWN("withdrawn");

    private final String word;

    DesignState(String word) {
        this.word = word;
    }

    /** The word people read. */
    public String word() {
        return word;
    }
}
