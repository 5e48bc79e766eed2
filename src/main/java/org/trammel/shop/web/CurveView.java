package org.trammel.shop.web;

import java.util.List;

/**
 * A curve over a length, for a chart beside the table of its points.
 *
 * @param finding what it shows, in a sentence
 * @param across what runs along, with its unit
 * @param upward what runs upward
 * @param points two or more, in the order of x
 * @param marks names of points on the curve, such as the sag
 */
public record CurveView(String finding, String across, String upward, List<Point> points, List<Mark> marks) {

    public CurveView {
        points = List.copyOf(points);
        marks = List.copyOf(marks);
    }

    /** A point of the curve. */
    public record Point(double x, double y) {}

    /** A point with its name. */
    public record Mark(String name, double x, double y) {}
}
