package org.trammel.shop.materials;

import org.jspecify.annotations.Nullable;

/**
 * Where a piece of a lot goes.
 *
 * @param serial stored serial of the frame, without its part
 * @param part part of the frame, such as FT; empty for the frame itself
 * @param metal metal of the frame; {@link #NO_FRAME} where it is used on no frame, as in a station's daily check
 * @param process TIG or BRAZE; null if not known, then any process the table allows will do
 * @param operation code of the operation it is used at; may be empty
 * @param position what it becomes or joins, such as DT or HT/DT
 */
public record Destination(
        String serial, String part, String metal, @Nullable String process, String operation, String position) {

    /** Metal of what is no frame. */
    public static final String NO_FRAME = "ANY";
}
