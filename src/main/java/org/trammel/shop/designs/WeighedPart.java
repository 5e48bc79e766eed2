package org.trammel.shop.designs;

import java.util.Map;
import org.trammel.shop.routes.Kinds;

/** What is put on the scale by itself. */
public enum WeighedPart {
    FRAME("frame"),
    FRONT_TRIANGLE("front triangle"),
    SWING_ARM("swing arm");

    private final String word;

    WeighedPart(String word) {
        this.word = word;
    }

    /** Its name in a sentence. */
    public String word() {
        return word;
    }

    /** Of a design whose rear end swings the front is weighed without it, under whatever route. */
    static WeighedPart of(String kind, Map<String, String> typed) {
        if (kind.equals(Kinds.SWING_ARM)) {
            return SWING_ARM;
        }
        return typed.containsKey(GeometryInput.PIVOT_AHEAD.code()) || kind.equals(Kinds.FULL_SUSPENSION)
                ? FRONT_TRIANGLE
                : FRAME;
    }
}
