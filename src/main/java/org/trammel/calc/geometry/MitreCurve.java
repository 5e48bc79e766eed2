package org.trammel.calc.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.trammel.calc.units.Answer;

/**
 * The line along which a round or oval tube ends on a round mate.
 *
 * <pre>
 * z(φ) = [√(R² − (e + y)²) + x cos θ] / sin θ        x = a cos φ, y = b sin φ
 * s(φ) = arc of the outline from 0 to φ; a circle: r φ
 * </pre>
 *
 * z setback, along the tube's axis from the foot of the common perpendicular of both axes; R the mate's radius; e offset
 * of the axes; θ included angle; a, b half axes of the tube in the plane of the axes and across it. φ = 0 is the side
 * of the tube that faces the arm of the mate from which θ is measured; seen from outside with the cut end up, φ runs to
 * the right. Valid for |e| + b ≤ R. Source: the two surfaces' equations solved for z, as for two cylinders in Stockie,
 * The geometry of intersecting tubes; development as in NAVEDTRA 14251. Accuracy that of double precision; least and
 * most, between the stations, to 1e-9 mm.
 *
 * @param joint what is cut
 * @param stations points of the curve, evenly in φ over one turn, first and last the same point of the tube
 * @param least_mm the shortest setback: how far the tube's longest lip stays from the node
 * @param most_mm the longest setback: the bottom of the cut
 */
public record MitreCurve(Joint joint, List<Station> stations, double least_mm, double most_mm) {

    /** Every five degrees, which a paper template needs. */
    public static final int USUAL_STATIONS = 72;

    private static final int STEPS_OF_SEARCH = 26;

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    /**
     * A point of the curve.
     *
     * @param angle_rad φ
     * @param developed_mm s, on a paper wrapped about the tube
     * @param setback_mm z
     */
    public record Station(double angle_rad, double developed_mm, double setback_mm) {}

    /** The curve of the outside; without an answer where the tube is wider than its mate, or a number cannot be. */
    public static Answer<MitreCurve> of(Joint joint, int stations) {
        return joint.check()
                .unless(
                        stations >= 8 && stations <= 3600 && stations % 4 == 0,
                        "stations",
                        () -> "The curve has " + stations + " stations, and takes a multiple of 4 from 8 to 3600.")
                .orElse(() -> Answer.of(drawn(joint, stations)));
    }

    /** The curve of the bore on the outside of the same mate, for a wall that is not thin. */
    public static Answer<MitreCurve> ofBore(Joint joint, int stations) {
        return of(joint, stations).then(outer -> Answer.of(boreOf(outer)));
    }

    static MitreCurve boreOf(MitreCurve outer) {
        Joint joint = outer.joint;
        return drawn(
                new Joint(joint.tube().bore(), joint.mateOutside_mm(), joint.includedAngle_rad(), joint.offset_mm()),
                outer.stations.size() - 1);
    }

    private static MitreCurve drawn(Joint joint, int count) {
        DoubleUnaryOperator setback = setbackOf(joint);
        Ellipse outline = joint.tube().outline();
        double step = 2 * Math.PI / count;
        double[] depths = new double[count];
        for (int i = 0; i < count; i++) {
            depths[i] = setback.applyAsDouble(i * step);
        }
        List<Station> stations = new ArrayList<>(count + 1);
        double developed = 0;
        for (int i = 0; i <= count; i++) {
            stations.add(new Station(i * step, developed, depths[i % count]));
            developed = outline.isCircle()
                    ? outline.arc_mm((i + 1) * step)
                    : developed + outline.arc_mm(i * step, (i + 1) * step);
        }
        return new MitreCurve(
                joint,
                List.copyOf(stations),
                least(setback, depths, step),
                -least(angle -> -setback.applyAsDouble(angle), negated(depths), step));
    }

    private static DoubleUnaryOperator setbackOf(Joint joint) {
        double a = joint.tube().inPlane_mm() / 2;
        double b = joint.tube().acrossPlane_mm() / 2;
        double radius = joint.mateOutside_mm() / 2;
        double square = radius * radius;
        double e = joint.offset_mm();
        double sine = Math.sin(joint.includedAngle_rad());
        double cosine = Math.cos(joint.includedAngle_rad());
        return angle -> {
            double y = e + b * Math.sin(angle);
            // where both are as wide, rounding may leave the tube's side outside its mate by the last digit
            return (Math.sqrt(Math.max(0, square - y * y)) + a * Math.cos(angle) * cosine) / sine;
        };
    }

    private static double[] negated(double[] depths) {
        double[] negated = new double[depths.length];
        for (int i = 0; i < depths.length; i++) {
            negated[i] = -depths[i];
        }
        return negated;
    }

    /** The least value need not fall on a station: it is searched about each station that is below its neighbours. */
    private static double least(DoubleUnaryOperator curve, double[] depths, double step) {
        int count = depths.length;
        double least = depths[0];
        for (int i = 0; i < count; i++) {
            least = Math.min(least, depths[i]);
            if (depths[i] <= depths[(i + count - 1) % count] && depths[i] <= depths[(i + 1) % count]) {
                least = Math.min(least, searched(curve, (i - 1) * step, (i + 1) * step));
            }
        }
        return least;
    }

    private static double searched(DoubleUnaryOperator curve, double from, double to) {
        double low = from;
        double high = to;
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        double atLeft = curve.applyAsDouble(left);
        double atRight = curve.applyAsDouble(right);
        for (int i = 0; i < STEPS_OF_SEARCH; i++) {
            if (atLeft < atRight) {
                high = right;
                right = left;
                atRight = atLeft;
                left = high - GOLDEN * (high - low);
                atLeft = curve.applyAsDouble(left);
            } else {
                low = left;
                left = right;
                atLeft = atRight;
                right = low + GOLDEN * (high - low);
                atRight = curve.applyAsDouble(right);
            }
        }
        return Math.min(atLeft, atRight);
    }

    /** Setback at any φ. */
    public double setback_mm(double angle_rad) {
        return setbackOf(joint).applyAsDouble(angle_rad);
    }

    /** Setback of the tube's axis itself: R / sin θ for axes that meet. */
    public double axisSetback_mm() {
        double radius = joint.mateOutside_mm() / 2;
        return Math.sqrt(radius * radius - joint.offset_mm() * joint.offset_mm()) / Math.sin(joint.includedAngle_rad());
    }

    /** How deep the cut is, lip to bottom. */
    public double depth_mm() {
        return most_mm - least_mm;
    }
}
