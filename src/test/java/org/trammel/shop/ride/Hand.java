package org.trammel.shop.ride;

/** Somebody of the workshop who can sign on. */
record Hand(long id, String initials, String name) {

    /** The PIN of everybody: whose it is is told by the name that was tapped. */
    static final String PIN = "402817";

    static final String PASSWORD = "quiet lathe under rain";
}
