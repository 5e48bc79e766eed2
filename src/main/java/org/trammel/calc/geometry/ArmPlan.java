package org.trammel.calc.geometry;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * A swing arm seen from above with nothing on the frame: its sides from the pivot to the dropouts, its bosses and its bridge
 * as far as they are known, and the tyre where its width is.
 *
 * <pre>
 * side at the pivot   inside / 2 + width / 2 from the middle plane
 * side at its end     g before the axle on the line from pivot to axle, axle width / 2 + o from the middle plane
 * bridge              its middle on that line, so far from the pivot
 * </pre>
 *
 * g from the axle to the end of a side, o its axis outside the axle's face. Bosses begin at the inside of the sides.
 * Validity: sides whose line of the side view runs from pivot to axle, straight or bent outward, as wide all along. Source:
 * space trigonometry. Accuracy that of double precision.
 *
 * @param geometry the frame
 * @param pivot centre of the main pivot in the side view
 * @param side axis of the drive side's; the other one is its mirror image
 * @param sizes what is drawn about the axes
 */
public record ArmPlan(FrameGeometry geometry, Point pivot, BentStay side, Sizes sizes) implements RearView {

    private static final int CORNERS_A_BEND = 24;

    /**
     * Sizes of what is seen.
     *
     * @param inside_mm between the sides at the pivot
     * @param width_mm of a side across
     * @param bosses null where they are not known
     * @param bridge null where it is not known
     * @param axleWidth_mm between the faces that hold the hub
     * @param plate the dropouts
     * @param tyreWidth_mm of the rear tyre; null where it is not known
     */
    public record Sizes(
            double inside_mm,
            double width_mm,
            @Nullable Bosses bosses,
            @Nullable Bridge bridge,
            double axleWidth_mm,
            DropoutPlate plate,
            @Nullable Double tyreWidth_mm) {}

    /**
     * What the pivot's bearings sit in, one on each side.
     *
     * @param outside_mm diameter
     * @param over_mm over both, along the pivot
     */
    public record Bosses(double outside_mm, double over_mm) {}

    /**
     * A round bridge across.
     *
     * @param fromPivot_mm its middle, on the line from pivot to axle
     * @param outside_mm diameter
     */
    public record Bridge(double fromPivot_mm, double outside_mm) {}

    /**
     * Where the ends of the sides are.
     *
     * @param axleToSide_mm from the axle to the end of a side
     * @param outsideFace_mm its axis there, outside the face that holds the hub
     * @param bends of a side, along from the pivot
     */
    public record Ends(double axleToSide_mm, double outsideFace_mm, List<StayBend> bends) {

        public Ends {
            bends = List.copyOf(bends);
        }
    }

    /** Places the sides; without an answer where one has no length or a size cannot be. */
    public static Answer<ArmPlan> of(FrameGeometry geometry, Point pivot, Sizes sizes, Ends ends) {
        double reach = geometry.rearAxle().distance_mm(pivot);
        Objections objections = new Objections()
                .length("arm.inside", "swing arm's inside between its sides", sizes.inside_mm())
                .length("arm.width", "width of the swing arm's sides", sizes.width_mm())
                .length("axleWidth", "axle width", sizes.axleWidth_mm())
                .lengthOrNone("axleToStay", "distance from axle to the end of a side", ends.axleToSide_mm())
                .distance("outsideFace", "distance of the sides outside the axle's face", ends.outsideFace_mm())
                .unless(
                        reach > ends.axleToSide_mm(),
                        "axleToStay",
                        () -> "Between pivot and dropout no room is left for a side of the swing arm: the axle is "
                                + Objections.shown(reach) + " from the pivot and the side ends "
                                + Objections.shown(ends.axleToSide_mm()) + " before the axle.");
        bosses(objections, sizes);
        bridge(objections, sizes, reach);
        return TyreRoom.fits(objections, geometry, sizes.tyreWidth_mm())
                .orElse(() -> bent(side(geometry, pivot, sizes, ends), ends.bends()))
                .then(side -> Answer.of(new ArmPlan(geometry, pivot, side, sizes)));
    }

    private static Answer<BentStay> bent(Stay side, List<StayBend> bends) {
        Answer<BentStay> bent = BentStay.of(side, bends);
        return bent instanceof Answer.NotDeterminable<BentStay> none
                ? new Answer.NotDeterminable<>(none.gaps().stream()
                        .map(gap -> new Answer.Gap("arm.bend", "Sides of the swing arm: " + gap.words()))
                        .toList())
                : bent;
    }

    private static void bosses(Objections objections, Sizes sizes) {
        Bosses bosses = sizes.bosses();
        if (bosses != null) {
            objections
                    .length("arm.boss", "outside of the swing arm's bosses", bosses.outside_mm())
                    .unless(
                            bosses.over_mm() > sizes.inside_mm() && bosses.over_mm() <= Objections.LONGEST_MM,
                            "arm.over",
                            () -> "Over its bosses the swing arm measures " + Objections.shown(bosses.over_mm())
                                    + ", not more than the " + Objections.shown(sizes.inside_mm())
                                    + " inside between its sides.");
        }
    }

    private static void bridge(Objections objections, Sizes sizes, double reach) {
        Bridge bridge = sizes.bridge();
        if (bridge != null) {
            objections
                    .length("arm.bridge.outside", "outside of the swing arm's bridge", bridge.outside_mm())
                    .unless(
                            bridge.fromPivot_mm() > 0 && bridge.fromPivot_mm() < reach,
                            "arm.bridge",
                            () -> "The swing arm's bridge " + Objections.shown(bridge.fromPivot_mm())
                                    + " from the pivot is not between pivot and axle, which are "
                                    + Objections.shown(reach) + " apart.");
        }
    }

    private static Stay side(FrameGeometry geometry, Point pivot, Sizes sizes, Ends ends) {
        Point axle = geometry.rearAxle();
        Point back = axle.minus(pivot).times(1 / axle.distance_mm(pivot));
        return new Stay(
                SpacePoint.of(pivot, (sizes.inside_mm() + sizes.width_mm()) / 2),
                SpacePoint.of(
                        axle.minus(back.times(ends.axleToSide_mm())),
                        sizes.axleWidth_mm() / 2 + ends.outsideFace_mm()));
    }

    @Override
    public Optional<TyreRoom> tyreRoom() {
        return TyreRoom.along(geometry, axis(), sizes.width_mm(), sizes.tyreWidth_mm());
    }

    /** The axis of the drive side's side from the pivot to its rear end. */
    public List<SpacePoint> axis() {
        return side.axis(CORNERS_A_BEND);
    }

    /** From pivot to axle, as the arm is measured. */
    public double reach_mm() {
        return geometry.rearAxle().distance_mm(pivot);
    }

    /** How far ahead of the shell the middle of the bridge is; for an arm that has one. */
    public double bridgeX_mm(Bridge bridge) {
        Point axle = geometry.rearAxle();
        return pivot.x_mm() + bridge.fromPivot_mm() / reach_mm() * (axle.x_mm() - pivot.x_mm());
    }

    /** The sides' axis from the middle plane at a place between pivot and dropout, so far ahead of the shell. */
    public double sideZ_mm(double x_mm) {
        List<SpacePoint> axis = axis();
        for (int i = 1; i < axis.size(); i++) {
            SpacePoint from = axis.get(i - 1);
            SpacePoint to = axis.get(i);
            if (to.x_mm() <= x_mm && from.x_mm() > to.x_mm()) {
                return from.between(to, Math.max(0, (from.x_mm() - x_mm) / (from.x_mm() - to.x_mm())))
                        .z_mm();
            }
        }
        return axis.get(axis.size() - 1).z_mm();
    }
}
