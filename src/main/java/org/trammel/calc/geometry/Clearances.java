package org.trammel.calc.geometry;

import java.util.List;
import org.trammel.calc.units.Answer;

/**
 * Room around a frame, in the plane of its side view unless said otherwise. Lengths in millimetres; limits are the
 * caller's. Source of the formulas: common practice of frame builders, plane trigonometry.
 */
public final class Clearances {

    private Clearances() {}

    /**
     * A tube that ends on the head tube.
     *
     * @param atHead where its axis meets that of the head tube
     * @param away another point of its axis
     * @param radius_mm outside
     */
    public record TubeAtHead(Point atHead, Point away, double radius_mm) {

        /** Half the length that the tube takes of the head tube's line: radius / sin of the angle between them. */
        double half_mm(FrameGeometry geometry) {
            Point along = away.minus(atHead);
            return radius_mm * along.length_mm() / Math.abs(along.cross(geometry.down()));
        }

        /** Where its axis comes out of the head tube, down from that tube's top along it. */
        double onSurface_mm(FrameGeometry geometry, double headTubeRadius_mm) {
            Point along = away.minus(atHead);
            return atHead.minus(geometry.headTubeTop()).dot(geometry.down())
                    + headTubeRadius_mm * along.dot(geometry.down()) / Math.abs(along.cross(geometry.down()));
        }
    }

    /**
     * Room along the head tube: the edges as they lie on its surface in the side view, which is where the welds are.
     *
     * @param nodes where the axes of top tube and down tube meet it, centre to centre
     * @param toes between the edges of the two tubes, where their welds end
     * @param upperEnd from the top tube's edge to the head tube's upper end
     * @param lowerEnd from the down tube's edge to its lower end
     */
    public record HeadTubeRoom(Clearance nodes, Clearance toes, Clearance upperEnd, Clearance lowerEnd) {}

    /**
     * An end of a frame.
     *
     * @param centre on the axis of its tube
     * @param radius_mm how far tube or dropout reach around it
     */
    public record End(Point centre, double radius_mm) {}

    /**
     * Seatpost in the seat tube.
     *
     * @param mark inserted length against the post's mark
     * @param node inserted length against the top tube's node
     * @param depth inserted length against the depth that is free
     */
    public record SeatpostRoom(Clearance mark, Clearance node, Clearance depth) {}

    /** Rear tyre to seat tube: axle to the tube's axis, square, less wheel radius and tube radius. */
    public static Answer<Clearance> rearTyreToSeatTube(
            FrameGeometry geometry, double seatTubeRadius_mm, double limit_mm) {
        if (!isLength(seatTubeRadius_mm)) {
            return noLength("seatTubeOutside", "seat tube's radius", seatTubeRadius_mm);
        }
        double axis = Math.abs(geometry.seatTubeUp().cross(geometry.rearAxle().minus(geometry.seatTubeFoot())));
        double room = axis - geometry.layout().rearWheelRadius_mm() - seatTubeRadius_mm;
        return judged(Clearance.atLeast(room, limit_mm));
    }

    /** Pedal's axle to front tyre, wheel straight: front centre less wheel radius and crank. */
    public static Answer<Clearance> pedalToFrontTyre(FrameGeometry geometry, double crank_mm, double limit_mm) {
        return isLength(crank_mm)
                ? judged(Clearance.atLeast(
                        geometry.frontCentre_mm() - geometry.layout().frontWheelRadius_mm() - crank_mm, limit_mm))
                : noLength("crank", "crank", crank_mm);
    }

    /**
     * Ground to the top tube's upper surface, square to nothing but the ground.
     *
     * @param atSeat a point of the top tube's axis
     * @param atHead another one ahead of it
     * @param radius_mm outside of the top tube
     * @param ahead_mm of the shell, where the rider stands
     * @param limit_mm what it may be at most
     */
    public static Answer<Clearance> standover(
            FrameGeometry geometry, Point atSeat, Point atHead, double radius_mm, double ahead_mm, double limit_mm) {
        Point along = atHead.minus(atSeat);
        if (!isLength(radius_mm)) {
            return noLength("topTubeOutside", "top tube's radius", radius_mm);
        }
        if (!(along.x_mm() > 0)) {
            return Answer.none("topTubeAtHead", "The top tube does not run ahead.");
        }
        double axis = atSeat.y_mm() + (ahead_mm - atSeat.x_mm()) * along.y_mm() / along.x_mm();
        double surface = radius_mm * along.length_mm() / along.x_mm();
        return judged(Clearance.atMost(geometry.shellHeight_mm() + axis + surface, limit_mm));
    }

    /**
     * Room of top tube and down tube on the head tube.
     *
     * <pre>
     * edges = node + R cot θ ± r / sin θ     down the head tube, on its surface
     * </pre>
     *
     * @param radius_mm R, outside of the head tube
     * @param toes_mm how far apart the welds must end at least
     */
    public static Answer<HeadTubeRoom> headTube(
            FrameGeometry geometry, double radius_mm, TubeAtHead topTube, TubeAtHead downTube, double toes_mm) {
        double top = topTube.half_mm(geometry);
        double down = downTube.half_mm(geometry);
        if (!isLength(radius_mm)) {
            return noLength("headTubeOutside", "head tube's radius", radius_mm);
        }
        if (!isLength(top)) {
            return noLength("topTubeOutside", "top tube's width on the head tube", 2 * top);
        }
        if (!isLength(down)) {
            return noLength("downTubeOutside", "down tube's width on the head tube", 2 * down);
        }
        if (!Double.isFinite(toes_mm)) {
            return Answer.none("toes", "The distance that the welds must keep is no number.");
        }
        double topAt = topTube.onSurface_mm(geometry, radius_mm);
        double downAt = downTube.onSurface_mm(geometry, radius_mm);
        return Answer.of(new HeadTubeRoom(
                Clearance.information(downTube.atHead().minus(topTube.atHead()).dot(geometry.down())),
                Clearance.atLeast(downAt - topAt - top - down, toes_mm),
                Clearance.atLeast(topAt - top, 0),
                Clearance.atLeast(geometry.layout().headTube_mm() - downAt - down, 0)));
    }

    /**
     * How far a seatpost goes in: post length less what stands out, saddle height less seat tube.
     *
     * @param post_mm from its lower end to the saddle's clamp
     * @param mark_mm length that must be inserted at least, by the mark on the post
     * @param saddle_mm from the seat tube's foot to the saddle's clamp, along the axis
     * @param node_mm from the seat tube's top down to the top tube's node
     * @param free_mm from the seat tube's top down to what stops a post
     */
    public static Answer<SeatpostRoom> seatpost(
            FrameGeometry geometry, double post_mm, double mark_mm, double saddle_mm, double node_mm, double free_mm) {
        if (!isLength(post_mm)) {
            return noLength("seatpost", "seatpost", post_mm);
        }
        if (!isLength(saddle_mm)) {
            return noLength("saddleHeight", "saddle height", saddle_mm);
        }
        if (!Double.isFinite(mark_mm) || !Double.isFinite(node_mm) || !Double.isFinite(free_mm)) {
            return Answer.none("seatpost", "A length that the seatpost is compared with is no number.");
        }
        double out = saddle_mm - geometry.layout().seatTube_mm();
        if (out < 0) {
            return Answer.none(
                    "saddleHeight",
                    "The saddle at " + Written.mm(saddle_mm) + " would stand below the seat tube's top at "
                            + Written.mm(geometry.layout().seatTube_mm()) + ".");
        }
        double in = post_mm - out;
        return Answer.of(new SeatpostRoom(
                Clearance.atLeast(in, mark_mm), Clearance.atLeast(in, node_mm), Clearance.atMost(in, free_mm)));
    }

    /** Fork length against the longest that was tested. */
    public static Answer<Clearance> forkLength(FrameGeometry geometry, double longest_mm) {
        return judged(Clearance.atMost(geometry.layout().forkLength_mm(), longest_mm));
    }

    /**
     * The longest straight line of a frame, against what an oven takes: between the centres of two ends and out to what
     * stands around them, so that it is never shorter than the frame.
     */
    public static Answer<Clearance> overallLength(List<End> ends, double oven_mm) {
        double longest = 0;
        for (int i = 0; i < ends.size(); i++) {
            for (int j = i + 1; j < ends.size(); j++) {
                longest = Math.max(
                        longest,
                        ends.get(i).centre().distance_mm(ends.get(j).centre())
                                + ends.get(i).radius_mm()
                                + ends.get(j).radius_mm());
            }
        }
        return isLength(longest)
                ? judged(Clearance.atMost(longest, oven_mm))
                : noLength("nodes", "longest line of the frame", longest);
    }

    private static Answer<Clearance> judged(Clearance clearance) {
        if (Double.isFinite(clearance.limit().orElse(0)) && Double.isFinite(clearance.value_mm())) {
            return Answer.of(clearance);
        }
        return Answer.none("limit", "The limit to compare with is no number.");
    }

    private static boolean isLength(double length_mm) {
        return length_mm > 0 && length_mm <= Dimension.LONGEST_mm;
    }

    private static <T> Answer<T> noLength(String input, String name, double length_mm) {
        return Answer.none(input, "The " + name + " of " + Written.mm(length_mm) + " is no length above 0.");
    }
}
