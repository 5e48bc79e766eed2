package org.trammel.shop.routes;

/** In which capacity somebody signs an operation or a characteristic. */
public enum Signer {
    /** Whoever did the work. */
    WORKER,
    /** An independent second person: never one of those who did the work. */
    SECOND,
    /** An aligner authorised for cold-set. */
    ALIGNER,
    /** The QA lead. */
    QA,
    /** The owner. */
    OWNER,
    /** Whoever runs the ovens. */
    HEAT_TREATER
}
