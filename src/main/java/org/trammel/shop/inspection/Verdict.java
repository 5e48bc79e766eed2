package org.trammel.shop.inspection;

/** What a reading says of its characteristic. */
public enum Verdict {
    CONFORMING("conforming"),
    NOT_CONFORMING("not conforming"),
    UNDECIDED("undecided"),
    /** Not judged here: there are no limits, or the value only sorts frames for their deciding operation. */
    NOTED("noted");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
