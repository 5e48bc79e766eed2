package org.trammel.shop.web;

import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.Point;

/**
 * Where the points of a frame lie on a sheet: a standard scale, front to the right, up is up.
 *
 * @param scale so many times smaller than the frame: 2, 5, 10 or 20 (ISO 5455)
 * @param x0 place of the shell's centre
 * @param y0 place of the shell's centre
 */
record Paper(int scale, double x0, double y0) {

    private static final int[] SCALES = {2, 5, 10, 20};
    private static final double PER_MM = 4;

    /** Room for the dimensions above, below and beside the frame. */
    private static final double ABOVE = 50;

    private static final double BELOW = 70;
    private static final double BEHIND = 46;
    private static final double AHEAD = 18;

    static Paper fitting(FrameGeometry frame, double left, double top, double width, double height) {
        double low =
                Math.min(Math.min(0, frame.rearAxle().y_mm()), frame.frontAxle().y_mm());
        double high = Math.max(frame.headTubeTop().y_mm(), frame.seatTubeTop().y_mm());
        double back = frame.rearAxle().x_mm();
        double front = Math.max(frame.frontAxle().x_mm(), frame.headTubeBottom().x_mm());
        int scale = SCALES[SCALES.length - 1];
        for (int each : SCALES) {
            if ((front - back) * PER_MM / each <= width - BEHIND - AHEAD
                    && (high - low) * PER_MM / each <= height - ABOVE - BELOW) {
                scale = each;
                break;
            }
        }
        double centre_mm = (front + back) / 2;
        double middle_mm = (high + low) / 2;
        double per = PER_MM / scale;
        return new Paper(
                scale,
                left + BEHIND + (width - BEHIND - AHEAD) / 2 - centre_mm * per,
                top + ABOVE + (height - ABOVE - BELOW) / 2 + middle_mm * per);
    }

    double x(Point point) {
        return x0 + length(point.x_mm());
    }

    double y(Point point) {
        return y0 - length(point.y_mm());
    }

    double length(double length_mm) {
        return length_mm * PER_MM / scale;
    }

    String place(Point point) {
        return Svg.n(x(point)) + " " + Svg.n(y(point));
    }

    /** From one point to another on the paper, of length 1. */
    Point direction(Point from, Point to) {
        double x = x(to) - x(from);
        double y = y(to) - y(from);
        double length = Math.hypot(x, y);
        return new Point(x / length, y / length);
    }
}
