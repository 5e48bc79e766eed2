package org.trammel.calc.drawing;

import java.util.List;

/**
 * A sheet as it is printed.
 *
 * @param finding what it shows, for those who hear it
 * @param width_mm across
 * @param height_mm up
 * @param scale so many times smaller than the frame; 0 where nothing on it is to scale
 */
public record DrawnSheet(String finding, double width_mm, double height_mm, int scale, List<Mark> marks) {

    public DrawnSheet {
        marks = List.copyOf(marks);
    }
}
