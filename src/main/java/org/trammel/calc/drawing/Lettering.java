package org.trammel.calc.drawing;

/** How figures are written where the drawing is read, and how wide letters are. */
public interface Lettering {

    /** A length in millimetres, without its unit. */
    String mm(double length_mm);

    /** An angle, with its sign. */
    String degrees(double angle_rad);

    /** How much room a text of this size takes. */
    double width_mm(String words, double size_mm, boolean bold);
}
