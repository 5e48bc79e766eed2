package org.trammel.calc.geometry;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * What stays free beside a tube of the frame while the rear end swings.
 *
 * <pre>
 * tyre    |axle(s) − axis| − tyre radius − D/2
 * shock   least of |line from eye to eye(s) − axis| − eyes' outside/2 − D/2
 *              and |line of its body(s) − axis| − body's outside/2 − D/2
 * round   |its centre, carried(s) − axis| − outside/2 − D/2
 * sides   greatest of |pivot to an end, carried(s) − axis| − depth/2 − D/2 and (inside − D)/2
 * </pre>
 *
 * Sides: an arm of two sides that stand apart by its inside width may pass a tube in the side view, as long as they pass
 * beside it; it turns about the pivot, so what is left beside the tube is the same at every travel.
 *
 * |… − axis| is the least distance to the tube's axis from end to end, in the middle plane; D the tube's outside, mm.
 * Below 0 by how far they meet. Over the travel the least is looked for at 400 even steps and narrowed down between the
 * two next to it: within 1e-6 mm for a single dip, which a swing past a straight tube has.
 *
 * <p>Validity: side view, round and straight tube, a tyre of one radius, sides of one depth; what bends or flexes is not in
 * it. Source:
 * distance of a point, or of a stretch, from a stretch in the plane.
 *
 * @param clearance_mm the least
 * @param travel_mm where it is
 */
public record SwingClearance(double clearance_mm, double travel_mm) {

    private static final int STEPS = 400;

    /** A tube of the frame in the middle plane. */
    public record Axis(Point from, Point to, double outside_mm) {}

    /** Of the tyre at one travel. */
    public static double tyre_mm(Swing swing, Axis tube, double tyreRadius_mm, double travel_mm) {
        return distance_mm(swing.axleAt(travel_mm), tube.from(), tube.to()) - tyreRadius_mm - tube.outside_mm() / 2;
    }

    /** Of the tyre, the least over the travel. */
    public static SwingClearance leastOfTyre(Swing swing, Axis tube, double tyreRadius_mm) {
        return least(swing.travel_mm(), travel -> tyre_mm(swing, tube, tyreRadius_mm, travel));
    }

    /**
     * A shock as it takes room.
     *
     * @param body_mm outside of its body
     * @param toBody_mm from the centre of either eye to where the body begins
     * @param eyes_mm outside of its eyes with their mounts
     */
    public record ShockShape(double body_mm, double toBody_mm, double eyes_mm) {}

    /** Of the shock, the least over the travel, as if its body reached from eye to eye. */
    public static SwingClearance leastOfShock(Suspension suspension, Axis tube, double shockOutside_mm) {
        return leastOfShock(suspension, tube, new ShockShape(shockOutside_mm, 0, 0));
    }

    /** Of the shock, the least over the travel. A body that two eyes leave no room for is taken to be in the middle. */
    public static SwingClearance leastOfShock(Suspension suspension, Axis tube, ShockShape shape) {
        Swing swing = suspension.swing();
        return least(swing.travel_mm(), travel -> {
            Point moving = swing.carried(suspension.armEye(), travel);
            Point fixed = suspension.frameEye();
            Point along = fixed.minus(moving);
            Point toBody = along.times(Math.min(0.5, shape.toBody_mm() / along.length_mm()));
            double eyes = distance_mm(moving, fixed, tube.from(), tube.to()) - shape.eyes_mm() / 2;
            double body =
                    distance_mm(moving.plus(toBody), fixed.minus(toBody), tube.from(), tube.to()) - shape.body_mm() / 2;
            return Math.min(eyes, body) - tube.outside_mm() / 2;
        });
    }

    /** Of a round part of the swing arm in the middle plane, such as its bridge, the least over the travel. */
    public static SwingClearance leastOfRound(Swing swing, Axis tube, Point atRest, double outside_mm) {
        return least(
                swing.travel_mm(),
                travel -> distance_mm(swing.carried(atRest, travel), tube.from(), tube.to())
                        - outside_mm / 2
                        - tube.outside_mm() / 2);
    }

    /**
     * Of the sides of the swing arm, the least over the travel.
     *
     * @param ends at rest, to each of which a straight side runs from the pivot
     * @param depth_mm of a side in the side view
     * @param inside_mm between the sides
     */
    public static SwingClearance leastOfSides(
            Swing swing, Axis tube, List<Point> ends, double depth_mm, double inside_mm) {
        SwingClearance past = least(
                swing.travel_mm(),
                travel -> ends.stream()
                                .mapToDouble(end ->
                                        distance_mm(swing.pivot(), swing.carried(end, travel), tube.from(), tube.to()))
                                .min()
                                .orElse(Double.POSITIVE_INFINITY)
                        - depth_mm / 2
                        - tube.outside_mm() / 2);
        return new SwingClearance(Math.max(past.clearance_mm(), (inside_mm - tube.outside_mm()) / 2), past.travel_mm());
    }

    private static SwingClearance least(double travel_mm, DoubleUnaryOperator clearance) {
        int at = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= STEPS; i++) {
            double there = clearance.applyAsDouble(travel_mm * i / STEPS);
            if (there < least) {
                least = there;
                at = i;
            }
        }
        double low = travel_mm * Math.max(0, at - 1) / STEPS;
        double high = travel_mm * Math.min(STEPS, at + 1) / STEPS;
        for (int i = 0; i < 60; i++) {
            double third = (high - low) / 3;
            if (clearance.applyAsDouble(low + third) < clearance.applyAsDouble(high - third)) {
                high -= third;
            } else {
                low += third;
            }
        }
        double narrowed = clearance.applyAsDouble((low + high) / 2);
        return narrowed < least
                ? new SwingClearance(narrowed, (low + high) / 2)
                : new SwingClearance(least, travel_mm * at / STEPS);
    }

    private static double distance_mm(Point point, Point from, Point to) {
        Point along = to.minus(from);
        double square = along.dot(along);
        double share = square > 0 ? Math.max(0, Math.min(1, point.minus(from).dot(along) / square)) : 0;
        return point.distance_mm(from.plus(along.times(share)));
    }

    private static double distance_mm(Point a, Point b, Point from, Point to) {
        double sides = Math.signum(b.minus(a).cross(from.minus(a)))
                * Math.signum(b.minus(a).cross(to.minus(a)));
        double others = Math.signum(to.minus(from).cross(a.minus(from)))
                * Math.signum(to.minus(from).cross(b.minus(from)));
        if (sides < 0 && others < 0) {
            return 0;
        }
        return Math.min(
                Math.min(distance_mm(a, from, to), distance_mm(b, from, to)),
                Math.min(distance_mm(from, a, b), distance_mm(to, a, b)));
    }
}
