package org.trammel.shop.routes;

/** What a clock does to the operations it names. */
public enum ClockKind {
    /** Their work must begin before it runs out, by the first step that cannot be undone; then they are closed. */
    WINDOW,
    /** They stay shut until it has run out. */
    WAIT
}
