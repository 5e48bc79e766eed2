package org.trammel.shop.coats;

/** What film or look are by what the finish asks. */
public enum CoatVerdict {
    CONFORMING("conforming", "conforming"),
    UNDECIDED("undecided", "undecided"),
    NOT_CONFORMING("not conforming", "not-conforming");

    private final String word;
    private final String mark;

    CoatVerdict(String word, String mark) {
        this.word = word;
        this.mark = mark;
    }

    public String word() {
        return word;
    }

    /** The mark that goes with the word. */
    public String mark() {
        return mark;
    }
}
