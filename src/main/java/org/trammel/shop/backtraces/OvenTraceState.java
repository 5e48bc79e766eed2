package org.trammel.shop.backtraces;

/** Where the trace of a thermocouple stands. */
enum OvenTraceState {
    OPEN,
    CLOSED
}
