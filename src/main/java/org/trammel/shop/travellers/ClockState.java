package org.trammel.shop.travellers;

/** Where a clock of one frame stands. */
public enum ClockState {
    /** Its start has not happened yet. */
    PLANNED,
    RUNNING,
    /** The operation it guards began in time, or the waiting time is over and used. */
    MET,
    /** The window closed before the operation it guards began. */
    RUN_OUT
}
