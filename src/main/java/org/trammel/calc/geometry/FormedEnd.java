package org.trammel.calc.geometry;

import org.trammel.calc.units.Answer;

/**
 * A round tube pressed to an oval at its end. Pressing bends the wall and does not stretch it, so that the outline is
 * as long as it was.
 *
 * <pre>
 * perimeter of the ellipse (side, across) = π · outside
 * </pre>
 *
 * Valid while the shorter axis is at least half of the round diameter: flatter ends crack or become a stadium, no ellipse.
 * Accuracy: the perimeter is solved to the last digits of double precision; that a pressed end is an ellipse is common
 * practice, and a calliper decides.
 *
 * @param round_mm outside before forming
 * @param inFramePlane_mm outside of the oval in the middle plane of the frame
 * @param acrossFrame_mm outside of the oval from drive side to non-drive side
 * @param zone_mm length that is formed
 */
public record FormedEnd(double round_mm, double inFramePlane_mm, double acrossFrame_mm, double zone_mm) {

    /** Forms so that one axis is as asked; the other follows from the perimeter. */
    public static Answer<FormedEnd> of(double round_mm, double inFramePlane_mm, double zone_mm) {
        return new Objections()
                .length("tubeOutside", "tube's outside before forming", round_mm)
                .length("inFramePlane", "formed axis in the frame's plane", inFramePlane_mm)
                .length("zone", "formed zone", zone_mm)
                .orElse(() -> {
                    double least = round_mm / 2;
                    double most = 2 * Ellipse.otherHalfAxis_mm(least / 2, Math.PI * round_mm);
                    return new Objections()
                            .unless(
                                    inFramePlane_mm >= least && inFramePlane_mm <= most,
                                    "inFramePlane",
                                    () -> "A tube of " + Objections.shown(round_mm) + " is formed to between "
                                            + Objections.shown(least) + " and " + Objections.shown(most)
                                            + ", not to " + Objections.shown(inFramePlane_mm) + ".")
                            .orElse(() -> Answer.of(new FormedEnd(
                                    round_mm,
                                    inFramePlane_mm,
                                    inFramePlane_mm == round_mm
                                            ? round_mm
                                            : 2 * Ellipse.otherHalfAxis_mm(inFramePlane_mm / 2, Math.PI * round_mm),
                                    zone_mm)));
                });
    }

    /** Round the outside, before and after. */
    public double perimeter_mm() {
        return Math.PI * round_mm;
    }

    /** As cut on a mate that lies in the frame's plane: head tube and seat tube. */
    public Section onTube(double wall_mm) {
        return new Section(inFramePlane_mm, acrossFrame_mm, wall_mm);
    }

    /** As cut on the shell, which lies across the frame. */
    public Section onShell(double wall_mm) {
        return new Section(acrossFrame_mm, inFramePlane_mm, wall_mm);
    }
}
