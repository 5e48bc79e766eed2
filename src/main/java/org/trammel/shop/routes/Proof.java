package org.trammel.shop.routes;

/** What a step rests on besides the tick, recorded on a sheet of its own before the step can be ticked. */
public enum Proof {
    /** The serial is struck here; a second person reads it back at a later step. */
    SERIAL_STRUCK("the serial is struck here"),
    /** Somebody who did not strike the serial keys what is read from the metal. */
    SERIAL_READ("the serial is read back by a second person"),
    /** Cleaner and cloth were scanned, and are kept for the metal. */
    CLEANED("cleaner and cloth are scanned"),
    /** A brush or file was scanned, and is kept for the metal. */
    BRUSHED("a brush or file is scanned"),
    /** Air and metal were measured: the metal is warm enough and far enough above the dew point. */
    WARM_DRY("the metal is measured, warm and dry"),
    /** Water was seen to run off in one film; where it broke, the parts are cleaned again. */
    WATER_BREAK("the water film is seen to hold"),
    /** Each tube was issued to its own place of the frame, from a lot that holds the tube of the drawing. */
    TUBES("every tube is issued to its place");

    private final String words;

    Proof(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
