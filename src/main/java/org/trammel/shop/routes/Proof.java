package org.trammel.shop.routes;

/** What a step rests on besides the tick, recorded on a sheet of its own before the step can be ticked. */
public enum Proof {
    /** The serial is struck here; a second person reads it back at a later step. */
    SERIAL_STRUCK(Sheet.HANDWORK, "the serial is struck here"),
    /** Somebody who did not strike the serial keys what is read from the metal. */
    SERIAL_READ(Sheet.HANDWORK, "the serial is read back by a second person"),
    /** Cleaner and cloth were scanned, and are kept for the metal. */
    CLEANED(Sheet.HANDWORK, "cleaner and cloth are scanned"),
    /** A brush or file was scanned, and is kept for the metal. */
    BRUSHED(Sheet.HANDWORK, "a brush or file is scanned"),
    /** Air and metal were measured: the metal is warm enough and far enough above the dew point. */
    WARM_DRY(Sheet.HANDWORK, "the metal is measured, warm and dry"),
    /** Water was seen to run off in one film; where it broke, the parts are cleaned again. */
    WATER_BREAK(Sheet.HANDWORK, "the water film is seen to hold"),
    /** The node was opened before the arc and closed after it, by a procedure in force. */
    WELDED(Sheet.WELD, "the node is opened and closed by a procedure in force"),
    /** Each node was looked at, by a procedure in force. */
    LOOKED(Sheet.WELD, "each node is looked at by a procedure in force"),
    /** Every fastener of the components is torqued by its own sheet, and witnessed where that asks. */
    TORQUED(Sheet.TORQUE, "every fastener is torqued by its component's sheet"),
    /** What the components' sheets ask for after the ride is torqued again. */
    TORQUED_AGAIN(Sheet.TORQUE, "what the sheets ask for after the ride is torqued again"),
    /** The tags of the parts were scanned together. */
    JOINED(Sheet.BUILD, "the tags of the parts are scanned together"),
    /** Both brakes are bedded to the count of their pads. */
    BEDDED(Sheet.BUILD, "both brakes are bedded to the count of their pads"),
    /** A named rider rode it and signed with the own PIN. */
    RIDDEN(Sheet.BUILD, "whoever rode it signs"),
    /** What the country of the order asks for is there. */
    COUNTRY(Sheet.BUILD, "what the country asks for is ticked one by one"),
    /** Frame, box and paper bear one serial, and the record of the build is whole. */
    PACKED(Sheet.BUILD, "frame, box and paper are scanned together"),
    /** Each tube was issued to its own place of the frame, from a lot that holds the tube of the drawing. */
    TUBES(Sheet.TUBES, "every tube is issued to its place");

    /** Where it is recorded. */
    public enum Sheet {
        HANDWORK,
        WELD,
        TORQUE,
        BUILD,
        TUBES
    }

    private final Sheet sheet;
    private final String words;

    Proof(Sheet sheet, String words) {
        this.sheet = sheet;
        this.words = words;
    }

    public Sheet sheet() {
        return sheet;
    }

    public String words() {
        return words;
    }
}
