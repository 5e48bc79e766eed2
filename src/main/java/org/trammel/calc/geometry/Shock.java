package org.trammel.calc.geometry;

/**
 * A shock by its two figures.
 *
 * @param length_mm eye to eye, extended
 * @param stroke_mm how much shorter it can get
 */
public record Shock(double length_mm, double stroke_mm) {

    /** Eye to eye at the end of its stroke. */
    public double bottomed_mm() {
        return length_mm - stroke_mm;
    }

    /** Eye to eye at a share of its stroke, such as 0.3: what is measured with the rider on it. */
    public double atSag_mm(double share) {
        return length_mm - share * stroke_mm;
    }

    boolean asked(Asked asked) {
        boolean figures = asked.above0("shockLength", "length of the shock", length_mm, " mm")
                & asked.above0("shockStroke", "stroke of the shock", stroke_mm, " mm");
        return figures
                && asked.holds(
                        stroke_mm < length_mm,
                        "shockStroke",
                        "The stroke of " + Asked.written(stroke_mm, " mm") + " leaves nothing of the shock's "
                                + Asked.written(length_mm, " mm") + ".");
    }
}
