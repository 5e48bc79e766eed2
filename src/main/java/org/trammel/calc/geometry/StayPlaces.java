package org.trammel.calc.geometry;

/**
 * What places the stays of a rear triangle, beside its geometry.
 *
 * @param seatstayAtSeat_mm below the top of the seat tube, along its axis
 * @param chainstayFromMiddle_mm chainstay's axis at the shell's surface, from the middle plane
 * @param axleWidth_mm between the faces that hold the hub
 * @param axleToStay_mm from the axle to the end of each stay's tube, along the stay in the side view
 * @param outsideFace_mm the stays' axes at that end, outside the face that holds the hub
 * @param shellOutside_mm diameter
 * @param seatTubeOutside_mm diameter
 */
public record StayPlaces(
        double seatstayAtSeat_mm,
        double chainstayFromMiddle_mm,
        double axleWidth_mm,
        double axleToStay_mm,
        double outsideFace_mm,
        double shellOutside_mm,
        double seatTubeOutside_mm) {

    void check(Objections objections, Layout layout) {
        objections
                .length("chainstayFromMiddle", "chainstay's distance from the middle plane", chainstayFromMiddle_mm)
                .length("axleWidth", "axle width", axleWidth_mm)
                .lengthOrNone("axleToStay", "distance from axle to stay", axleToStay_mm)
                .distance("outsideFace", "distance of the stays outside the axle's face", outsideFace_mm)
                .length("shellOutside", "shell's outside", shellOutside_mm)
                .length("seatTubeOutside", "seat tube's outside", seatTubeOutside_mm)
                .unless(
                        seatstayAtSeat_mm >= 0 && seatstayAtSeat_mm <= layout.seatTube_mm(),
                        "seatstayAtSeat",
                        () -> "The seatstay " + Objections.shown(seatstayAtSeat_mm)
                                + " below the top of the seat tube is not on the seat tube, which is "
                                + Objections.shown(layout.seatTube_mm()) + " long.");
    }
}
