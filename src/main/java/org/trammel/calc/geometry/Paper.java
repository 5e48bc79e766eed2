package org.trammel.calc.geometry;

/** A sheet a drawing is printed on, standing upright. */
public enum Paper {
    /** ISO 216:2007. */
    A4(210, 297),
    /** ANSI/ASME Y14.1, size A: 8 1/2 by 11 inches of 25,4 mm. */
    US_LETTER(215.9, 279.4);

    private final double width_mm;
    private final double height_mm;

    Paper(double width_mm, double height_mm) {
        this.width_mm = width_mm;
        this.height_mm = height_mm;
    }

    /** Short side. */
    public double width_mm() {
        return width_mm;
    }

    /** Long side. */
    public double height_mm() {
        return height_mm;
    }
}
