package org.trammel.calc.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.trammel.calc.drawing.Mark.Fill;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.Layout;
import org.trammel.calc.geometry.Paper;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.geometry.SideView;
import org.trammel.calc.geometry.SideView.Hub;
import org.trammel.calc.geometry.SideView.Member;
import org.trammel.calc.geometry.SideView.Part;

/** The frame from its drive side, with a dimension on each number it is set up by. */
public final class SideSheet {

    private static final int LARGEST = 5;
    private static final double ABOVE_MM = 14;
    private static final double BELOW_MM = 14;
    private static final double BEHIND_MM = 13;
    private static final double AHEAD_MM = 7;

    private final SideView view;
    private final FrameGeometry frame;
    private final Layout layout;
    private final SheetFrame sheet;
    private final Board board;
    private final Lettering lettering;
    private final Scale scale;

    private SideSheet(SideView view, TitleBlock block, Lettering lettering, Paper paper) {
        this.view = view;
        this.frame = view.geometry();
        this.layout = frame.layout();
        this.sheet = new SheetFrame(paper, block, lettering);
        this.board = sheet.board();
        this.lettering = lettering;
        this.scale = scale();
    }

    /**
     * Draws it.
     *
     * @param seenFromAbove whether another sheet shows the rear end from above; the arrow to it is drawn then
     * @param of how many sheets there are
     */
    public static DrawnSheet of(
            SideView view, boolean seenFromAbove, TitleBlock block, Lettering lettering, Paper paper, int of) {
        return new SideSheet(view, block, lettering, paper).drawn(seenFromAbove, List.of(), of);
    }

    /**
     * Draws it where no sheet shows the rear end from above.
     *
     * @param notAbove why none does, a sentence each; stands on the sheet
     * @param of how many sheets there are
     */
    public static DrawnSheet alone(
            SideView view, List<String> notAbove, TitleBlock block, Lettering lettering, Paper paper, int of) {
        return new SideSheet(view, block, lettering, paper).drawn(false, notAbove, of);
    }

    private Scale scale() {
        double back = least(place -> place.x_mm());
        double front = -least(place -> -place.x_mm());
        double low = least(place -> place.y_mm());
        double high = -least(place -> -place.y_mm());
        int fits = Scale.fitting(
                front - back,
                high - low,
                sheet.right() - sheet.left() - BEHIND_MM - AHEAD_MM,
                sheet.top() - sheet.bottom() - ABOVE_MM - BELOW_MM,
                LARGEST);
        double middle = (sheet.left() + BEHIND_MM + sheet.right() - AHEAD_MM) / 2;
        double up = (sheet.bottom() + BELOW_MM + sheet.top() - ABOVE_MM) / 2;
        return new Scale(fits, new At(middle - (front + back) / 2 / fits, up - (high + low) / 2 / fits));
    }

    private double least(java.util.function.ToDoubleFunction<Point> measure) {
        return Stream.concat(
                        Stream.of(frame.frontAxle(), frame.rearAxle()),
                        Stream.concat(
                                view.members().stream().flatMap(member -> member.corners().stream()),
                                view.hubs().stream().flatMap(SideSheet::extremes)))
                .mapToDouble(measure)
                .min()
                .orElse(0);
    }

    private static Stream<Point> extremes(Hub hub) {
        double r = hub.outside_mm() / 2;
        double x = hub.centre().x_mm();
        double y = hub.centre().y_mm();
        return Stream.of(new Point(x - r, y), new Point(x + r, y), new Point(x, y - r), new Point(x, y + r));
    }

    private DrawnSheet drawn(boolean seenFromAbove, List<String> remarks, int of) {
        sheet.draw("View from the drive side", scale.scale(), 1, of);
        outlines(board, scale, view, List.of());
        axle(frame.frontAxle());
        board.line(scale.at(frame.headTubeBottom()), scale.at(forkFoot()).plus(down(), 4), Pen.CENTRE);
        sheet.remarks(remarks);
        dimensions();
        if (seenFromAbove) {
            arrowFromAbove();
        }
        return sheet.sheet(
                "Drawing from the drive side: reach " + lettering.mm(layout.reach_mm()) + " mm, stack "
                        + lettering.mm(frame.stack_mm()) + " mm, wheelbase "
                        + lettering.mm(frame.wheelbase_mm()) + " mm.",
                scale.scale());
    }

    private At down() {
        return new At(frame.down().x_mm(), frame.down().y_mm());
    }

    private Point crown() {
        return frame.onSteeringAxis(layout.headTube_mm() + layout.lowerStack_mm());
    }

    private Point forkFoot() {
        return frame.onSteeringAxis(layout.headTube_mm() + layout.lowerStack_mm() + layout.forkLength_mm());
    }

    private void axle(Point axle) {
        At at = scale.at(axle);
        board.ring(at, 1.2, Pen.NARROW, Fill.PAPER);
        cross(board, at, 4);
    }

    /**
     * Tubes and hubs, each over those behind it.
     *
     * @param atHand parts that are drawn with emphasis
     */
    static void outlines(Board board, Scale scale, SideView view, List<Part> atHand) {
        for (Member member : view.members()) {
            List<At> corners = member.corners().stream().map(scale::at).toList();
            Pen pen = member.part() == Part.SHOCK ? Pen.ADJACENT : pen(member.part(), atHand);
            board.area(corners, pen, Fill.PAPER);
            At from = scale.at(member.from());
            At to = scale.at(member.to());
            if (to.minus(from).length() > 0.1) {
                At along = to.minus(from).unit();
                board.line(from.plus(along, -3), to.plus(along, 3), Pen.CENTRE);
            }
        }
        for (Hub hub : view.hubs()) {
            At at = scale.at(hub.centre());
            double radius = scale.length(hub.outside_mm()) / 2;
            board.ring(at, radius, hub.part() == Part.SHOCK_EYE ? Pen.NARROW : pen(hub.part(), atHand), Fill.PAPER);
            if (hub.bore_mm() > 0) {
                board.ring(at, scale.length(hub.bore_mm()) / 2, Pen.NARROW, Fill.NONE);
            }
            cross(board, at, radius + 2);
        }
    }

    private static Pen pen(Part part, List<Part> atHand) {
        return atHand.contains(part) ? Pen.EMPHASIS : Pen.OUTLINE;
    }

    private static void cross(Board board, At at, double reach) {
        board.line(new At(at.x() - reach, at.y()), new At(at.x() + reach, at.y()), Pen.CENTRE);
        board.line(new At(at.x(), at.y() - reach), new At(at.x(), at.y() + reach), Pen.CENTRE);
    }

    private void dimensions() {
        Dimensions of = new Dimensions(board);
        Point shell = FrameGeometry.SHELL;
        At rear = scale.at(frame.rearAxle());
        At front = scale.at(frame.frontAxle());
        At centre = scale.at(shell);
        At top = scale.at(frame.headTubeTop());
        At bottom = scale.at(frame.headTubeBottom());
        double low = scale.at(0, least(place -> place.y_mm())).y();
        double high = scale.at(0, -least(place -> -place.y_mm())).y();
        double right = scale.at(-least(place -> -place.x_mm()), 0).x();

        of.level(rear, front, lettering.mm(frame.wheelbase_mm()), low - 11, low - 8, low - 13);
        of.level(centre, top, lettering.mm(layout.reach_mm()), high + 6, high + 9, high + 12);
        of.upright(
                new At(top.x(), centre.y()),
                top,
                lettering.mm(frame.stack_mm()),
                places(right + 8, 0, 3, -4, -8, -12, -16, -20, -25, -30, -35, 6));
        of.upright(
                centre,
                rear,
                lettering.mm(Math.abs(layout.rearDrop_mm())),
                places(rear.x() - 7, 0, -3, 3, 12, 16, 22, 28, -5));
        suspension(of);
        seatAngle(of);
        headAngle(of);
        of.aside(
                scale.at(crown()),
                scale.at(forkFoot()),
                lettering.mm(layout.forkLength_mm()),
                -6,
                9,
                13,
                6,
                -9,
                -12,
                17);
        of.aside(scale.at(forkFoot()), front, lettering.mm(layout.forkOffset_mm()), 8, -8, 5, -5, 12, -12, 16, -16);
        of.aside(top, bottom, lettering.mm(layout.headTube_mm()), around(frame, 9));
        of.aside(
                scale.at(frame.seatTubeTop()),
                scale.at(frame.seatTubeFoot()),
                lettering.mm(layout.seatTube_mm()),
                10,
                14,
                -10,
                -14,
                18,
                22,
                -18,
                7,
                -7);
        of.aside(centre, rear, lettering.mm(layout.chainstay_mm()), 8, 6.5, 10, 12, -8, 14);
        of.aside(front, centre, lettering.mm(frame.frontCentre_mm()), -8, -6, -10, -12, 7, 10, 14, -14);
    }

    private static double[] around(FrameGeometry frame, double preferred) {
        double[] places = {0, 3, 6, 10, -2};
        return DoubleStream.concat(
                        DoubleStream.of(places).map(each -> preferred + each),
                        DoubleStream.of(places).map(each -> -preferred - each))
                .toArray();
    }

    private static double[] places(double base, double... apart) {
        return DoubleStream.of(apart).map(each -> base + each).toArray();
    }

    private void seatAngle(Dimensions of) {
        of.angle(
                scale.at(frame.seatTubeFoot()),
                Math.PI - layout.seatAngle_rad(),
                Math.PI,
                Math.PI,
                lettering.degrees(layout.seatAngle_rad()),
                18,
                15,
                21,
                25,
                12,
                30);
    }

    private void headAngle(Dimensions of) {
        At about = scale.at(frame.headTubeBottom()).plus(down(), 7);
        of.angle(about, -layout.headAngle_rad(), 0, 0, lettering.degrees(layout.headAngle_rad()), 14, 17, 20, 11, 24);
    }

    private void suspension(Dimensions of) {
        Optional<Member> shock = view.members().stream()
                .filter(member -> member.part() == Part.SHOCK)
                .findFirst();
        shock.ifPresent(member -> of.aside(
                scale.at(member.from()),
                scale.at(member.to()),
                lettering.mm(Math.hypot(
                        member.to().x_mm() - member.from().x_mm(),
                        member.to().y_mm() - member.from().y_mm())),
                8,
                -8,
                11,
                -11,
                14,
                -14,
                18,
                -18));
        view.hubs().stream()
                .filter(hub -> hub.part() == Part.PIVOT)
                .findFirst()
                .ifPresent(hub -> of.note(
                        scale.at(hub.centre()),
                        String.format(
                                Locale.ROOT,
                                "pivot: %s ahead, %s above",
                                lettering.mm(hub.centre().x_mm()),
                                lettering.mm(hub.centre().y_mm())),
                        12,
                        16,
                        22,
                        30,
                        40));
    }

    /** The arrow of the view from above, with its letter (ISO 128-3, from memory). */
    private void arrowFromAbove() {
        double middle = frame.rearAxle().x_mm() / 2;
        double tip = scale.at(0, frame.rearAxle().y_mm()).y();
        At best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double share : new double[] {1, 0.8, 1.2, 0.6, 1.4, 1.6, 0.4}) {
            for (double above : new double[] {9, 12, 16, 20, 26, 32, 40, 50, 60, 70}) {
                At point = new At(scale.at(middle * share, 0).x(), tip + above);
                double cost = Math.abs(share - 1) * 40
                        + above
                        + board.cost(Box.between(point.x() - 2, point.y() - 1, point.x() + 7, point.y() + 11));
                if (cost < least) {
                    least = cost;
                    best = point;
                }
            }
        }
        if (best != null) {
            board.line(best, best.plus(new At(0, 10)), Pen.OUTLINE);
            new Dimensions(board).arrow(best, new At(0, -1));
            board.figure(best.plus(new At(4, 5)), 0, "A", 5);
        }
    }
}
