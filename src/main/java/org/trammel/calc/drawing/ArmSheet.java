package org.trammel.calc.drawing;

import java.util.List;
import org.trammel.calc.geometry.ArmPlan;
import org.trammel.calc.geometry.Paper;
import org.trammel.calc.geometry.SpacePoint;

/** A swing arm from above, the drive side below and nothing on it: its sides alone, as its upper members would hide them. */
public final class ArmSheet {

    /** A side has no room ahead of the pivot, yet the pivot's axis wants to be seen. */
    private static final double AHEAD_OF_PIVOT_MM = 12;

    private final ArmPlan plan;
    private final ArmPlan.Sizes sizes;
    private final SheetFrame sheet;
    private final Lettering lettering;
    private final List<SpacePoint> axis;
    private final double front_mm;
    private final double half_mm;
    private final PlanParts parts;

    private ArmSheet(ArmPlan plan, TitleBlock block, Lettering lettering, Paper paper) {
        this.plan = plan;
        this.sizes = plan.sizes();
        this.sheet = new SheetFrame(paper, block, lettering);
        this.lettering = lettering;
        this.axis = plan.axis();
        ArmPlan.Bosses bosses = sizes.bosses();
        this.front_mm = plan.pivot().x_mm() + (bosses == null ? AHEAD_OF_PIVOT_MM : bosses.outside_mm() / 2);
        this.half_mm = bosses == null ? sizes.inside_mm() / 2 + sizes.width_mm() : bosses.over_mm() / 2;
        this.parts = new PlanParts(
                sheet,
                lettering,
                new PlanParts.Rear(
                        plan.geometry(),
                        axis,
                        sizes.width_mm(),
                        front_mm,
                        Math.max(
                                half_mm,
                                PlanParts.Rear.outer_mm(axis, sizes.width_mm(), sizes.axleWidth_mm(), sizes.plate())),
                        sizes.axleWidth_mm(),
                        sizes.plate(),
                        sizes.tyreWidth_mm()));
    }

    /**
     * Draws it.
     *
     * @param missing what is not drawn and why, a sentence each; stands on the sheet
     * @param number of this sheet
     * @param of how many there are
     */
    public static DrawnSheet of(
            ArmPlan plan,
            List<String> missing,
            TitleBlock block,
            Lettering lettering,
            Paper paper,
            int number,
            int of) {
        return new ArmSheet(plan, block, lettering, paper).drawn(missing, number, of);
    }

    private DrawnSheet drawn(List<String> missing, int number, int of) {
        int scale = parts.scale().scale();
        sheet.draw("A: swing arm from above, without its upper members", scale, number, of);
        bridge();
        parts.sides(0);
        bosses();
        parts.axes(plan.pivot().x_mm(), half_mm);
        parts.tyre();
        parts.namesOfTheSides();
        sheet.remarks(missing);
        dimensions();
        return sheet.sheet(
                "Swing arm from above, drive side below: axle " + lettering.mm(sizes.axleWidth_mm())
                        + " mm, inside between its sides " + lettering.mm(sizes.inside_mm()) + " mm"
                        + plan.tyreRoom()
                                .map(room -> ", " + parts.room(room.room_mm(), "side"))
                                .orElse("") + ".",
                scale);
    }

    /** From axis to axis of the sides, which are drawn over its ends. */
    private void bridge() {
        ArmPlan.Bridge bridge = sizes.bridge();
        if (bridge != null) {
            double x = plan.bridgeX_mm(bridge);
            double reaches = plan.sideZ_mm(x);
            parts.across(x, bridge.outside_mm(), -reaches, reaches);
        }
    }

    private void bosses() {
        ArmPlan.Bosses bosses = sizes.bosses();
        if (bosses != null) {
            for (int side : new int[] {-1, 1}) {
                parts.across(plan.pivot().x_mm(), bosses.outside_mm(), side * sizes.inside_mm() / 2, side * half_mm);
            }
        }
    }

    private void dimensions() {
        Dimensions of = new Dimensions(sheet.board());
        double pivot = plan.pivot().x_mm();
        double inside = sizes.inside_mm() / 2;
        double right = parts.seen(front_mm, 0).x();

        parts.axleWidth(of);
        of.upright(
                parts.seen(pivot, inside),
                parts.seen(pivot, -inside),
                lettering.mm(sizes.inside_mm()),
                right + 8,
                right + 7);
        ArmPlan.Bosses bosses = sizes.bosses();
        if (bosses != null) {
            double edge = pivot + bosses.outside_mm() / 2;
            of.upright(
                    parts.seen(edge, half_mm),
                    parts.seen(edge, -half_mm),
                    lettering.mm(bosses.over_mm()),
                    right + 16,
                    right + 15);
        }
        parts.reach(of, pivot, half_mm);
        plan.tyreRoom().ifPresent(room -> parts.roomOfTheTyre(of, room, "side"));
        boolean bent = axis.size() > 2;
        parts.aboutASide(
                of,
                bent ? 0.6 : 0.45,
                lettering.mm(sizes.width_mm()) + " wide, splay "
                        + lettering.degrees(plan.side().chord().splay_rad()) + (bent ? " end to end" : ""));
        ArmPlan.Bridge bridge = sizes.bridge();
        if (bridge != null) {
            of.note(
                    parts.seen(plan.bridgeX_mm(bridge) + bridge.outside_mm() / 2, sizes.inside_mm() / 4),
                    "bridge Ø " + lettering.mm(bridge.outside_mm()) + ", " + lettering.mm(bridge.fromPivot_mm())
                            + " from the pivot",
                    14,
                    10,
                    20,
                    28,
                    36);
        }
    }
}
