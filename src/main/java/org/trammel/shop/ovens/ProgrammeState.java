package org.trammel.shop.ovens;

/** Where a revision of a programme stands. */
public enum ProgrammeState {
    DRAFT("draft"),
    APPROVED("approved"),
    SUPERSEDED("superseded");

    private final String word;

    ProgrammeState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
