package org.trammel.shop.web;

import java.math.BigDecimal;
import java.util.List;

/**
 * The errors of a gauge over its range, as they are drawn.
 *
 * @param finding the sentence the drawing is read out as
 * @param unit of values and errors
 * @param points by value, least first; at least one
 */
public record ErrorsView(String finding, String unit, List<Point> points) {

    public ErrorsView {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("There is nothing to draw");
        }
    }

    /**
     * One value.
     *
     * @param error what the gauge reads too high by there
     * @param permissible greatest amount of it that is permitted, above 0
     */
    public record Point(BigDecimal at, BigDecimal error, BigDecimal permissible, boolean over) {}
}
