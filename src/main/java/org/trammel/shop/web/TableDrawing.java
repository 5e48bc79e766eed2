package org.trammel.shop.web;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.geometry.SideView.Hub;
import org.trammel.calc.geometry.SideView.Member;
import org.trammel.calc.geometry.SideView.Part;

/**
 * A frame on the alignment table in three views: from above over the side view, with the drive side below, and the leans
 * from the front at the right, with the drive side at the left (third angle, ISO 128). Offsets are drawn fifty times
 * larger, leans a hundred times, what the side view is off its drawing twenty times.
 */
final class TableDrawing {

    private static final double WIDTH = 720;
    private static final double HEIGHT = 708;
    private static final double LEFT = 58;
    private static final double RIGHT = 480;
    private static final double MIDDLE_Y = 118;
    private static final double LOW = 632;
    private static final double HIGH = 306;
    private static final double OFFSETS = 50;
    private static final double LEANS = 100;
    private static final double SIDE = 20;
    private static final double SIDE_MOST_MM = 60;
    private static final double SIDE_MOST_DEG = 12;
    private static final double FAN_X = 590;
    private static final double FAN_Y = 640;
    private static final double FAN = 170;
    private static final double MOST_DEG = 80;

    private final TableView view;
    private final Formats formats;
    private final Svg svg;
    private final double scale;
    private final double shellX;
    private final double shellY;

    private TableDrawing(Formats formats, TableView view) {
        this.view = view;
        this.formats = formats;
        FrameGeometry g = view.side().geometry();
        double back = g.rearAxle().x_mm();
        double front = Math.max(g.headTubeBottom().x_mm(), g.headTubeTop().x_mm());
        double top = Math.max(g.headTubeTop().y_mm(), g.seatTubeTop().y_mm());
        double bottom = Math.min(0, g.rearAxle().y_mm());
        scale = Math.min((RIGHT - LEFT) / (front - back), (LOW - HIGH) / (top - bottom));
        shellX = LEFT - back * scale;
        shellY = LOW + bottom * scale;
        svg = Svg.labelled("on-table", WIDTH, HEIGHT, view.finding());
    }

    static String of(Formats formats, TableView view) {
        return new TableDrawing(formats, view).drawn();
    }

    private String drawn() {
        fromAbove();
        svg.line(10, 250, WIDTH - 10, 250, "var(--rule)", 1, null);
        side();
        if (view.lean() != null) {
            fan(view.lean());
        }
        svg.ring(24, 697, 7, "none", Svg.INK, 1.2);
        svg.ring(24, 697, 3.5, "none", Svg.INK, 1.2);
        svg.path("M38 693.500v7l14 3.500v-14z", "none", Svg.INK, 1.2);
        svg.text(
                64,
                702,
                view.plain()
                        ? "third angle; a plain frame in proportion, the drawing computes none"
                        : "third angle; from above, drive side, from the front",
                13,
                "start",
                Svg.INK_2,
                false);
        return svg.done();
    }

    private double x(Point at) {
        return shellX + at.x_mm() * scale;
    }

    private double y(Point at) {
        return shellY - at.y_mm() * scale;
    }

    // ------------------------------------------------------------------------------------------ from above

    private void fromAbove() {
        FrameGeometry g = view.side().geometry();
        double half = (view.shellWidth_mm() == null ? 73 : view.shellWidth_mm()) / 2 * scale;
        double axleX = x(g.rearAxle());
        double headX = x(g.headTubeTop().plus(g.headTubeBottom()).times(0.5));
        for (int side : List.of(-1, 1)) {
            svg.path(
                    "M" + Svg.n(axleX) + " " + Svg.n(MIDDLE_Y + side * 34) + "L" + Svg.n(shellX - 12) + " "
                            + Svg.n(MIDDLE_Y + side * half * 0.6),
                    "none",
                    Svg.INK_3,
                    1);
            svg.path(
                    "M" + Svg.n(shellX + 10) + " " + Svg.n(MIDDLE_Y + side * 10) + "L" + Svg.n(headX) + " "
                            + Svg.n(MIDDLE_Y + side * 10),
                    "none",
                    Svg.INK_3,
                    1);
            svg.rect(axleX - 10, MIDDLE_Y + side * 37 - 2.5, 20, 5, Svg.INK_3);
        }
        svg.path(
                "M" + Svg.n(shellX - 10) + " " + Svg.n(MIDDLE_Y - half) + "h20v" + Svg.n(2 * half) + "h-20z",
                Svg.SHEET,
                Svg.INK,
                2);
        limits(view.axle(), axleX, -1);
        limits(view.head(), headX, 1);
        svg.line(10, MIDDLE_Y, RIGHT + 66, MIDDLE_Y, Svg.INK, 1.2, Svg.CHAIN);
        Double axle = value(view.axle());
        Double head = value(view.head());
        String path = "M"
                + (axle == null ? "" : Svg.n(axleX) + " " + Svg.n(offset(axle)) + "L")
                + Svg.n(shellX) + " " + Svg.n(MIDDLE_Y)
                + (head == null ? "" : "L" + Svg.n(headX) + " " + Svg.n(offset(head)));
        svg.path(path, "none", Svg.BLUE, 3);
        svg.ring(shellX, MIDDLE_Y, 4.5, Svg.SHEET, Svg.BLUE, 2.5);
        point(view.axle(), axleX, 110);
        point(view.head(), headX, RIGHT - 50);
        svg.line(628, 88, 628, 168, Svg.INK_2, 1.2, null);
        svg.path("M623 158h10l-5 12z", Svg.INK_2, null, 0);
        svg.text(640, 92, "non-drive", 14, "start", Svg.INK_2, false);
        svg.text(640, 172, "drive", 14, "start", Svg.INK_2, false);
        double mm = OFFSETS * scale;
        svg.path("M300 214v12M300 220h" + Svg.n(mm) + "m0 -6v12", "none", Svg.INK, 1.4);
        svg.text(300 + mm + 10, 225, "1 mm off the middle, drawn 50 times larger", 13, "start", Svg.INK_2, false);
    }

    /** Seen from above with the front to the right the drive side lies below. */
    private double offset(double value_mm) {
        return MIDDLE_Y + Math.max(-92, Math.min(92, value_mm * OFFSETS * scale));
    }

    private static @Nullable Double value(TableView.@Nullable Offset offset) {
        return offset == null ? null : offset.value_mm();
    }

    private void limits(TableView.@Nullable Offset offset, double at, int outward) {
        if (offset == null || offset.limit_mm() == null) {
            return;
        }
        double limit = offset.limit_mm();
        double high = offset(-limit);
        double low = offset(limit);
        svg.rect(at - 18, high, 36, low - high, "var(--green-wash)");
        for (double y : new double[] {high, low}) {
            svg.line(at - 18, y, at + 18, y, Svg.INK, 2, null);
        }
        String anchor = outward < 0 ? "end" : "start";
        double beside = at + outward * 22;
        svg.text(beside, high + 5, formats.signed(-limit, 1), 13, anchor, Svg.INK, false);
        svg.text(beside, low + 5, formats.signed(limit, 1), 13, anchor, Svg.INK, false);
    }

    private void point(TableView.@Nullable Offset offset, double at, double flagX) {
        if (offset == null) {
            return;
        }
        Double value = offset.value_mm();
        double y = value == null ? MIDDLE_Y : offset(value);
        svg.line(flagX, 40, at, y, Svg.INK_2, 1.2, null);
        if (value != null) {
            svg.ring(at, y, 4.5, Svg.SHEET, Svg.BLUE, 2.5);
        }
        flag(flagX, 27, offset.letter(), offset.verdict());
        svg.text(flagX + 22, 33, value == null ? "not read" : sided(value), 15, "start", Svg.INK, true);
    }

    private String sided(double value_mm) {
        String figure = formats.number(Math.abs(value_mm), 2);
        return figure + (value_mm == 0 ? "" : value_mm > 0 ? " drive" : " non-drive");
    }

    private void flag(double x, double y, String letter, @Nullable String verdict) {
        String colour = verdict == null || verdict.equals("conforming") ? Svg.INK_2 : ScaleDrawing.colour(verdict);
        svg.path("M" + Svg.n(x - 14) + " " + Svg.n(y - 14) + "h18l10 10v18h-28z", Svg.SHEET, colour, 1.8);
        svg.text(x, y + 6, letter, 16, "middle", colour, true);
    }

    // ------------------------------------------------------------------------------------------ drive side

    private void side() {
        view.side().members().forEach(this::member);
        view.side().hubs().forEach(this::hub);
        FrameGeometry g = view.side().geometry();
        if (view.mandrelBase_mm() != null) {
            Point middle = g.headTubeTop().plus(g.headTubeBottom()).times(0.5);
            Point up = g.headTubeTop().minus(g.headTubeBottom());
            Point half = up.times(view.mandrelBase_mm() / 2 / Math.hypot(up.x_mm(), up.y_mm()));
            Point high = middle.plus(half);
            Point low = middle.minus(half);
            svg.line(x(low), y(low), x(high), y(high), Svg.BLUE, 4, null);
            svg.text(
                    x(high) + 12,
                    y(high) + 4,
                    "mandrel " + formats.number(view.mandrelBase_mm(), 0),
                    13,
                    "start",
                    Svg.INK_2,
                    false);
        }
        if (view.built() != null) {
            built(view.built(), g);
        }
        for (TableView.Station station : view.stations()) {
            svg.ring(x(station.at()), y(station.at()), 5, Svg.SHEET, Svg.BLUE, 2.5);
            svg.text(x(station.at()) - 10, y(station.at()) + 5, station.label(), 13, "end", Svg.INK_2, false);
        }
        double below = 0;
        for (TableView.Flag flag : view.flags()) {
            double fx = x(flag.at());
            double fy = y(flag.at());
            boolean low = flag.at().y_mm() < 200;
            double toX = low ? Math.max(24, fx - 6 + below) : fx - 64;
            double toY = low ? Math.min(662, fy + 50) : fy + 12;
            below += low ? 40 : 0;
            svg.line(toX, toY, fx, fy, Svg.INK_2, 1.2, null);
            svg.circle(fx, fy, 3.2, Svg.INK_2);
            flag(toX, toY, flag.letter(), flag.verdict());
        }
    }

    /** Axes as they were built, their deviations drawn larger, about the drawing's own places. */
    private void built(TableView.Built built, FrameGeometry g) {
        Point off = new Point(most(built.reach_mm()), most(built.stack_mm()));
        Point top = g.headTubeTop().plus(off);
        Point down = turned(g.headTubeBottom().minus(g.headTubeTop()), built.headAngle_deg());
        asBuilt(top, top.plus(down));
        if (built.stack_mm() != null || built.reach_mm() != null) {
            svg.ring(x(top), y(top), 4.5, Svg.SHEET, Svg.BLUE, 2.5);
        }
        if (built.seatAngle_deg() != null) {
            Point foot = g.seatTubeFoot();
            asBuilt(foot, foot.plus(turned(g.seatTubeTop().minus(foot), built.seatAngle_deg())));
        }
        svg.text(
                x(g.rearAxle()) - 30,
                LOW + 48,
                "blue: as built, off the drawing " + formats.number(SIDE, 0) + " times larger",
                13,
                "start",
                Svg.INK_2,
                false);
    }

    private void asBuilt(Point from, Point to) {
        svg.line(x(from), y(from), x(to), y(to), Svg.BLUE, 3, null);
    }

    private static double most(@Nullable Double off_mm) {
        return off_mm == null ? 0 : Math.max(-SIDE_MOST_MM, Math.min(SIDE_MOST_MM, off_mm * SIDE));
    }

    /** A tube that rises rearwards turns towards the rear where it is flatter than drawn. */
    private static Point turned(Point along, @Nullable Double steeper_deg) {
        double rad = steeper_deg == null
                ? 0
                : Math.toRadians(Math.max(-SIDE_MOST_DEG, Math.min(SIDE_MOST_DEG, steeper_deg * SIDE)));
        // Seen from the drive side with the front to the right, a rearward rising axis grows steeper clockwise.
        return new Point(
                along.x_mm() * Math.cos(rad) + along.y_mm() * Math.sin(rad),
                along.y_mm() * Math.cos(rad) - along.x_mm() * Math.sin(rad));
    }

    private void member(Member member) {
        boolean lit = member.part() == Part.HEAD_TUBE && view.mandrelBase_mm() != null;
        String outline = member.corners().stream()
                .map(at -> Svg.n(x(at)) + " " + Svg.n(y(at)))
                .collect(Collectors.joining("L", "M", "z"));
        svg.path(outline, lit ? Svg.BLUE : Svg.SHEET, lit ? Svg.BLUE : Svg.INK, 2);
        svg.line(x(member.from()), y(member.from()), x(member.to()), y(member.to()), Svg.INK_3, 1, Svg.CHAIN);
    }

    private void hub(Hub hub) {
        svg.ring(x(hub.centre()), y(hub.centre()), hub.outside_mm() / 2 * scale, Svg.SHEET, Svg.INK, 2);
        svg.ring(x(hub.centre()), y(hub.centre()), hub.bore_mm() / 2 * scale, Svg.SHEET, Svg.INK, 1);
    }

    // ------------------------------------------------------------------------------------------ from the front

    private void fan(TableView.Lean lean) {
        svg.line(FAN_X, FAN_Y, FAN_X, FAN_Y - FAN - 26, Svg.INK_3, 1, Svg.CHAIN);
        double seat = lean.seat_deg() == null ? 0 : lean.seat_deg();
        if (lean.limit_deg() != null) {
            double limit = lean.limit_deg();
            double guard = lean.guard_deg();
            wedge(seat - limit, seat + limit, "var(--green-wash)");
            if (guard > 0) {
                wedge(seat - limit - guard, seat - limit + guard, "url(#h-amber)");
                wedge(seat + limit - guard, seat + limit + guard, "url(#h-amber)");
            }
            for (int side : List.of(-1, 1)) {
                ray(seat + side * limit, FAN * 0.42, FAN, Svg.INK, 2.5);
                String words = formats.number(limit, 2) + "°";
                svg.text(
                        at(seat + side * limit, FAN * 0.62, true) - side * 12,
                        at(seat + side * limit, FAN * 0.62, false) + 12,
                        words,
                        13,
                        side > 0 ? "end" : "start",
                        Svg.INK,
                        true);
            }
        }
        if (lean.seat_deg() != null) {
            ray(lean.seat_deg(), 0, FAN, Svg.INK, 4);
            svg.text(
                    at(lean.seat_deg(), FAN + 10, true),
                    at(lean.seat_deg(), FAN + 10, false) - 6,
                    "seat tube",
                    13,
                    "middle",
                    Svg.INK,
                    false);
        }
        if (lean.head_deg() != null) {
            String colour = lean.verdict() == null ? Svg.BLUE : ScaleDrawing.colour(lean.verdict());
            ray(lean.head_deg(), 0, FAN + 8, colour, 4);
            svg.ring(
                    at(lean.head_deg(), FAN + 8, true), at(lean.head_deg(), FAN + 8, false), 5, Svg.SHEET, colour, 2.5);
            boolean left = at(lean.head_deg(), FAN, true) < FAN_X;
            svg.text(
                    Math.min(WIDTH - 76, Math.max(80, at(lean.head_deg(), FAN + 8, true) + (left ? -8 : 8))),
                    at(lean.head_deg(), FAN + 8, false) - 12,
                    "head tube",
                    13,
                    left ? "end" : "start",
                    colour,
                    true);
        }
        svg.path("M" + (FAN_X - 36) + " " + FAN_Y + "h72v20h-72z", Svg.SHEET, Svg.INK, 2);
        if (view.shellWidth_mm() != null) {
            svg.text(FAN_X, FAN_Y + 16, formats.number(view.shellWidth_mm(), 0), 13, "middle", Svg.INK, false);
        }
        svg.text(FAN_X - 46, FAN_Y + 16, "drive", 13, "end", Svg.INK_2, false);
        svg.text(FAN_X + 46, FAN_Y + 16, "non-drive", 13, "start", Svg.INK_2, false);
        svg.text(FAN_X, FAN_Y + 40, "lean drawn 100 times larger", 13, "middle", Svg.INK_2, false);
    }

    /** From the front the drive side lies at the left. */
    private static double at(double lean_deg, double reach, boolean x) {
        double drawn = Math.toRadians(Math.max(-MOST_DEG, Math.min(MOST_DEG, lean_deg * LEANS)));
        return x ? FAN_X - Math.sin(drawn) * reach : FAN_Y - Math.cos(drawn) * reach;
    }

    private void ray(double lean_deg, double from, double to, String colour, double width) {
        svg.line(
                at(lean_deg, from, true),
                at(lean_deg, from, false),
                at(lean_deg, to, true),
                at(lean_deg, to, false),
                colour,
                width,
                null);
    }

    private void wedge(double from_deg, double to_deg, String fill) {
        double r = FAN * 0.88;
        svg.path(
                "M" + Svg.n(FAN_X) + " " + Svg.n(FAN_Y) + "L" + Svg.n(at(from_deg, r, true)) + " "
                        + Svg.n(at(from_deg, r, false)) + "A" + Svg.n(r) + " " + Svg.n(r) + " 0 0 0 "
                        + Svg.n(at(to_deg, r, true)) + " " + Svg.n(at(to_deg, r, false)) + "z",
                fill,
                null,
                0);
    }
}
