package org.trammel.calc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.units.Answer;

/**
 * A stay with its bends, or without: what to mark on the straight tube before bending, and in which direction its ends
 * then point.
 *
 * <pre>
 * t = R tan(α / 2)      developed = Σ straight lines between corners − Σ (2 t − R α)
 * </pre>
 *
 * α turn of a bend, R radius of the bent axis, t from the corner to where the bend begins. The axis of a bent tube
 * keeps its length; common practice, the spring-back is the bender's. Accuracy that of double precision.
 *
 * @param chord end to end
 * @param marks a bend each, from the front
 * @param developed_mm length of the straight tube's axis
 * @param atFront direction of the tube at its front end, of length 1, rearward
 * @param atRear direction at its rear end, rearward
 */
public record BentStay(Stay chord, List<Mark> marks, double developed_mm, SpacePoint atFront, SpacePoint atRear) {

    /** A sharper turn is no bend of a stay. */
    private static final double SHARPEST_RAD = Math.PI / 2;

    /**
     * A bend on the straight tube.
     *
     * @param begins_mm from the front end
     * @param arc_mm length that is bent
     * @param turn_rad above 0 where the rear part turns outward
     * @param radius_mm of the axis
     */
    public record Mark(double begins_mm, double arc_mm, double turn_rad, double radius_mm) {}

    public BentStay {
        marks = List.copyOf(marks);
    }

    /** The axis from its front end to its rear end, each bend as a line of so many corners. */
    public List<SpacePoint> axis(int cornersABend) {
        SpacePoint line = chord.rearward();
        SpacePoint outward = SpacePoint.DRIVE_SIDE
                .minus(line.times(SpacePoint.DRIVE_SIDE.dot(line)))
                .unit();
        double heading = Math.atan2(atFront.dot(outward), atFront.dot(line));
        SpacePoint at = chord.front();
        List<SpacePoint> axis = new ArrayList<>(List.of(at));
        double along = 0;
        for (Mark mark : marks) {
            at = at.plus(pointing(line, outward, heading).times(mark.begins_mm() - along));
            axis.add(at);
            for (int i = 0; i < cornersABend; i++) {
                double turn = mark.turn_rad() / cornersABend;
                double chordOfTurn = 2 * mark.radius_mm() * Math.sin(Math.abs(turn) / 2);
                at = at.plus(pointing(line, outward, heading + turn / 2).times(chordOfTurn));
                axis.add(at);
                heading += turn;
            }
            along = mark.begins_mm() + mark.arc_mm();
        }
        axis.add(chord.rear());
        return axis;
    }

    private static SpacePoint pointing(SpacePoint line, SpacePoint outward, double heading_rad) {
        return line.times(Math.cos(heading_rad)).plus(outward.times(Math.sin(heading_rad)));
    }

    /** Bends a stay; without an answer where corners are out of order or bends run into each other or past an end. */
    public static Answer<BentStay> of(Stay chord, List<StayBend> bends) {
        Objections objections = new Objections();
        double before = 0;
        for (StayBend bend : bends) {
            double after = before;
            objections
                    .unless(
                            bend.along_mm() > after && bend.along_mm() < chord.length_mm(),
                            "along",
                            () -> "The bend at " + Objections.shown(bend.along_mm()) + " is not between "
                                    + Objections.shown(after) + " and the stay's end at "
                                    + Objections.shown(chord.length_mm()) + ".")
                    .distance("outward", "bend's way off the straight line", bend.outward_mm())
                    .lengthOrNone("radius", "radius of the bend", bend.radius_mm());
            before = bend.along_mm();
        }
        return objections.orElse(() -> bent(chord, bends));
    }

    private static Answer<BentStay> bent(Stay chord, List<StayBend> bends) {
        SpacePoint line = chord.rearward();
        SpacePoint outward = SpacePoint.DRIVE_SIDE
                .minus(line.times(SpacePoint.DRIVE_SIDE.dot(line)))
                .unit();
        List<SpacePoint> parts = new ArrayList<>();
        SpacePoint from = chord.front();
        for (StayBend bend : bends) {
            SpacePoint corner = chord.front().plus(line.times(bend.along_mm())).plus(outward.times(bend.outward_mm()));
            parts.add(corner.minus(from));
            from = corner;
        }
        parts.add(chord.rear().minus(from));
        Objections objections = new Objections();
        List<Mark> marks = new ArrayList<>();
        double along = 0;
        double used = 0;
        for (int i = 0; i < bends.size(); i++) {
            SpacePoint part = parts.get(i);
            SpacePoint next = parts.get(i + 1);
            double radius = bends.get(i).radius_mm();
            double turn = part.angleTo_rad(next);
            double tangent = radius * Math.tan(Math.min(turn, SHARPEST_RAD) / 2);
            double straight = part.length_mm() - used - tangent;
            int number = i + 1;
            objections
                    .unless(
                            turn <= SHARPEST_RAD,
                            "outward",
                            () -> "Bend " + number + " turns by " + Written.degrees(turn) + ", more than 90°.")
                    .unless(
                            straight >= 0,
                            "radius",
                            () -> "Bend " + number + " with a radius of "
                                    + Objections.shown(radius) + " begins " + Objections.shown(-straight)
                                    + " before the straight part ahead of it.");
            along += straight;
            double sense = next.unit().dot(outward) >= part.unit().dot(outward) ? 1 : -1;
            marks.add(new Mark(along, radius * turn, sense * turn, radius));
            along += radius * turn;
            used = tangent;
        }
        double last = parts.get(bends.size()).length_mm() - used;
        objections.unless(
                last >= 0,
                "radius",
                () -> "The last bend runs " + Objections.shown(-last) + " past the end of the stay.");
        double developed = along + last;
        return objections.orElse(() -> Answer.of(new BentStay(
                chord,
                marks,
                developed,
                parts.get(0).unit(),
                parts.get(bends.size()).unit())));
    }
}
