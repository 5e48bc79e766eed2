package org.trammel.shop.routes;

/** How a reading is judged against its limits. */
public enum Rule {
    /** The doubt of the gauge is taken off the tolerance on both sides: conforming, undecided, not conforming. */
    GUARDED,
    /** The limits as they stand, both included: conforming, not conforming. */
    PLAIN
}
