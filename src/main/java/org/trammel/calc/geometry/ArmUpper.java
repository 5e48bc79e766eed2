package org.trammel.calc.geometry;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * The upper members of a swing arm with nothing on the frame, from the tube across at the shock's moving eye to the dropouts.
 *
 * <pre>
 * at the shock   on the cross tube's axis, which is the eye's, i / 2 + D / 2 from the middle plane
 * at the rear    g before the axle on the line from eye to axle, axle width / 2 + o from the middle plane
 * </pre>
 *
 * i inside between them, D their outside, g and o as the arm's sides end. Validity: straight members that lie over their
 * line of the side view. Source: space trigonometry. Accuracy that of double precision.
 *
 * @param eye the shock's moving eye in the side view
 * @param path axis of the drive side's, from the cross tube's axis; the other one is its mirror image
 * @param sizes what is drawn about the axes
 */
public record ArmUpper(Point eye, BentStay path, Sizes sizes) {

    private static final int CORNERS_A_BEND = 24;

    /**
     * Sizes of what is seen.
     *
     * @param inside_mm between the members at the shock
     * @param outside_mm diameter of a member
     * @param crossOutside_mm diameter of the tube across at the shock's eye; null where it is not known
     */
    public record Sizes(
            double inside_mm, double outside_mm, @Nullable Double crossOutside_mm) {}

    /**
     * Places them over the arm's sides; without an answer where one has no length or a size cannot be.
     *
     * @param plan the arm from above
     * @param ends where its sides end before the axle
     */
    public static Answer<ArmUpper> of(ArmPlan plan, Point eye, Sizes sizes, ArmPlan.Ends ends) {
        Objections objections = new Objections();
        check(objections, plan, eye, sizes, ends);
        return objections
                .length("seatstay.outside", "outside of the swing arm's upper members", sizes.outside_mm())
                .orElse(() -> BentStay.of(chord(plan, eye, sizes, ends), List.of()))
                .then(path -> Answer.of(new ArmUpper(eye, path, sizes)));
    }

    static void check(Objections objections, ArmPlan plan, Point eye, Sizes sizes, ArmPlan.Ends ends) {
        double reach = plan.geometry().rearAxle().distance_mm(eye);
        Double cross = sizes.crossOutside_mm();
        if (cross != null) {
            objections.length("arm.cross", "outside of the swing arm's tube across at the shock", cross);
        }
        objections
                .length("arm.upperInside", "inside between the swing arm's upper members", sizes.inside_mm())
                .unless(
                        reach > ends.axleToSide_mm(),
                        "axleToStay",
                        () -> "Between the shock's eye and the dropout no room is left for an upper member: they are "
                                + Objections.shown(reach) + " apart and the member ends "
                                + Objections.shown(ends.axleToSide_mm()) + " before the axle.");
    }

    private static Stay chord(ArmPlan plan, Point eye, Sizes sizes, ArmPlan.Ends ends) {
        Point axle = plan.geometry().rearAxle();
        Point back = axle.minus(eye).times(1 / axle.distance_mm(eye));
        return new Stay(
                SpacePoint.of(eye, (sizes.inside_mm() + sizes.outside_mm()) / 2),
                SpacePoint.of(
                        axle.minus(back.times(ends.axleToSide_mm())),
                        plan.sizes().axleWidth_mm() / 2 + ends.outsideFace_mm()));
    }

    /** The room between the tyre and a member; both turn about the pivot together, so it is the same at every travel. */
    public Optional<TyreRoom> tyreRoom(FrameGeometry geometry, double tyre_mm) {
        return TyreRoom.along(geometry, axis(), sizes.outside_mm(), tyre_mm);
    }

    /** The drive side's axis from the cross tube to its rear end. */
    public List<SpacePoint> axis() {
        return path.axis(CORNERS_A_BEND);
    }
}
