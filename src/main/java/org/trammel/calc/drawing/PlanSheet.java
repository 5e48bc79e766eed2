package org.trammel.calc.drawing;

import java.util.List;
import org.trammel.calc.geometry.Paper;
import org.trammel.calc.geometry.RearPlan;
import org.trammel.calc.geometry.SpacePoint;

/** The rear end from above, the drive side below: chainstays alone, as the seatstays would hide them. */
public final class PlanSheet {

    private final RearPlan plan;
    private final RearPlan.Sizes sizes;
    private final SheetFrame sheet;
    private final Board board;
    private final Lettering lettering;
    private final List<SpacePoint> axis;
    private final PlanParts parts;

    private PlanSheet(RearPlan plan, TitleBlock block, Lettering lettering, Paper paper) {
        this.plan = plan;
        this.sizes = plan.sizes();
        this.sheet = new SheetFrame(paper, block, lettering);
        this.board = sheet.board();
        this.lettering = lettering;
        this.axis = plan.axis();
        this.parts = new PlanParts(
                sheet,
                lettering,
                new PlanParts.Rear(
                        plan.geometry(),
                        axis,
                        sizes.chainstayOutside_mm(),
                        sizes.shellOutside_mm() / 2,
                        Math.max(
                                sizes.shellWidth_mm() / 2,
                                PlanParts.Rear.outer_mm(
                                        axis, sizes.chainstayOutside_mm(), sizes.axleWidth_mm(), sizes.plate())),
                        sizes.axleWidth_mm(),
                        sizes.plate(),
                        sizes.tyreWidth_mm()));
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

    private DrawnSheet drawn(int number, int of) {
        int scale = parts.scale().scale();
        sheet.draw("A: rear end from above, without seatstays", scale, number, of);
        parts.sides(sizes.shellOutside_mm() / 3);
        shell();
        parts.axes(0, sizes.shellWidth_mm() / 2);
        parts.tyre();
        dimensions();
        return sheet.sheet(
                "Rear end from above, drive side below: axle " + lettering.mm(sizes.axleWidth_mm())
                        + " mm, shell " + lettering.mm(sizes.shellWidth_mm()) + " mm"
                        + plan.tyreRoom()
                                .map(room -> ", " + parts.room(room.room_mm(), "stay"))
                                .orElse("") + ".",
                scale);
    }

    private void shell() {
        double wide = sizes.shellWidth_mm() / 2;
        parts.across(0, sizes.shellOutside_mm(), -wide, wide);
        double bore = sizes.shellBore_mm() / 2;
        if (bore > 0) {
            board.line(parts.seen(-bore, -wide), parts.seen(-bore, wide), Pen.HIDDEN);
            board.line(parts.seen(bore, -wide), parts.seen(bore, wide), Pen.HIDDEN);
        }
    }

    private void dimensions() {
        Dimensions of = new Dimensions(board);
        double wide = sizes.shellWidth_mm() / 2;
        double front = sizes.shellOutside_mm() / 2;
        double right = parts.seen(front, 0).x();
        double stays = axis.get(0).z_mm();
        double frontX = axis.get(0).x_mm();

        parts.namesOfTheSides();
        parts.axleWidth(of);
        of.upright(
                parts.seen(frontX, stays), parts.seen(frontX, -stays), lettering.mm(2 * stays), right + 8, right + 7);
        of.upright(
                parts.seen(front, wide),
                parts.seen(front, -wide),
                lettering.mm(sizes.shellWidth_mm()),
                right + 16,
                right + 15);
        parts.reach(of, 0, wide);
        plan.tyreRoom().ifPresent(room -> parts.roomOfTheTyre(of, room, "stay"));
        boolean bent = axis.size() > 2;
        parts.aboutASide(
                of,
                -1,
                bent ? 0.6 : 0.35,
                "Ø " + lettering.mm(sizes.chainstayOutside_mm()) + ", splay "
                        + lettering.degrees(plan.chainstay().chord().splay_rad()) + (bent ? " end to end" : ""));
    }
}
