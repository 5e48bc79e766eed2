package org.trammel.calc.geometry;

/**
 * Something that can be made and should be looked at first.
 *
 * @param kind what it is about
 * @param words one sentence with the figures
 */
public record Caution(Kind kind, String words) {

    /** What a caution is about. */
    public enum Kind {
        /** Tube and mate are equally wide. */
        FEATHER_EDGE,
        /** The angle is too shallow for a hole saw. */
        SHALLOW_ANGLE,
        /** The wall is so thick that outside and bore need a template each. */
        BORE_TEMPLATE,
        /** No hole saw of the mate's size is at hand. */
        NO_HOLE_SAW,
        /** An end is formed over less than its cut is deep. */
        SHORT_ZONE,
        /** Less of a butt than wanted is left at the weld. */
        SHORT_BUTT,
        /** The tube stands beside its mate and is joined through a part between. */
        BESIDE_MATE,
        /** The slot for the dropout breaks through the side of its stay. */
        SLOT_BREAKS_OUT
    }
}
