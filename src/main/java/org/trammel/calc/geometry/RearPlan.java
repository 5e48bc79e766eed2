package org.trammel.calc.geometry;

import java.util.List;
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
 * The tyre is a ring of round section; below 0 tyre and stay overlap. Validity: round stays, straight or bent across the
 * side view, in which their line runs to the axle. Source: plane trigonometry. Accuracy that of double precision.
 *
 * @param geometry the frame
 * @param chainstay axis of the drive side's chainstay; the other one is its mirror image
 * @param sizes what is drawn about the axes
 */
public record RearPlan(FrameGeometry geometry, BentStay chainstay, Sizes sizes) {

    private static final int CORNERS_A_BEND = 24;

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
    public static Answer<RearPlan> of(FrameGeometry geometry, BentStay chainstay, Sizes sizes) {
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
        return objections.orElse(() -> Answer.of(new RearPlan(geometry, chainstay, sizes)));
    }

    /** The room between tyre and chainstay; empty where the tyre's width is not known. */
    public Optional<TyreRoom> tyreRoom() {
        Double tyre = sizes.tyreWidth_mm();
        if (tyre == null) {
            return Optional.empty();
        }
        double core = geometry.layout().rearWheelRadius_mm() - tyre / 2;
        List<SpacePoint> axis = axis();
        double least = Double.POSITIVE_INFINITY;
        SpacePoint onStay = axis.get(0);
        for (int i = 1; i < axis.size(); i++) {
            SpacePoint nearest = nearest(axis.get(i - 1), axis.get(i), core);
            double distance = Math.hypot(fromAxle_mm(nearest) - core, nearest.z_mm());
            if (distance < least) {
                least = distance;
                onStay = nearest;
            }
        }
        return Optional.of(new TyreRoom(least - tyre / 2 - sizes.chainstayOutside_mm() / 2, onStay));
    }

    /** The chainstay's axis from the shell to its rear end. */
    public List<SpacePoint> axis() {
        return chainstay.axis(CORNERS_A_BEND);
    }

    private SpacePoint nearest(SpacePoint from, SpacePoint to, double core) {
        double start = fromAxle_mm(from);
        double along = fromAxle_mm(to) - start;
        double outward = to.z_mm() - from.z_mm();
        double share = ((core - start) * along - from.z_mm() * outward) / (along * along + outward * outward);
        return from.between(to, Math.max(0, Math.min(1, share)));
    }

    private double fromAxle_mm(SpacePoint place) {
        return geometry.rearAxle().distance_mm(new Point(place.x_mm(), place.y_mm()));
    }
}
