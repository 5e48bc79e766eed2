package org.trammel.shop.welding;

/** Where a procedure stands: drafted, in force by the QA lead, taken over by a later revision. */
public enum ProcedureState {
    DRAFT("draft", "waiting"),
    IN_FORCE("in force", "done"),
    SUPERSEDED("superseded", "caution");

    private final String word;
    private final String mark;

    ProcedureState(String word, String mark) {
        this.word = word;
        this.mark = mark;
    }

    public String word() {
        return word;
    }

    /** Kind of the mark beside it. */
    public String mark() {
        return mark;
    }
}
