package org.trammel.shop.routes;

/** What a clock does to the operations it names. */
public enum ClockKind {
    /** They must begin before it runs out; then they are closed. */
    WINDOW,
    /** They stay shut until it has run out. */
    WAIT
}
