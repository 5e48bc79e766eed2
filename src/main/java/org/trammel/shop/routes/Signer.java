package org.trammel.shop.routes;

/** In which capacity somebody signs an operation or a characteristic. */
public enum Signer {
    /** Whoever did the work. */
    WORKER("worker"),
    /** An independent second person: never one of those who did the work. */
    SECOND("second person"),
    /** An aligner authorised for cold-set. */
    ALIGNER("aligner"),
    /** The QA lead. */
    QA("QA lead"),
    /** The owner. */
    OWNER("owner"),
    /** Whoever runs the ovens. */
    HEAT_TREATER("heat-treater");

    private final String word;

    Signer(String word) {
        this.word = word;
    }

    /** The word people read. */
    public String word() {
        return word;
    }
}
