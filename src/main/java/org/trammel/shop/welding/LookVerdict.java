package org.trammel.shop.welding;

/** What a look at a node came to. */
public enum LookVerdict {
    CONFORMING("conforming", "conforming"),
    NOT_CONFORMING("not conforming", "not-conforming"),
    /** The table of limits does not speak of it. */
    UNDECIDED("undecided", "undecided");

    private final String word;
    private final String mark;

    LookVerdict(String word, String mark) {
        this.word = word;
        this.mark = mark;
    }

    public String word() {
        return word;
    }

    public String mark() {
        return mark;
    }
}
