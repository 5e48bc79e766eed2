package org.trammel.calc.geometry;

/**
 * A tube that ends on a round mate.
 *
 * @param tube the tube where it is cut
 * @param mateOutside_mm outside diameter of the tube or shell it ends on
 * @param includedAngle_rad between tube and mate, the interior angle, never folded to the acute side
 * @param offset_mm the tube's axis beside the mate's, along their common perpendicular; above 0 to the side where φ = 90°
 */
public record Joint(Section tube, double mateOutside_mm, double includedAngle_rad, double offset_mm) {

    /** Nearer to 0° or 180° the axes are all but parallel, and the curve would be longer than a tube. */
    static final double LEAST_ANGLE_RAD = Math.toRadians(5);

    /** Rounding of typed diameters is not a tube wider than its mate. */
    private static final double SAME_MM = 1e-6;

    /** Axes that meet. */
    public static Joint meeting(Section tube, double mateOutside_mm, double includedAngle_rad) {
        return new Joint(tube, mateOutside_mm, includedAngle_rad, 0);
    }

    /** By how much the mate reaches past the tube on its nearer side; below 0 the tube hangs over. */
    public double overlap_mm() {
        return mateOutside_mm / 2 - Math.abs(offset_mm) - tube.acrossPlane_mm() / 2;
    }

    /** Whether a side of the tube ends where the mate's side is, so that the cut runs out to an edge without thickness. */
    public boolean hasFeatherEdge() {
        return Math.abs(overlap_mm()) <= SAME_MM;
    }

    Objections check() {
        Objections objections = new Objections();
        tube.check(objections);
        objections.length("mateOutside", "mate's outside", mateOutside_mm);
        objections.distance("offset", "offset of the axes", offset_mm);
        objections.unless(
                includedAngle_rad >= LEAST_ANGLE_RAD && includedAngle_rad <= Math.PI - LEAST_ANGLE_RAD,
                "includedAngle",
                () -> "The included angle of " + Objections.shownDegrees(includedAngle_rad)
                        + " is not between 5° and 175°.");
        return objections.none() ? objections.unless(overlap_mm() >= -SAME_MM, blamed(), this::tooWide) : objections;
    }

    private String blamed() {
        return tube.acrossPlane_mm() > mateOutside_mm + 2 * SAME_MM ? "tubeOutside" : "offset";
    }

    private String tooWide() {
        if (tube.acrossPlane_mm() > mateOutside_mm + 2 * SAME_MM) {
            return "The tube is " + Objections.shown(tube.acrossPlane_mm()) + " wide and its mate only "
                    + Objections.shown(mateOutside_mm) + ": its sides meet nothing.";
        }
        return "The offset of " + Objections.shown(offset_mm) + " puts a side of the tube of "
                + Objections.shown(tube.acrossPlane_mm()) + " outside its mate of " + Objections.shown(mateOutside_mm)
                + ": it may be " + Objections.shown((mateOutside_mm - tube.acrossPlane_mm()) / 2) + " at most.";
    }
}
