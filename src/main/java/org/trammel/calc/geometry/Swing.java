package org.trammel.calc.geometry;

import org.trammel.calc.units.Answer;

/**
 * A rear axle that swings about one pivot.
 *
 * <pre>
 * r = |axle − pivot|                       sin α(s) = (y axle + s − y pivot) / r
 * axle(s) = pivot + r (−cos α, sin α)      rotation φ(s) = α(s) − α(0), clockwise as the axle rises, front to the right
 * </pre>
 *
 * s travel: how far the axle has risen, upright to the ground line and not along its arc, mm.
 *
 * <p>Validity: an axle that stays behind its pivot, so that it rises as long as the arm turns. Accuracy: double precision.
 * Source: a point on a circle.
 *
 * @param pivot centre of the main pivot
 * @param axle centre of the rear axle with nothing on the frame
 * @param travel_mm s at the end
 */
public record Swing(Point pivot, Point axle, double travel_mm) {

    /** Looks whether the axle can swing so far. */
    public static Answer<Swing> of(Point pivot, Point axle, double travel_mm) {
        Asked asked = new Asked();
        place(asked, "pivot", "pivot", pivot);
        place(asked, "axle", "rear axle", axle);
        asked.above0("travel", "travel", travel_mm, " mm");
        if (!asked.met()) {
            return asked.refusal();
        }
        Swing swing = new Swing(pivot, axle, travel_mm);
        double radius = swing.radius_mm();
        if (!(radius > 0) || !Double.isFinite(radius)) {
            return Answer.none(
                    "pivot",
                    radius > 0
                            ? "The pivot and the rear axle lie too far apart to be computed with."
                            : "The pivot lies on the rear axle: nothing swings.");
        }
        double behind = pivot.x_mm() - axle.x_mm();
        if (!(behind > 0)) {
            return Answer.none(
                    "pivot",
                    "The pivot does not lie ahead of the rear axle: it lies " + Asked.written(-behind, " mm")
                            + " behind it.");
        }
        double most = radius - swing.above_mm(0);
        if (!(travel_mm < most)) {
            return Answer.none(
                    "travel",
                    "The travel of " + Asked.written(travel_mm, " mm") + " is more than the swing can give: with "
                            + Asked.written(radius, " mm") + " from pivot to axle it ends below "
                            + Asked.written(most, " mm") + ".");
        }
        return Answer.of(swing);
    }

    static void place(Asked asked, String input, String what, Point point) {
        asked.number(input, "place of the " + what + " ahead of the shell", point.x_mm());
        asked.number(input, "place of the " + what + " above the shell", point.y_mm());
    }

    /** r, from pivot to axle. */
    public double radius_mm() {
        return axle.distance_mm(pivot);
    }

    private double above_mm(double travel_mm) {
        return axle.y_mm() + travel_mm - pivot.y_mm();
    }

    /** Axle behind the pivot along the ground, at a travel; also how fast the axle rises as the arm turns, mm per radian. */
    double behind_mm(double travel_mm) {
        double above = above_mm(travel_mm);
        return Math.sqrt((radius_mm() - above) * (radius_mm() + above));
    }

    /** φ at a travel from 0 to its end. */
    public double rotation_rad(double travel_mm) {
        return Math.atan2(above_mm(travel_mm), behind_mm(travel_mm)) - Math.atan2(above_mm(0), behind_mm(0));
    }

    /** The axle at a travel from 0 to its end. */
    public Point axleAt(double travel_mm) {
        return new Point(pivot.x_mm() - behind_mm(travel_mm), axle.y_mm() + travel_mm);
    }

    /** Where a point of the swinging part is at a travel, told by where it is at none. */
    public Point carried(Point atRest, double travel_mm) {
        double rotation = rotation_rad(travel_mm);
        Point arm = atRest.minus(pivot);
        double cos = Math.cos(rotation);
        double sin = Math.sin(rotation);
        return pivot.plus(new Point(arm.x_mm() * cos + arm.y_mm() * sin, -arm.x_mm() * sin + arm.y_mm() * cos));
    }
}
