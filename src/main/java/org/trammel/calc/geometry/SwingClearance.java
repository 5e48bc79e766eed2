package org.trammel.calc.geometry;

import java.util.function.DoubleUnaryOperator;

/**
 * What stays free beside a tube of the frame while the rear end swings.
 *
 * <pre>
 * tyre    |axle(s) − axis| − tyre radius − D/2
 * shock   |shock's line(s) − axis| − shock outside/2 − D/2
 * </pre>
 *
 * |… − axis| is the least distance to the tube's axis from end to end, in the middle plane; D the tube's outside, mm.
 * Below 0 by how far they meet. Over the travel the least is looked for at 400 even steps and narrowed down between the
 * two next to it: within 1e-6 mm for a single dip, which a swing past a straight tube has.
 *
 * <p>Validity: side view, round and straight tube, a tyre of one radius; what bends or flexes is not in it. Source:
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

    /** Of the shock, the least over the travel. */
    public static SwingClearance leastOfShock(Suspension suspension, Axis tube, double shockOutside_mm) {
        Swing swing = suspension.swing();
        return least(
                swing.travel_mm(),
                travel -> distance_mm(
                                swing.carried(suspension.armEye(), travel),
                                suspension.frameEye(),
                                tube.from(),
                                tube.to())
                        - shockOutside_mm / 2
                        - tube.outside_mm() / 2);
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
