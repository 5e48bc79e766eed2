package org.trammel.calc.geometry;

/**
 * Where lines along a tube's outside meet a round mate, found with nothing but the distance of a point from the mate's
 * axis: the line is walked from outside and the crossing is halved in. No formula of the curve is used.
 */
final class CylinderRays {

    private CylinderRays() {}

    /**
     * @param joint tube and mate; the tube's axis is the x axis of this computation
     * @param angle_rad φ of the line
     * @return how far from the foot of the common perpendicular the line enters the mate from the tube's side
     */
    static double setback_mm(Joint joint, double angle_rad) {
        double a = joint.tube().inPlane_mm() / 2 * Math.cos(angle_rad);
        double b = joint.tube().acrossPlane_mm() / 2 * Math.sin(angle_rad);
        double far = 4000;
        double step = 0.01;
        double along = far;
        // coarse first: nowhere nearer to the mate's axis than its radius allows a step that long
        while (along > -far) {
            double gap = distance(joint, along, a, b) - joint.mateOutside_mm() / 2;
            if (gap <= 0) {
                break;
            }
            along -= Math.max(step, gap * 0.999);
        }
        double inside = along;
        double outside = along + far;
        // the line enters the mate once from this side, so halving between a point outside and this one finds it
        for (int i = 0; i < 200; i++) {
            double middle = (inside + outside) / 2;
            if (distance(joint, middle, a, b) <= joint.mateOutside_mm() / 2) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return inside;
    }

    /** From the point (x, a, b) to the mate's axis, which goes through (0, 0, −e) in the direction (cos θ, sin θ, 0). */
    private static double distance(Joint joint, double x, double a, double b) {
        double[] point = {x, a, b + joint.offset_mm()};
        double[] direction = {Math.cos(joint.includedAngle_rad()), Math.sin(joint.includedAngle_rad()), 0};
        double along = point[0] * direction[0] + point[1] * direction[1];
        double square = 0;
        for (int i = 0; i < 3; i++) {
            double off = point[i] - along * direction[i];
            square += off * off;
        }
        return Math.sqrt(square);
    }
}
