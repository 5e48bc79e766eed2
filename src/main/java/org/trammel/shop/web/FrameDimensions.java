package org.trammel.shop.web;

import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.Layout;
import org.trammel.calc.geometry.Point;

/**
 * The dimensions of a frame's drawing: extension lines that stop short of the part, closed arrowheads, the figure above
 * its line and readable from below or from the right (ISO 129-1).
 */
final class FrameDimensions {

    private static final double THIN = 1;
    private static final double LETTERS = 15;
    private static final double ARROW = 11;
    private static final double GAP = 5;
    private static final double BEYOND = 7;
    private static final double ARC_AT_FIFTH = 74;

    /** Where along its line a figure stands; that of the seat tube clears the top tube above it and a shock below. */
    private static final double MIDDLE = 0.5;

    private static final double BELOW_TOP_TUBE = 0.28;

    private final Svg svg;
    private final Paper paper;
    private final Formats formats;
    private final FrameGeometry frame;
    private final double arc;

    FrameDimensions(Svg svg, Paper paper, Formats formats, FrameGeometry frame) {
        this.svg = svg;
        this.paper = paper;
        this.formats = formats;
        this.frame = frame;
        this.arc = Math.max(46, ARC_AT_FIFTH * 5 / paper.scale());
    }

    void draw() {
        Layout layout = frame.layout();
        Point shell = FrameGeometry.SHELL;
        Point corner = new Point(frame.headTubeTop().x_mm(), 0);
        level(shell, frame.headTubeTop(), top() - 30, layout.reach_mm());
        upright(corner, frame.headTubeTop(), right(frame.headTubeBottom(), 170), frame.stack_mm());
        level(frame.rearAxle(), frame.frontAxle(), bottom() + 58, frame.wheelbase_mm());
        upright(shell, frame.rearAxle(), paper.x(frame.rearAxle()) - 26, layout.rearDrop_mm());
        aside(shell, frame.rearAxle(), 36, layout.chainstay_mm());
        aside(frame.frontAxle(), shell, 30, frame.frontCentre_mm());
        aside(frame.headTubeTop(), frame.headTubeBottom(), 44, layout.headTube_mm());
        aside(frame.seatTubeTop(), frame.seatTubeFoot(), 48, layout.seatTube_mm(), BELOW_TOP_TUBE);
        angle(frame.seatTubeFoot(), Math.PI - layout.seatAngle_rad(), Math.PI, layout.seatAngle_rad());
        angle(
                frame.onSteeringAxis(layout.headTube_mm() + 6.0 * paper.scale()),
                -layout.headAngle_rad(),
                0,
                layout.headAngle_rad());
    }

    private double top() {
        return Math.min(paper.y(frame.headTubeTop()), paper.y(frame.seatTubeTop()));
    }

    private double bottom() {
        return Math.max(Math.max(paper.y(FrameGeometry.SHELL), paper.y(frame.rearAxle())), paper.y(frame.frontAxle()));
    }

    private double right(Point point, double beyond) {
        return paper.x(point) + beyond;
    }

    /** A level dimension at a height of the paper. */
    private void level(Point from, Point to, double y, double length_mm) {
        dimension(
                paper.x(from),
                paper.y(from),
                paper.x(to),
                paper.y(to),
                paper.x(from),
                y,
                paper.x(to),
                y,
                length_mm,
                MIDDLE);
    }

    /** An upright one. */
    private void upright(Point from, Point to, double x, double length_mm) {
        dimension(
                paper.x(from),
                paper.y(from),
                paper.x(to),
                paper.y(to),
                x,
                paper.y(from),
                x,
                paper.y(to),
                length_mm,
                MIDDLE);
    }

    /** One along a member, so far to the left of its direction on the paper. */
    private void aside(Point from, Point to, double away, double length_mm) {
        aside(from, to, away, length_mm, MIDDLE);
    }

    private void aside(Point from, Point to, double away, double length_mm, double share) {
        Point along = paper.direction(from, to);
        double x = along.y_mm() * away;
        double y = -along.x_mm() * away;
        dimension(
                paper.x(from),
                paper.y(from),
                paper.x(to),
                paper.y(to),
                paper.x(from) + x,
                paper.y(from) + y,
                paper.x(to) + x,
                paper.y(to) + y,
                length_mm,
                share);
    }

    private void dimension(
            double fromX,
            double fromY,
            double toX,
            double toY,
            double x1,
            double y1,
            double x2,
            double y2,
            double length_mm,
            double share) {
        extension(fromX, fromY, x1, y1);
        extension(toX, toY, x2, y2);
        double length = Math.hypot(x2 - x1, y2 - y1);
        if (length < 1) {
            return;
        }
        double dx = (x2 - x1) / length;
        double dy = (y2 - y1) / length;
        boolean outside = length < 4 * ARROW;
        double over = outside ? 2 * ARROW : 0;
        svg.line(x1 - dx * over, y1 - dy * over, x2 + dx * over, y2 + dy * over, Svg.INK_3, THIN, null);
        arrow(x1, y1, outside ? dx : -dx, outside ? dy : -dy);
        arrow(x2, y2, outside ? -dx : dx, outside ? -dy : dy);
        figure(
                x1 + (x2 - x1) * share,
                y1 + (y2 - y1) * share,
                Math.atan2(dy, dx),
                formats.number(length_mm, 1),
                outside ? length : 0);
    }

    private void extension(double fromX, double fromY, double toX, double toY) {
        double length = Math.hypot(toX - fromX, toY - fromY);
        if (length <= GAP) {
            return;
        }
        double dx = (toX - fromX) / length;
        double dy = (toY - fromY) / length;
        svg.line(fromX + dx * GAP, fromY + dy * GAP, toX + dx * BEYOND, toY + dy * BEYOND, Svg.INK_3, THIN, null);
    }

    /** Points the way it is told. */
    private void arrow(double x, double y, double dx, double dy) {
        double half = ARROW * Math.tan(Math.toRadians(10));
        svg.path(
                "M" + Svg.n(x) + " " + Svg.n(y) + "L" + Svg.n(x - dx * ARROW + dy * half) + " "
                        + Svg.n(y - dy * ARROW - dx * half) + "L" + Svg.n(x - dx * ARROW - dy * half) + " "
                        + Svg.n(y - dy * ARROW + dx * half) + "z",
                Svg.INK_3,
                null,
                0);
    }

    private void figure(double x, double y, double along_rad, String figure, double short_) {
        double turn = Math.toDegrees(along_rad);
        while (turn > 89.5) {
            turn -= 180;
        }
        while (turn <= -90.5) {
            turn += 180;
        }
        double rad = Math.toRadians(turn);
        double away = GAP;
        double aside = short_ > 0 ? short_ / 2 + 2 * ARROW + Svg.wide(figure, LETTERS) / 2 : 0;
        svg.turned(
                x + Math.sin(rad) * away + Math.cos(rad) * aside,
                y - Math.cos(rad) * away + Math.sin(rad) * aside,
                turn,
                figure,
                LETTERS,
                Svg.INK);
    }

    /** The angle from one direction to another about a point, directions as in the frame. */
    private void angle(Point at, double from_rad, double to_rad, double angle_rad) {
        double x = paper.x(at);
        double y = paper.y(at);
        double x1 = x + arc * Math.cos(from_rad);
        double y1 = y - arc * Math.sin(from_rad);
        double x2 = x + arc * Math.cos(to_rad);
        double y2 = y - arc * Math.sin(to_rad);
        svg.line(x, y, x + (arc + 24) * Math.cos(to_rad), y, Svg.INK_3, THIN, null);
        svg.path(
                "M" + Svg.n(x1) + " " + Svg.n(y1) + "A" + Svg.n(arc) + " " + Svg.n(arc) + " 0 0 0 " + Svg.n(x2) + " "
                        + Svg.n(y2),
                "none",
                Svg.INK_3,
                THIN);
        arrow(x1, y1, Math.sin(from_rad), Math.cos(from_rad));
        arrow(x2, y2, -Math.sin(to_rad), -Math.cos(to_rad));
        double middle = (from_rad + to_rad) / 2;
        svg.text(
                x + (arc + 12) * Math.cos(middle),
                y - (arc + 12) * Math.sin(middle) + 5,
                formats.with(Math.toDegrees(angle_rad), 1, "°"),
                LETTERS,
                Math.cos(middle) < 0 ? "end" : "start",
                Svg.INK,
                false);
    }
}
