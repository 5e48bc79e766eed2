package org.trammel.shop.backtraces;

/** What became doubtful of a frame as a thermocouple of its run was found wrong, the worst first. */
public enum TraceOutcome {
    /** In doubt, and it has left the shop. */
    CONTACT_OWNER("contact the owner", "not-conforming"),
    /** In doubt, and held in the shop. */
    HOLD("on hold", "stopped"),
    /** In doubt, and neither in the shop nor with an owner any more. */
    GONE("scrapped since", "waiting"),
    /** Its run conforms whatever the error was. */
    CLEARED("cleared by calculation", "conforming");

    private final String word;
    private final String mark;

    TraceOutcome(String word, String mark) {
        this.word = word;
        this.mark = mark;
    }

    public String word() {
        return word;
    }

    /** Kind of the mark that goes with the word. */
    public String mark() {
        return mark;
    }

    /** Whether somebody says what came of it. */
    public boolean asksForAResult() {
        return this == CONTACT_OWNER || this == HOLD;
    }

    /** Where it stands in a list. */
    int place() {
        return ordinal();
    }
}
