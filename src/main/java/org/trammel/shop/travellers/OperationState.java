package org.trammel.shop.travellers;

/** Where an operation of one frame stands. */
public enum OperationState {
    WAITING("waiting"),
    IN_WORK("in work"),
    /** Work was broken off with a reason and not yet taken up again. */
    STOPPED("stopped"),
    /** The part is with somebody outside and not yet booked back. */
    AWAY("away"),
    /** The work is done; the hold or witness point is not signed. */
    AT_POINT("hold point"),
    DONE("done"),
    /** Done or broken off, and done over by a later loop. */
    REPEATED("repeated");

    private final String word;

    OperationState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    boolean past() {
        return this == DONE || this == REPEATED;
    }
}
