package org.trammel.calc.geometry;

import org.trammel.calc.units.Answer;

/**
 * The least distance between a pedal's axle, crank level ahead, and the front tyre while the bars are turned. The tyre
 * is a ring of round section that turns with fork and offset about the steering axis:
 *
 * <pre>
 * n(δ) = n cos δ − z sin δ   wheel's centre = foot of the offset + offset · n(δ)   wheel's plane: d, n(δ)
 * distance = √((ρ − (radius − width / 2))² + h²) − width / 2
 * ρ in the wheel's plane from its centre, h from that plane
 * </pre>
 *
 * Source: solid geometry. Found on a grid that is narrowed, to 1e-6 mm. The lean and sinking of the frame while turned
 * is left out.
 *
 * @param distance_mm the least; below 0 where they touch
 * @param steer_rad at which turn of the bars
 */
public record PedalArc(double distance_mm, double steer_rad) {

    private static final int GRID = 32;
    private static final int ROUNDS = 24;

    /**
     * Computes it.
     *
     * @param crank_mm length of the crank
     * @param inner_mm inner end of the pedal's axle from the middle plane
     * @param outer_mm outer end
     * @param tyre_mm width of the tyre
     * @param most_rad how far the bars are turned at most, the tyre's rear towards the pedal
     */
    public static Answer<PedalArc> of(
            FrameGeometry geometry,
            double crank_mm,
            double inner_mm,
            double outer_mm,
            double tyre_mm,
            double most_rad) {
        if (!(crank_mm > 0 && crank_mm < Dimension.LONGEST_mm)) {
            return Answer.none("crank", "The crank of " + Written.mm(crank_mm) + " is no length above 0.");
        }
        if (!(inner_mm >= 0 && outer_mm >= inner_mm && outer_mm < Dimension.LONGEST_mm)) {
            return Answer.none(
                    "pedalAxle",
                    "The pedal's axle from " + Written.mm(inner_mm) + " to " + Written.mm(outer_mm)
                            + " does not run outward.");
        }
        if (!(tyre_mm >= 0 && tyre_mm < 2 * geometry.layout().frontWheelRadius_mm())) {
            return Answer.none("tyreWidth", "The tyre width of " + Written.mm(tyre_mm) + " does not fit its wheel.");
        }
        if (!(most_rad >= 0 && most_rad <= Math.PI / 2)) {
            return Answer.none("steer", "The turn of " + Written.degrees(most_rad) + " is not between 0° and 90°.");
        }
        double turn = most_rad / 2;
        double side = (inner_mm + outer_mm) / 2;
        double turnSpan = most_rad;
        double sideSpan = outer_mm - inner_mm;
        double least = Double.POSITIVE_INFINITY;
        for (int round = 0; round < ROUNDS; round++) {
            double turnFrom = turn;
            double sideFrom = side;
            for (int i = 0; i <= GRID; i++) {
                for (int j = 0; j <= GRID; j++) {
                    double tryTurn = clamp(turnFrom + turnSpan * ((double) i / GRID - 0.5), 0, most_rad);
                    double trySide = clamp(sideFrom + sideSpan * ((double) j / GRID - 0.5), inner_mm, outer_mm);
                    double distance = distance(geometry, crank_mm, trySide, tyre_mm / 2, tryTurn);
                    if (distance < least) {
                        least = distance;
                        turn = tryTurn;
                        side = trySide;
                    }
                }
            }
            turnSpan *= 0.4;
            sideSpan *= 0.4;
        }
        return Answer.of(new PedalArc(least, turn));
    }

    private static double clamp(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }

    private static double distance(FrameGeometry geometry, double crank, double side, double section, double turn) {
        Layout layout = geometry.layout();
        Point down = geometry.down();
        Point ahead = new Point(-down.y_mm(), down.x_mm());
        Point foot = geometry.frontAxle().minus(ahead.times(layout.forkOffset_mm()));
        Point from = new Point(crank, 0).minus(foot);
        double alongDown = from.dot(down);
        double alongAhead = from.dot(ahead);
        double inPlane = alongAhead * Math.cos(turn) - side * Math.sin(turn) - layout.forkOffset_mm();
        double offPlane = side * Math.cos(turn) + alongAhead * Math.sin(turn);
        double ring = Math.hypot(alongDown, inPlane) - (layout.frontWheelRadius_mm() - section);
        return Math.hypot(ring, offPlane) - section;
    }
}
