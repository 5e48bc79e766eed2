package org.trammel.calc.metrology;

import java.util.List;
import java.util.Optional;

/**
 * Directions ahead and up in the middle plane, laid so that the rear axle lies where the drawing has it.
 *
 * <pre>
 * r = unit(axle − shell), p across it, on the side the head tube rises to;  (a, b) the drawn axle, L its distance
 * ahead = (a r + b p) / L,   up = (b r − a p) / L
 * </pre>
 *
 * so that axle − shell has the drawn direction. Which way is up is told by the head tube, not by which side was called
 * drive side. Valid for an axle behind the shell (a below 0) and a head tube that rises above the line through both.
 */
record SideView(Vec ahead, Vec up) {

    /** Length on which dropouts are judged for parallel; common practice. */
    static final double DROPOUT_MM = 60;

    static SideView of(Vec shell, Vec axle, Vec headUp, Vec normal, double drawnX_mm, double drawnY_mm) {
        Vec r = axle.minus(shell).across(normal).unit();
        Vec across = normal.cross(r);
        Vec p = across.dot(headUp) < 0 ? across.times(-1) : across;
        double length = Math.hypot(drawnX_mm, drawnY_mm);
        return new SideView(
                r.times(drawnX_mm / length).plus(p.times(drawnY_mm / length)),
                r.times(drawnY_mm / length).minus(p.times(drawnX_mm / length)));
    }

    /** Against the horizontal, rising rearwards. */
    double angle_rad(Vec along) {
        return Math.atan2(along.dot(up), -along.dot(ahead));
    }

    /**
     * Centre of the shell in the middle plane: of the circle through the points of its bore, seen along the normal. Where
     * they make no circle it is their mean; that they must was asked before.
     *
     * @param hint a point off the shell's axis, to lay the plane's axes by
     */
    static Vec centre(Datum datum, List<Vec> bore, Vec hint) {
        Vec origin = bore.get(0);
        Vec e = hint.minus(origin).across(datum.normal()).unit();
        Vec f = datum.normal().cross(e);
        Vec seen = circle(datum, bore, hint)
                .map(circle -> origin.plus(e.times(circle.x_mm())).plus(f.times(circle.y_mm())))
                .orElseGet(() -> Vec.mean(bore));
        return seen.minus(datum.normal().times(datum.offset_mm(seen)));
    }

    /** The bore seen along the normal, in axes from its first point. */
    static Optional<CircleFit> circle(Datum datum, List<Vec> bore, Vec hint) {
        Vec origin = bore.get(0);
        Vec e = hint.minus(origin).across(datum.normal()).unit();
        Vec f = datum.normal().cross(e);
        return CircleFit.of(bore.stream()
                .map(point -> point.minus(origin))
                .map(off -> new double[] {off.dot(e), off.dot(f)})
                .toList());
    }
}
