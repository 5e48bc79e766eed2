package org.trammel.calc.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.trammel.calc.drawing.Mark.Anchor;
import org.trammel.calc.drawing.Mark.Fill;
import org.trammel.calc.drawing.Mark.Hand;
import org.trammel.calc.drawing.Stretch.Kind;
import org.trammel.calc.geometry.Paper;
import org.trammel.calc.geometry.RearPlan;
import org.trammel.calc.geometry.SpacePoint;

/** The rear end from above, the drive side below: chainstays alone, as the seatstays would hide them. */
public final class PlanSheet {

    private static final int LARGEST = 2;
    private static final double BEHIND_MM = 11;
    private static final double AHEAD_MM = 21;
    private static final double ABOVE_MM = 20;
    private static final double BELOW_MM = 20;
    /** So much of a dropout is seen behind the axle. */
    private static final double TAIL_MM = 10;

    private final RearPlan plan;
    private final RearPlan.Sizes sizes;
    private final SheetFrame sheet;
    private final Board board;
    private final Lettering lettering;
    private final Scale scale;
    private final List<SpacePoint> axis;
    private final double axle_mm;
    private final double outer_mm;

    private PlanSheet(RearPlan plan, TitleBlock block, Lettering lettering, Paper paper) {
        this.plan = plan;
        this.sizes = plan.sizes();
        this.sheet = new SheetFrame(paper, block, lettering);
        this.board = sheet.board();
        this.lettering = lettering;
        this.axis = plan.axis();
        this.axle_mm = plan.geometry().rearAxle().x_mm();
        this.outer_mm = Math.max(
                Math.max(
                        sizes.shellWidth_mm() / 2,
                        sizes.axleWidth_mm() / 2 + sizes.plate().thickness_mm()),
                axis.stream().mapToDouble(SpacePoint::z_mm).max().orElse(0) + sizes.chainstayOutside_mm() / 2);
        this.scale = scale();
    }

    /**
     * Draws it.
     *
     * @param number of this sheet
     * @param of how many there are
     */
    public static DrawnSheet of(RearPlan plan, TitleBlock block, Lettering lettering, Paper paper, int number, int of) {
        return new PlanSheet(plan, block, lettering, paper).drawn(number, of);
    }

    private SpacePoint rear() {
        return axis.get(axis.size() - 1);
    }

    private double behind_mm() {
        return axle_mm - TAIL_MM;
    }

    private Scale scale() {
        double front = sizes.shellOutside_mm() / 2;
        int fits = Scale.fitting(
                front - behind_mm(),
                2 * outer_mm,
                sheet.right() - sheet.left() - BEHIND_MM - AHEAD_MM,
                sheet.top() - sheet.bottom() - ABOVE_MM - BELOW_MM,
                LARGEST);
        double middle = (sheet.left() + BEHIND_MM + sheet.right() - AHEAD_MM) / 2;
        double up = (sheet.bottom() + BELOW_MM + sheet.top() - ABOVE_MM) / 2;
        return new Scale(fits, new At(middle - (front + behind_mm()) / 2 / fits, up));
    }

    /** A place seen from above: z, to the drive side, runs down the sheet. */
    private At seen(double x_mm, double z_mm) {
        return scale.at(x_mm, -z_mm);
    }

    private At seen(SpacePoint place, int side) {
        return seen(place.x_mm(), side * place.z_mm());
    }

    private DrawnSheet drawn(int number, int of) {
        sheet.draw("A: rear end from above, without seatstays", scale.scale(), number, of);
        for (int side : new int[] {-1, 1}) {
            dropout(side);
            stay(side);
        }
        shell();
        axes();
        tyre();
        dimensions();
        return sheet.sheet(
                "Rear end from above, drive side below: axle " + lettering.mm(sizes.axleWidth_mm())
                        + " mm, shell " + lettering.mm(sizes.shellWidth_mm()) + " mm"
                        + plan.tyreRoom()
                                .map(room -> ", " + room(room.room_mm()))
                                .orElse("") + ".",
                scale.scale());
    }

    // ------------------------------------------------------------------------------------------ parts

    private void dropout(int side) {
        double face = side * sizes.axleWidth_mm() / 2;
        double outside = face + side * sizes.plate().thickness_mm();
        double end = rear().x_mm();
        board.area(
                List.of(seen(behind_mm(), face), seen(end, face), seen(end, outside), seen(behind_mm(), outside)),
                Pen.OUTLINE,
                Fill.PAPER);
    }

    private void stay(int side) {
        List<At> places =
                new ArrayList<>(axis.stream().map(place -> seen(place, side)).toList());
        At onward = places.get(0).minus(places.get(1)).unit();
        At front = places.get(0);
        // it runs on under the shell, which is drawn over it
        places.set(0, front.plus(onward, scale.length(sizes.shellOutside_mm() / 3)));
        double half = scale.length(sizes.chainstayOutside_mm() / 2);
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
        At rear = places.get(places.size() - 1);
        At along = places.get(places.size() - 2).minus(rear).unit();
        slot(side, along);
        List<At> centre = new ArrayList<>(places);
        centre.set(0, front.plus(onward, 4));
        centre.set(centre.size() - 1, rear.plus(along, -4));
        board.path(centre, Pen.CENTRE, Kind.THIN);
    }

    /** The part of the plate that the stay's slot takes in. */
    private void slot(int side, At along) {
        double face = side * sizes.axleWidth_mm() / 2;
        double outside = face + side * sizes.plate().thickness_mm();
        double end = rear().x_mm();
        double deep = end + sizes.plate().depth_mm() * along.x();
        List<At> hidden = List.of(seen(end, face), seen(deep, face), seen(deep, outside), seen(end, outside));
        board.path(hidden, Pen.HIDDEN, Kind.THIN);
    }

    private void shell() {
        double half = sizes.shellOutside_mm() / 2;
        double wide = sizes.shellWidth_mm() / 2;
        board.area(
                List.of(seen(-half, -wide), seen(half, -wide), seen(half, wide), seen(-half, wide)),
                Pen.OUTLINE,
                Fill.PAPER);
        double bore = sizes.shellBore_mm() / 2;
        if (bore > 0) {
            board.line(seen(-bore, -wide), seen(-bore, wide), Pen.HIDDEN);
            board.line(seen(bore, -wide), seen(bore, wide), Pen.HIDDEN);
        }
    }

    private void axes() {
        double over = 5.0 * scale.scale();
        board.line(seen(0, -sizes.shellWidth_mm() / 2 - over), seen(0, sizes.shellWidth_mm() / 2 + over), Pen.CENTRE);
        double axle = sizes.axleWidth_mm() / 2 + sizes.plate().thickness_mm() + over;
        board.line(seen(axle_mm, -axle), seen(axle_mm, axle), Pen.CENTRE);
        board.line(seen(behind_mm() - over, 0), seen(sizes.shellOutside_mm() / 2 + over, 0), Pen.CENTRE);
    }

    /** Its front half, cut off ahead of the axle. */
    private void tyre() {
        Double width = sizes.tyreWidth_mm();
        if (width == null) {
            return;
        }
        double half = width / 2;
        double core = axle_mm + plan.geometry().layout().rearWheelRadius_mm() - half;
        double cut = axle_mm + 40;
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

    // ------------------------------------------------------------------------------------------ dimensions

    private void dimensions() {
        Dimensions of = new Dimensions(board);
        double face = sizes.axleWidth_mm() / 2;
        double wide = sizes.shellWidth_mm() / 2;
        double right = seen(sizes.shellOutside_mm() / 2, 0).x();
        double low = seen(0, outer_mm).y();
        double stays = axis.get(0).z_mm();
        double frontX = axis.get(0).x_mm();

        side("non-drive side", -1);
        side("drive side", 1);
        of.upright(
                seen(behind_mm(), face),
                seen(behind_mm(), -face),
                lettering.mm(sizes.axleWidth_mm()),
                seen(behind_mm(), 0).x() - 7,
                seen(behind_mm(), 0).x() - 5);
        of.upright(seen(frontX, stays), seen(frontX, -stays), lettering.mm(2 * stays), right + 8, right + 7);
        of.upright(
                seen(sizes.shellOutside_mm() / 2, wide),
                seen(sizes.shellOutside_mm() / 2, -wide),
                lettering.mm(sizes.shellWidth_mm()),
                right + 16,
                right + 15);
        of.level(
                seen(axle_mm, face + sizes.plate().thickness_mm()),
                seen(0, wide),
                lettering.mm(-axle_mm),
                low - 14,
                low - 12,
                low - 16);
        notes(of);
    }

    private void side(String words, int side) {
        At at = seen(0, side * outer_mm);
        double y = side > 0 ? at.y() - 4.5 : at.y() + 2;
        board.words(new At(seen(axle_mm * 0.74, 0).x(), y), words, 3.5, Anchor.MIDDLE, Hand.PLAIN);
    }

    private void notes(Dimensions of) {
        plan.tyreRoom().ifPresent(room -> {
            SpacePoint on = room.onStay();
            double inner = on.z_mm() - sizes.chainstayOutside_mm() / 2;
            of.note(seen(on.x_mm(), inner), room(room.room_mm()), 24, 20, 30, 36, 44, 52);
            of.note(
                    seen(axle_mm + 130, -Math.min(sizes.tyreWidth_mm() / 2, sizes.axleWidth_mm() / 2)),
                    "tyre " + lettering.mm(sizes.tyreWidth_mm()) + " wide",
                    10,
                    7,
                    14,
                    20);
        });
        SpacePoint third = axis.get(0).between(axis.get(1), axis.size() > 2 ? 0.6 : 0.35);
        At edge = seen(third.x_mm(), -third.z_mm()).plus(new At(0, scale.length(sizes.chainstayOutside_mm() / 2)));
        of.note(
                edge,
                "Ø " + lettering.mm(sizes.chainstayOutside_mm()) + ", splay "
                        + lettering.degrees(plan.chainstay().chord().splay_rad())
                        + (axis.size() > 2 ? " end to end" : ""),
                10,
                14,
                18,
                7,
                24,
                30);
    }

    private String room(double room_mm) {
        return room_mm < 0
                ? "tyre and stay overlap by " + lettering.mm(-room_mm)
                : "tyre clear of the stay by " + lettering.mm(room_mm);
    }
}
