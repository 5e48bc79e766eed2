package org.trammel.calc.geometry;

/**
 * A tube where it is cut: round, or formed to an oval.
 *
 * @param inPlane_mm outside in the plane of the tube's axis and its mate's
 * @param acrossPlane_mm outside at right angles to that plane
 * @param wall_mm thickness
 */
public record Section(double inPlane_mm, double acrossPlane_mm, double wall_mm) {

    /** A round tube. */
    public static Section round(double outside_mm, double wall_mm) {
        return new Section(outside_mm, outside_mm, wall_mm);
    }

    /** Whether both axes are the same. */
    public boolean isRound() {
        return inPlane_mm == acrossPlane_mm;
    }

    /** Round the outside of the tube: the width of a paper wrapped about it. */
    public double perimeter_mm() {
        return outline().perimeter_mm();
    }

    Ellipse outline() {
        return new Ellipse(inPlane_mm / 2, acrossPlane_mm / 2);
    }

    /**
     * The bore. Of an oval this is the ellipse of the half axes less the wall; the true inner outline runs within a few
     * hundredths of a millimetre of it for walls up to a tenth of the axes.
     */
    Section bore() {
        return new Section(inPlane_mm - 2 * wall_mm, acrossPlane_mm - 2 * wall_mm, 0);
    }

    void check(Objections objections) {
        if (isRound()) {
            objections.length("tubeOutside", "tube's outside", inPlane_mm);
        } else {
            objections
                    .length("inPlane", "tube's axis in the plane", inPlane_mm)
                    .length("acrossPlane", "tube's axis across the plane", acrossPlane_mm);
        }
        objections.length("wall", "tube's wall", wall_mm);
        double least = Math.min(inPlane_mm, acrossPlane_mm);
        objections.unless(
                !(wall_mm >= least / 2),
                "wall",
                () -> "The wall of " + Objections.shown(wall_mm) + " leaves no bore in a tube of "
                        + Objections.shown(least) + ".");
    }
}
