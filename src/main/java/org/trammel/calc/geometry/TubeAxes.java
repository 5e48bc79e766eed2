package org.trammel.calc.geometry;

import org.trammel.calc.units.Answer;

/**
 * The axes of top tube and down tube in the middle plane, and the angles they make.
 *
 * <pre>
 * TT/HT = head tube top + u · d       DT/HT = head tube bottom − w · d     d down the steering axis
 * TT/ST = seat tube top − v · s       the down tube ends in the shell's centre     s up the seat tube
 * angle of a, b = atan2(|a × b|, a · b)
 * </pre>
 *
 * Every angle is the interior one of the front triangle, 0 to π, never folded to its acute side. Source: plane
 * trigonometry. Accuracy that of double precision.
 *
 * @param geometry the frame
 * @param topTubeAtHead where top tube and head tube meet
 * @param downTubeAtHead where down tube and head tube meet
 * @param topTubeAtSeat where top tube and seat tube meet
 */
public record TubeAxes(FrameGeometry geometry, Point topTubeAtHead, Point downTubeAtHead, Point topTubeAtSeat) {

    /** Nearer than this two nodes are one, and no tube has a direction between them. */
    private static final double SHORTEST_MM = 1;

    /** Finds the nodes; without an answer where a place lies outside its tube or an axis has no length. */
    public static Answer<TubeAxes> of(FrameGeometry geometry, JointPlaces places) {
        Layout layout = geometry.layout();
        Objections objections = new Objections();
        onTube(
                objections,
                "topTubeAtHead",
                "top tube",
                "below the top of the head tube",
                places.topTubeAtHead_mm(),
                "head tube",
                layout.headTube_mm());
        onTube(
                objections,
                "downTubeAtHead",
                "down tube",
                "above the bottom of the head tube",
                places.downTubeAtHead_mm(),
                "head tube",
                layout.headTube_mm());
        onTube(
                objections,
                "topTubeAtSeat",
                "top tube",
                "below the top of the seat tube",
                places.topTubeAtSeat_mm(),
                "seat tube",
                layout.seatTube_mm());
        return objections.orElse(() -> {
            Point down = geometry.down();
            TubeAxes axes = new TubeAxes(
                    geometry,
                    geometry.headTubeTop().plus(down.times(places.topTubeAtHead_mm())),
                    geometry.headTubeBottom().minus(down.times(places.downTubeAtHead_mm())),
                    geometry.seatTubeTop().minus(geometry.seatTubeUp().times(places.topTubeAtSeat_mm())));
            return new Objections()
                    .unless(
                            axes.topTube_mm() >= SHORTEST_MM,
                            "topTubeAtSeat",
                            () -> "The top tube would have no length:"
                                    + " its places on head tube and seat tube are the same point.")
                    .unless(
                            axes.downTube_mm() >= SHORTEST_MM,
                            "downTubeAtHead",
                            () -> "The down tube would have no"
                                    + " length: its place on the head tube is the shell's centre.")
                    .orElse(() -> Answer.of(axes));
        });
    }

    private static void onTube(
            Objections objections,
            String input,
            String tube,
            String where,
            double place_mm,
            String mate,
            double length_mm) {
        objections.unless(
                place_mm >= 0 && place_mm <= length_mm,
                input,
                () -> "The " + tube + " "
                        + Objections.shown(place_mm) + " " + where + " is not on the " + mate + ", which is "
                        + Objections.shown(length_mm) + " long.");
    }

    /** From head tube to seat tube, axis to axis. */
    public double topTube_mm() {
        return topTubeAtHead.distance_mm(topTubeAtSeat);
    }

    /** From the shell's centre to the head tube's axis. */
    public double downTube_mm() {
        return downTubeAtHead.distance_mm(FrameGeometry.SHELL);
    }

    /** Between the places of the two tubes on the head tube's axis; below 0 where the down tube sits above the top tube. */
    public double betweenHeadNodes_mm() {
        return downTubeAtHead.minus(topTubeAtHead).dot(geometry.down());
    }

    /** How much the top tube rises ahead, against the ground line. */
    public double topTubeSlope_rad() {
        return rise_rad(topTubeAtHead.minus(topTubeAtSeat));
    }

    /** How much the down tube rises ahead, against the ground line. */
    public double downTubeSlope_rad() {
        return rise_rad(downTubeAtHead);
    }

    /** Between top tube and the head tube below it. */
    public double topTubeToHeadTube_rad() {
        return angle_rad(topTubeAtSeat.minus(topTubeAtHead), geometry.down());
    }

    /** Between down tube and the head tube above it. */
    public double downTubeToHeadTube_rad() {
        return angle_rad(downTubeAtHead, geometry.down());
    }

    /** Between top tube and the seat tube below it. */
    public double topTubeToSeatTube_rad() {
        return angle_rad(topTubeAtSeat.minus(topTubeAtHead), geometry.seatTubeUp());
    }

    /** Between down tube and seat tube at the shell. */
    public double downTubeToSeatTube_rad() {
        return angle_rad(downTubeAtHead, geometry.seatTubeUp());
    }

    private static double rise_rad(Point ahead) {
        return Math.atan2(ahead.y_mm(), ahead.x_mm());
    }

    static double angle_rad(Point one, Point other) {
        return Math.atan2(Math.abs(one.cross(other)), one.dot(other));
    }
}
