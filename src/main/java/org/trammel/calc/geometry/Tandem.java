package org.trammel.calc.geometry;

import org.trammel.calc.units.Answer;

/**
 * A frame with two shells at the same height, the front one the origin; the chainstay runs from the rear one.
 *
 * @param front as if the chainstay began at the front shell
 * @param shellToShell_mm front shell to rear shell
 */
public record Tandem(FrameGeometry front, double shellToShell_mm) {

    /** Computes it. */
    public static Answer<Tandem> of(Layout layout, double shellToShell_mm) {
        if (!(shellToShell_mm > 0 && shellToShell_mm <= Dimension.LONGEST_mm)) {
            return Answer.none(
                    "shellToShell",
                    "The distance between the shells of " + Written.mm(shellToShell_mm) + " is not above 0.");
        }
        return FrameGeometry.of(layout).then(front -> Answer.of(new Tandem(front, shellToShell_mm)));
    }

    /** Centre of the rear shell. */
    public Point rearShell() {
        return new Point(-shellToShell_mm, 0);
    }

    /** Centre of the rear axle. */
    public Point rearAxle() {
        return front.rearAxle().plus(rearShell());
    }

    /** Axle to axle along the ground. */
    public double wheelbase_mm() {
        return front.frontAxle().x_mm() - rearAxle().x_mm();
    }
}
