package org.trammel.shop.people;

/** The two places at a tablet: who does the work, and who stands by to witness it. */
public enum Place {
    DOER,
    SECOND
}
