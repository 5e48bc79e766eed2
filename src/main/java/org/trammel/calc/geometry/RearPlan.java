package org.trammel.calc.geometry;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * The rear end seen from above: shell, chainstays, dropouts, and the tyre where its width is known.
 *
 * <pre>
 * (r, z) along the stay's axis: r from the wheel's axle in the side view, z from the middle plane
 * room = least distance of that line from (wheel radius − tyre / 2, 0) − tyre / 2 − stay / 2
 * </pre>
 *
 * The tyre is a ring of round section; below 0 tyre and stay overlap. Validity: straight round stays whose line runs to
 * the axle in the side view. Source: plane trigonometry. Accuracy that of double precision.
 *
 * @param geometry the frame
 * @param chainstay axis of the drive side's chainstay; the other one is its mirror image
 * @param sizes what is drawn about the axes
 */
public record RearPlan(FrameGeometry geometry, Stay chainstay, Sizes sizes) {

    /**
     * Sizes of what is seen.
     *
     * @param shellOutside_mm diameter
     * @param shellBore_mm diameter; 0 where it is not known
     * @param shellWidth_mm along its axis
     * @param axleWidth_mm between the faces that hold the hub
     * @param chainstayOutside_mm diameter
     * @param plate the dropouts
     * @param tyreWidth_mm of the rear tyre; null where it is not known
     */
    public record Sizes(
            double shellOutside_mm,
            double shellBore_mm,
            double shellWidth_mm,
            double axleWidth_mm,
            double chainstayOutside_mm,
            DropoutPlate plate,
            @Nullable Double tyreWidth_mm) {}

    /**
     * Between tyre and chainstay where they are nearest.
     *
     * @param room_mm in space; below 0 they overlap
     * @param onStay the point of the stay's axis there, drive side
     */
    public record TyreRoom(double room_mm, SpacePoint onStay) {}

    /** Looks whether it can be drawn. */
    public static Answer<RearPlan> of(FrameGeometry geometry, Stays stays, Sizes sizes) {
        Double tyre = sizes.tyreWidth_mm();
        double radius = geometry.layout().rearWheelRadius_mm();
        Objections objections = new Objections()
                .length("shellWidth", "shell's width", sizes.shellWidth_mm())
                .length("chainstay.outside", "chainstay's outside", sizes.chainstayOutside_mm());
        if (tyre != null) {
            objections.unless(
                    tyre > 0 && tyre < radius,
                    "tyreWidth",
                    () -> "The rear tyre's width of " + Objections.shown(tyre) + " does not fit its wheel of "
                            + Objections.shown(radius) + " radius.");
        }
        return objections.orElse(() -> Answer.of(new RearPlan(geometry, stays.chainstay(), sizes)));
    }

    /** The room between tyre and chainstay; empty where the tyre's width is not known. */
    public Optional<TyreRoom> tyreRoom() {
        Double tyre = sizes.tyreWidth_mm();
        if (tyre == null) {
            return Optional.empty();
        }
        double core = geometry.layout().rearWheelRadius_mm() - tyre / 2;
        double front = fromAxle_mm(chainstay.front());
        double along = fromAxle_mm(chainstay.rear()) - front;
        double outward = chainstay.rear().z_mm() - chainstay.front().z_mm();
        double share =
                ((core - front) * along - chainstay.front().z_mm() * outward) / (along * along + outward * outward);
        double within = Math.max(0, Math.min(1, share));
        SpacePoint nearest =
                chainstay.front().plus(chainstay.rear().minus(chainstay.front()).times(within));
        double distance = Math.hypot(front + along * within - core, nearest.z_mm());
        return Optional.of(new TyreRoom(distance - tyre / 2 - sizes.chainstayOutside_mm() / 2, nearest));
    }

    private double fromAxle_mm(SpacePoint place) {
        return geometry.rearAxle().distance_mm(new Point(place.x_mm(), place.y_mm()));
    }
}
