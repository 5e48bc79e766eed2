package org.trammel.calc.geometry;

/**
 * The part of a dropout that a stay's slot takes in. It stands upright along the frame, parallel to the middle plane.
 *
 * @param thickness_mm of the plate
 * @param play_mm how much wider the slot is
 * @param depth_mm of the slot, along the stay
 */
public record DropoutPlate(double thickness_mm, double play_mm, double depth_mm) {

    void check(Objections objections) {
        objections
                .length("plate.thickness", "dropout plate's thickness", thickness_mm)
                .lengthOrNone("plate.play", "play of the slot", play_mm)
                .length("plate.depth", "depth of the slot", depth_mm);
    }
}
