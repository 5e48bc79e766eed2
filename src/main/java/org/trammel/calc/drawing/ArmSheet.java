package org.trammel.calc.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.ArmPlan;
import org.trammel.calc.geometry.ArmUpper;
import org.trammel.calc.geometry.Paper;
import org.trammel.calc.geometry.SpacePoint;
import org.trammel.calc.geometry.TyreRoom;

/**
 * A swing arm from above, the drive side below and nothing on it. Its upper members would hide its sides, so one is drawn on
 * the non-drive side alone; without them where they are not known.
 */
public final class ArmSheet {

    /** A side has no room ahead of the pivot, yet the pivot's axis wants to be seen. */
    private static final double AHEAD_OF_PIVOT_MM = 12;

    private static final String UPPER = "upper member";

    private final ArmPlan plan;
    private final ArmPlan.Sizes sizes;
    private final @Nullable ArmUpper upper;
    private final SheetFrame sheet;
    private final Lettering lettering;
    private final List<SpacePoint> axis;
    private final double front_mm;
    private final double half_mm;
    private final PlanParts parts;

    private ArmSheet(ArmPlan plan, @Nullable ArmUpper upper, TitleBlock block, Lettering lettering, Paper paper) {
        this.plan = plan;
        this.sizes = plan.sizes();
        this.upper = upper;
        this.sheet = new SheetFrame(paper, block, lettering);
        this.lettering = lettering;
        this.axis = plan.axis();
        ArmPlan.Bosses bosses = sizes.bosses();
        double front = plan.pivot().x_mm() + (bosses == null ? AHEAD_OF_PIVOT_MM : bosses.outside_mm() / 2);
        this.front_mm = upper == null ? front : Math.max(front, upper.eye().x_mm() + cross_mm(upper) / 2);
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
                                Math.max(half_mm, upper == null ? 0 : over_mm(upper) / 2),
                                PlanParts.Rear.outer_mm(axis, sizes.width_mm(), sizes.axleWidth_mm(), sizes.plate())),
                        sizes.axleWidth_mm(),
                        sizes.plate(),
                        sizes.tyreWidth_mm()));
    }

    /**
     * Draws it.
     *
     * @param upper null where the upper members are not known
     * @param missing what is not drawn and why, a sentence each; stands on the sheet
     * @param number of this sheet
     * @param of how many there are
     */
    public static DrawnSheet of(
            ArmPlan plan,
            @Nullable ArmUpper upper,
            List<String> missing,
            TitleBlock block,
            Lettering lettering,
            Paper paper,
            int number,
            int of) {
        return new ArmSheet(plan, upper, block, lettering, paper).drawn(missing, number, of);
    }

    private DrawnSheet drawn(List<String> missing, int number, int of) {
        int scale = parts.scale().scale();
        sheet.draw(
                upper == null
                        ? "A: swing arm from above, without its upper members"
                        : "A: swing arm from above, the drive side without its upper member",
                scale,
                number,
                of);
        bridge();
        parts.sides(0);
        bosses();
        upperMember();
        parts.axes(plan.pivot().x_mm(), half_mm);
        parts.tyre();
        parts.namesOfTheSides();
        sheet.remarks(Stream.concat(atTheShock().stream(), missing.stream()).toList());
        dimensions();
        return sheet.sheet(
                "Swing arm from above, drive side below: axle " + lettering.mm(sizes.axleWidth_mm())
                        + " mm, inside between its sides " + lettering.mm(sizes.inside_mm()) + " mm"
                        + plan.tyreRoom()
                                .map(room -> ", " + parts.room(room.room_mm(), "side"))
                                .orElse("")
                        + upperRoom()
                                .map(room -> ", " + parts.room(room.room_mm(), UPPER))
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

    /** The cross tube lies over both, whole; where it is not known the member ends at the eye. */
    private void upperMember() {
        if (upper != null) {
            parts.member(-1, upper.axis(), upper.sizes().outside_mm(), 0);
            if (upper.sizes().crossOutside_mm() != null) {
                double half = over_mm(upper) / 2;
                parts.across(upper.eye().x_mm(), cross_mm(upper), -half, half);
            }
        }
    }

    private static double cross_mm(ArmUpper upper) {
        Double cross = upper.sizes().crossOutside_mm();
        return cross == null ? 0 : cross;
    }

    /** Over both upper members at the shock. */
    private static double over_mm(ArmUpper upper) {
        return upper.sizes().inside_mm() + 2 * upper.sizes().outside_mm();
    }

    private Optional<TyreRoom> upperRoom() {
        Double tyre = sizes.tyreWidth_mm();
        return upper == null || tyre == null ? Optional.empty() : upper.tyreRoom(plan.geometry(), tyre);
    }

    private void aboutTheUpperMembers(Dimensions of, ArmUpper known) {
        upperRoom()
                .ifPresent(room -> parts.roomBeside(of, -1, room, known.sizes().outside_mm(), UPPER));
        parts.about(
                of,
                -1,
                known.axis(),
                known.sizes().outside_mm(),
                0.45,
                "upper member Ø " + lettering.mm(known.sizes().outside_mm()) + ", splay "
                        + lettering.degrees(known.path().chord().splay_rad()));
    }

    /** What no leader reaches without crossing others. */
    private List<String> atTheShock() {
        return upper == null
                ? List.of()
                : List.of("Upper members " + lettering.mm(upper.sizes().inside_mm()) + " apart inside at the shock"
                        + (upper.sizes().crossOutside_mm() == null
                                ? "."
                                : ", on a cross tube Ø " + lettering.mm(cross_mm(upper)) + "."));
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
                upper == null ? -1 : 1,
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
        if (upper != null) {
            aboutTheUpperMembers(of, upper);
        }
    }
}
