package org.trammel.shop.ovens;

/** Where the trace of a thermocouple stands. */
enum OvenTraceState {
    OPEN,
    CLOSED
}
