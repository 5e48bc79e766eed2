package org.trammel.shop.records;

import org.trammel.calc.marks.SerialNumber;

/**
 * Names of the chains of the log: one for each frame, children included, and one for acts that belong to no frame. One
 * global chain would make every tick of the shop wait for every other.
 */
public final class Chains {

    /** Acts that belong to no frame: people, gauges, lots, settings, routes. */
    public static final String SHOP = "shop";

    private Chains() {}

    /**
     * Chain of a frame.
     *
     * @param serial the frame's serial without a part suffix, such as AB270423
     */
    public static String frame(String serial) {
        return "frame:" + serial;
    }

    /**
     * Chain of what bears a serial: a frame has one of its own. A station check bears a name instead, and belongs to no
     * frame.
     */
    public static String bearing(String serial) {
        return SerialNumber.read(serial) instanceof SerialNumber.Result.Whole ? frame(serial) : SHOP;
    }

    /** Chain of an order before it has a frame. */
    public static String order(String number) {
        return "order:" + number;
    }
}
