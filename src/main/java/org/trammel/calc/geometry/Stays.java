package org.trammel.calc.geometry;

import org.trammel.calc.units.Answer;

/**
 * Chainstay and seatstay in space, each from the surface of its front mate to where its tube ends before the axle.
 *
 * <pre>
 * chainstay: side = CS − shell outside / 2 − g      Δz = axle width / 2 + o − m
 * seatstay:  side = |node − axle| − g               Δz = axle width / 2 + o − seat tube outside / 2
 * </pre>
 *
 * CS chainstay in the middle plane; g from the axle to the stay's end; o the stay's axis outside the axle's face; m the
 * chainstay from the middle plane at the shell. The seatstay begins at the side of the seat tube. Source: space
 * trigonometry; straight stays that lie over their lines of the side view. Accuracy that of double precision.
 *
 * @param chainstay of the drive side
 * @param seatstay of the drive side
 * @param atAxle_rad between both in the side view, at the axle
 * @param toSeatTube_rad between seatstay and the seat tube below it, in the side view
 */
public record Stays(Stay chainstay, Stay seatstay, double atAxle_rad, double toSeatTube_rad) {

    /** Places the stays; without an answer where one has no length or a place cannot be. */
    public static Answer<Stays> of(FrameGeometry geometry, StayPlaces places) {
        Objections objections = new Objections();
        places.check(objections, geometry.layout());
        return objections.orElse(() -> {
            Point node = geometry.seatTubeTop().minus(geometry.seatTubeUp().times(places.seatstayAtSeat_mm()));
            Point axle = geometry.rearAxle();
            double chain =
                    axle.distance_mm(FrameGeometry.SHELL) - places.shellOutside_mm() / 2 - places.axleToStay_mm();
            double seat = axle.distance_mm(node) - places.axleToStay_mm();
            return new Objections()
                    .unless(
                            chain > 0,
                            "axleToStay",
                            () -> "Between shell and dropout no room is left for the chainstay's tube: it would be "
                                    + Objections.shown(chain) + " long in the side view.")
                    .unless(
                            seat > 0,
                            "axleToStay",
                            () -> "Between seat tube and dropout no room is left for the seatstay's tube: it would be "
                                    + Objections.shown(seat) + " long in the side view.")
                    .orElse(() -> Answer.of(placed(geometry, places, node)));
        });
    }

    private static Stays placed(FrameGeometry geometry, StayPlaces places, Point node) {
        Point axle = geometry.rearAxle();
        double rear_mm = places.axleWidth_mm() / 2 + places.outsideFace_mm();
        Point back = unit(axle);
        Point fall = unit(axle.minus(node));
        return new Stays(
                new Stay(
                        SpacePoint.of(back.times(places.shellOutside_mm() / 2), places.chainstayFromMiddle_mm()),
                        SpacePoint.of(axle.minus(back.times(places.axleToStay_mm())), rear_mm)),
                new Stay(
                        SpacePoint.of(node, places.seatTubeOutside_mm() / 2),
                        SpacePoint.of(axle.minus(fall.times(places.axleToStay_mm())), rear_mm)),
                TubeAxes.angle_rad(axle, axle.minus(node)),
                TubeAxes.angle_rad(axle.minus(node), geometry.seatTubeUp().times(-1)));
    }

    private static Point unit(Point vector) {
        return vector.times(1 / vector.length_mm());
    }
}
