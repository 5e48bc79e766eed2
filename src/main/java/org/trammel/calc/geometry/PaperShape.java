package org.trammel.calc.geometry;

/** Plain shapes of a drawing on paper at 1 : 1, from its lower left corner. */
public final class PaperShape {

    private PaperShape() {}

    /**
     * A point.
     *
     * @param x_mm to the right
     * @param y_mm up
     */
    public record Spot(double x_mm, double y_mm) {}

    /**
     * A straight line.
     *
     * @param from one end
     * @param to the other
     */
    public record Line(Spot from, Spot to) {

        static Line upright(double x_mm, double height_mm) {
            return new Line(new Spot(x_mm, 0), new Spot(x_mm, height_mm));
        }
    }
}
