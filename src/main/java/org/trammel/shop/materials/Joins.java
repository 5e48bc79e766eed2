package org.trammel.shop.materials;

import org.trammel.shop.routes.Kinds;

/** How a frame is joined: what its filler is looked up by. */
public final class Joins {

    private Joins() {}

    /**
     * TIG or BRAZE.
     *
     * @param kind of the frame, as its route has it
     */
    public static String as(String kind) {
        return kind.equals(Kinds.STEEL_FILLET) ? "BRAZE" : "TIG";
    }
}
