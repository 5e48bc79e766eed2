package org.trammel.calc.drawing;

import java.util.List;
import org.trammel.calc.geometry.Point;

/**
 * Where the points of a view lie on the paper.
 *
 * @param scale so many times smaller than the frame
 * @param origin where the shell's centre comes to lie
 */
record Scale(int scale, At origin) {

    /** Those that are not larger than the frame, ISO 5455. */
    private static final List<Integer> STANDARD = List.of(2, 5, 10, 20, 50, 100);

    /** The largest standard scale at which a view fits. */
    static int fitting(double width_mm, double height_mm, double room_mm, double height_room_mm, int largest) {
        return STANDARD.stream()
                .filter(each -> each >= largest)
                .filter(each -> width_mm / each <= room_mm && height_mm / each <= height_room_mm)
                .findFirst()
                .orElse(STANDARD.get(STANDARD.size() - 1));
    }

    At at(Point place) {
        return at(place.x_mm(), place.y_mm());
    }

    At at(double x_mm, double y_mm) {
        return new At(origin.x() + x_mm / scale, origin.y() + y_mm / scale);
    }

    double length(double length_mm) {
        return length_mm / scale;
    }
}
