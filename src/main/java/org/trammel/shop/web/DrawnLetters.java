package org.trammel.shop.web;

import org.springframework.stereotype.Component;
import org.trammel.calc.drawing.Lettering;

/** Figures of a drawing as the shop writes them, in the letters of its pages. */
@Component
public class DrawnLetters implements Lettering {

    private final Formats formats;

    DrawnLetters(Formats formats) {
        this.formats = formats;
    }

    @Override
    public String mm(double length_mm) {
        return formats.number(length_mm, 1);
    }

    @Override
    public String degrees(double angle_rad) {
        return formats.with(Math.toDegrees(angle_rad), 1, "°");
    }

    @Override
    public double width_mm(String words, double size_mm, boolean bold) {
        return LetterWidths.of(words, bold) * size_mm;
    }
}
