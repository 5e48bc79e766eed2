package org.trammel.shop.routes;

/** What kind of gate stands at the end of an operation. */
public enum Point {
    /** No gate: the operation is finished when its steps are ticked. */
    NONE,
    /** Work may not pass until everybody named has signed. */
    HOLD,
    /** Somebody is invited to watch; work may pass when the waiting time of the shop is over and nobody came. */
    WITNESS
}
