package org.trammel.calc.geometry;

/**
 * Where a builder decided that saddle and bar stand to the shell.
 *
 * @param saddleHeight_mm from the shell's centre along the line of the seat tube to the saddle's top
 * @param saddleSetback_mm the saddle's tip behind the shell's centre, level; below 0 ahead of it
 * @param saddleToBar_mm from the saddle's tip to the bar's middle, in a straight line
 * @param saddleOverBar_mm the saddle's top above the bar's middle; below 0 the bar is higher
 */
public record FitSheet(
        double saddleHeight_mm, double saddleSetback_mm, double saddleToBar_mm, double saddleOverBar_mm) {

    Objections check() {
        return new Objections()
                .length("saddleHeight", "saddle height", saddleHeight_mm)
                .distance("saddleSetback", "saddle's setback", saddleSetback_mm)
                .length("saddleToBar", "distance from saddle to bar", saddleToBar_mm)
                .distance("saddleOverBar", "height of the saddle over the bar", saddleOverBar_mm)
                .unless(
                        !(Math.abs(saddleOverBar_mm) >= saddleToBar_mm),
                        "saddleOverBar",
                        () -> "The bar cannot be " + Objections.shown(saddleToBar_mm) + " from the saddle's tip and "
                                + Objections.shown(Math.abs(saddleOverBar_mm)) + " "
                                + (saddleOverBar_mm < 0 ? "above" : "below") + " it.");
    }
}
