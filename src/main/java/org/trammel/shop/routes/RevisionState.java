package org.trammel.shop.routes;

/** Where a revision of a route stands. */
public enum RevisionState {
    DRAFT("draft"),
    RELEASED("released"),
    SUPERSEDED("superseded"),
    WITHDRAWN("withdrawn");

    private final String word;

    RevisionState(String word) {
        this.word = word;
    }

    /** As it is said on screens and in refusals. */
    public String word() {
        return word;
    }
}
