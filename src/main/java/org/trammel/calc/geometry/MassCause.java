package org.trammel.calc.geometry;

/** One thing gone otherwise than drawn that would change a frame's mass. */
public sealed interface MassCause {

    /**
     * Tubes of another wall than the drawing's, one wall from end to end.
     *
     * @param wall_mm the wall they would have
     * @param count how many of the tubes alike would have it
     */
    record OtherWall(FramePart.Tube tube, double wall_mm, int count) implements MassCause {}

    /** One of the pieces is not there. */
    record Missing(FramePart.Pieces pieces) implements MassCause {}

    /** One of the pieces is there twice. */
    record Doubled(FramePart.Pieces pieces) implements MassCause {}

    /**
     * More weld than usual, or less.
     *
     * @param mass_kg as much as would be there
     */
    record OtherWeld(FramePart.Weld weld, double mass_kg) implements MassCause {}
}
