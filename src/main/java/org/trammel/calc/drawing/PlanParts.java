package org.trammel.calc.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.drawing.Mark.Anchor;
import org.trammel.calc.drawing.Mark.Fill;
import org.trammel.calc.drawing.Mark.Hand;
import org.trammel.calc.drawing.Stretch.Kind;
import org.trammel.calc.geometry.DropoutPlate;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.SpacePoint;
import org.trammel.calc.geometry.TyreRoom;

/** What stays and swing arms have in common seen from above: two sides that end at dropouts, and the tyre between them. */
final class PlanParts {

    private static final int LARGEST = 2;
    private static final double BEHIND_MM = 11;
    private static final double AHEAD_MM = 21;
    private static final double ABOVE_MM = 20;
    private static final double BELOW_MM = 20;
    /** So much of a dropout is seen behind the axle. */
    private static final double TAIL_MM = 10;

    private final Board board;
    private final Lettering lettering;
    private final Rear rear;
    private final double behind_mm;
    private final Scale scale;

    /**
     * What is drawn.
     *
     * @param axis of the drive side, from its front end to its rear end
     * @param width_mm of a side across
     * @param front_mm how far ahead of the shell's centre the view reaches
     * @param outer_mm how far from the middle plane anything of it stands
     * @param axleWidth_mm between the faces that hold the hub
     * @param tyreWidth_mm null where it is not known
     */
    record Rear(
            FrameGeometry geometry,
            List<SpacePoint> axis,
            double width_mm,
            double front_mm,
            double outer_mm,
            double axleWidth_mm,
            DropoutPlate plate,
            @Nullable Double tyreWidth_mm) {

        /** How far out the sides or the dropouts stand, whatever else does. */
        static double outer_mm(List<SpacePoint> axis, double width_mm, double axleWidth_mm, DropoutPlate plate) {
            return Math.max(
                    axleWidth_mm / 2 + plate.thickness_mm(),
                    axis.stream().mapToDouble(SpacePoint::z_mm).max().orElse(0) + width_mm / 2);
        }
    }

    PlanParts(SheetFrame sheet, Lettering lettering, Rear rear) {
        this.board = sheet.board();
        this.lettering = lettering;
        this.rear = rear;
        this.behind_mm = axle_mm(rear) - TAIL_MM;
        this.scale = scale(sheet);
    }

    private static double axle_mm(Rear rear) {
        return rear.geometry().rearAxle().x_mm();
    }

    private Scale scale(SheetFrame sheet) {
        double front = rear.front_mm();
        int fits = Scale.fitting(
                front - behind_mm,
                2 * rear.outer_mm(),
                sheet.right() - sheet.left() - BEHIND_MM - AHEAD_MM,
                sheet.top() - sheet.bottom() - ABOVE_MM - BELOW_MM,
                LARGEST);
        double middle = (sheet.left() + BEHIND_MM + sheet.right() - AHEAD_MM) / 2;
        double up = (sheet.bottom() + BELOW_MM + sheet.top() - ABOVE_MM) / 2;
        return new Scale(fits, new At(middle - (front + behind_mm) / 2 / fits, up));
    }

    Scale scale() {
        return scale;
    }

    double axle_mm() {
        return axle_mm(rear);
    }

    /** A place seen from above: z, to the drive side, runs down the sheet. */
    At seen(double x_mm, double z_mm) {
        return scale.at(x_mm, -z_mm);
    }

    private At seen(SpacePoint place, int side) {
        return seen(place.x_mm(), side * place.z_mm());
    }

    private SpacePoint end() {
        return rear.axis().get(rear.axis().size() - 1);
    }

    /**
     * Both dropouts and both sides.
     *
     * @param runOn_mm so far a side runs on under what is drawn over its front end
     */
    void sides(double runOn_mm) {
        for (int side : new int[] {-1, 1}) {
            dropout(side);
            side(side, runOn_mm);
        }
    }

    private void dropout(int side) {
        double face = side * rear.axleWidth_mm() / 2;
        double outside = face + side * rear.plate().thickness_mm();
        double end = end().x_mm();
        board.area(
                List.of(seen(behind_mm, face), seen(end, face), seen(end, outside), seen(behind_mm, outside)),
                Pen.OUTLINE,
                Fill.PAPER);
    }

    private void side(int side, double runOn_mm) {
        member(side, rear.axis(), rear.width_mm(), runOn_mm);
    }

    /**
     * A side, stay or upper member that ends at the dropout.
     *
     * @param axis of the drive side's
     */
    void member(int side, List<SpacePoint> axis, double width_mm, double runOn_mm) {
        List<At> places =
                new ArrayList<>(axis.stream().map(place -> seen(place, side)).toList());
        At onward = places.get(0).minus(places.get(1)).unit();
        At front = places.get(0);
        places.set(0, front.plus(onward, scale.length(runOn_mm)));
        double half = scale.length(width_mm / 2);
        List<At> outline = new ArrayList<>();
        for (int way : new int[] {1, -1}) {
            List<At> edge = new ArrayList<>();
            for (int i = 0; i < places.size(); i++) {
                At before = places.get(Math.max(0, i - 1));
                At after = places.get(Math.min(places.size() - 1, i + 1));
                edge.add(places.get(i).plus(before.minus(after).unit().left(), way * half));
            }
            if (way > 0) {
                Collections.reverse(edge);
            }
            outline.addAll(edge);
        }
        board.area(outline, Pen.OUTLINE, Fill.PAPER);
        At last = places.get(places.size() - 1);
        At along = places.get(places.size() - 2).minus(last).unit();
        slot(side, axis.get(axis.size() - 1).x_mm(), along);
        List<At> centre = new ArrayList<>(places);
        centre.set(0, front.plus(onward, 4));
        centre.set(centre.size() - 1, last.plus(along, -4));
        board.path(centre, Pen.CENTRE, Kind.THIN);
    }

    /** The part of the plate that the side's slot takes in. */
    private void slot(int side, double end, At along) {
        double face = side * rear.axleWidth_mm() / 2;
        double outside = face + side * rear.plate().thickness_mm();
        double deep = end + rear.plate().depth_mm() * along.x();
        List<At> hidden = List.of(seen(end, face), seen(deep, face), seen(deep, outside), seen(end, outside));
        board.path(hidden, Pen.HIDDEN, Kind.THIN);
    }

    /**
     * A part from edge to edge across, such as shell, boss or bridge.
     *
     * @param x_mm its middle
     * @param outside_mm along the frame
     */
    void across(double x_mm, double outside_mm, double fromZ_mm, double toZ_mm) {
        double half = outside_mm / 2;
        board.area(
                List.of(
                        seen(x_mm - half, fromZ_mm),
                        seen(x_mm + half, fromZ_mm),
                        seen(x_mm + half, toZ_mm),
                        seen(x_mm - half, toZ_mm)),
                Pen.OUTLINE,
                Fill.PAPER);
    }

    /** Axes of the front part, of the axle and of the middle plane. */
    void axes(double frontX_mm, double frontHalf_mm) {
        double over = 5.0 * scale.scale();
        board.line(seen(frontX_mm, -frontHalf_mm - over), seen(frontX_mm, frontHalf_mm + over), Pen.CENTRE);
        double axle = rear.axleWidth_mm() / 2 + rear.plate().thickness_mm() + over;
        board.line(seen(axle_mm(), -axle), seen(axle_mm(), axle), Pen.CENTRE);
        board.line(seen(behind_mm - over, 0), seen(rear.front_mm() + over, 0), Pen.CENTRE);
    }

    /** Its front half, cut off ahead of the axle. */
    void tyre() {
        Double width = rear.tyreWidth_mm();
        if (width == null) {
            return;
        }
        double half = width / 2;
        double core = axle_mm() + rear.geometry().layout().rearWheelRadius_mm() - half;
        double cut = axle_mm() + 40;
        List<At> outline = new ArrayList<>(List.of(seen(cut, -half)));
        for (int i = 0; i <= 36; i++) {
            double turn = -Math.PI / 2 + Math.PI * i / 36;
            outline.add(seen(core + half * Math.cos(turn), half * Math.sin(turn)));
        }
        outline.add(seen(cut, half));
        board.path(outline, Pen.ADJACENT, Kind.THIN);
        At from = seen(cut, -half - 6);
        At to = seen(cut, half + 6);
        At middle = seen(cut, 0);
        board.path(
                List.of(
                        from,
                        middle.plus(new At(0, 1.6)),
                        middle.plus(new At(1.4, 0.6)),
                        middle.plus(new At(-1.4, -0.6)),
                        middle.plus(new At(0, -1.6)),
                        to),
                Pen.NARROW,
                Kind.THIN);
    }

    void namesOfTheSides() {
        name("non-drive side", -1);
        name("drive side", 1);
    }

    private void name(String words, int side) {
        At at = seen(0, side * rear.outer_mm());
        double y = side > 0 ? at.y() - 4.5 : at.y() + 2;
        board.words(new At(seen(axle_mm() * 0.74, 0).x(), y), words, 3.5, Anchor.MIDDLE, Hand.PLAIN);
    }

    void axleWidth(Dimensions of) {
        double face = rear.axleWidth_mm() / 2;
        double left = seen(behind_mm, 0).x();
        of.upright(
                seen(behind_mm, face), seen(behind_mm, -face), lettering.mm(rear.axleWidth_mm()), left - 7, left - 5);
    }

    /** Along the frame from the axle to what the rear end hangs on. */
    void reach(Dimensions of, double frontX_mm, double frontHalf_mm) {
        double low = seen(0, rear.outer_mm()).y();
        of.level(
                seen(axle_mm(), rear.axleWidth_mm() / 2 + rear.plate().thickness_mm()),
                seen(frontX_mm, frontHalf_mm),
                lettering.mm(frontX_mm - axle_mm()),
                low - 14,
                low - 12,
                low - 16);
    }

    /** The room between the tyre and a member of one side. */
    void roomBeside(Dimensions of, int side, TyreRoom room, double width_mm, String member) {
        SpacePoint on = room.onAxis();
        of.note(
                seen(on.x_mm(), side * (on.z_mm() - width_mm / 2)),
                room(room.room_mm(), member),
                24,
                20,
                30,
                36,
                44,
                52);
    }

    /** The room between tyre and side, and the tyre. */
    void roomOfTheTyre(Dimensions of, TyreRoom room, String side) {
        Double tyre = rear.tyreWidth_mm();
        roomBeside(of, 1, room, rear.width_mm(), side);
        if (tyre != null) {
            of.note(
                    seen(axle_mm() + 130, -Math.min(tyre / 2, rear.axleWidth_mm() / 2)),
                    "tyre " + lettering.mm(tyre) + " wide",
                    10,
                    7,
                    14,
                    20);
        }
    }

    /** About a side, at a share of the way from its front end to its next corner. */
    void aboutASide(Dimensions of, int side, double share, String words) {
        about(of, side, rear.axis(), rear.width_mm(), share, words);
    }

    /** About a member's outer edge. */
    void about(Dimensions of, int side, List<SpacePoint> axis, double width_mm, double share, String words) {
        SpacePoint place = axis.get(0).between(axis.get(1), share);
        At edge = seen(place.x_mm(), side * (place.z_mm() + width_mm / 2));
        of.note(edge, words, 10, 14, 18, 7, 24, 30, 38, 46);
    }

    String room(double room_mm, String side) {
        return room_mm < 0
                ? "tyre and " + side + " overlap by " + lettering.mm(-room_mm)
                : "tyre clear of the " + side + " by " + lettering.mm(room_mm);
    }
}
