package org.trammel.shop.travellers;

/** What the newest valid reading said about a characteristic of one frame. */
public enum CharacteristicState {
    OPEN("to be read"),
    /** The first of two people has read it, conforming. */
    FIRST_READ("read by one of two"),
    CONFORMING("conforming"),
    NOT_CONFORMING("not conforming"),
    UNDECIDED("undecided"),
    /** Read where it is not decided, and inside the triage limit. */
    INFORMATION("noted"),
    /** Not conforming, and released by a concession. */
    CONCESSION("concession"),
    /** Recorded on a sheet of its own, by another module, which keeps the gate shut until it is whole there. */
    OWN_SHEET("on its own sheet");

    private final String word;

    CharacteristicState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** True if it no longer keeps its operation open. */
    public boolean settled() {
        return this == CONFORMING || this == INFORMATION || this == CONCESSION || this == OWN_SHEET;
    }
}
