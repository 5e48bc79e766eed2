package org.trammel.calc.geometry;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * Between the rear tyre and what runs beside it to the axle, where they are nearest.
 *
 * <pre>
 * (r, z) along the axis of that part: r from the wheel's axle in the side view, z from the middle plane
 * room = least distance of that line from (wheel radius − tyre / 2, 0) − tyre / 2 − width / 2
 * </pre>
 *
 * The tyre is a ring of round section; below 0 both overlap. Validity: parts whose line of the side view runs to the axle,
 * as wide all along. Source: plane trigonometry. Accuracy that of double precision.
 *
 * @param room_mm in space; below 0 they overlap
 * @param onAxis the point of the part's axis there, drive side
 */
public record TyreRoom(double room_mm, SpacePoint onAxis) {

    private static final int CORNERS_A_BEND = 24;

    /**
     * Looks for it beside a stay, or beside the side of a swing arm.
     *
     * @param path of the drive side
     * @param width_mm of it across
     */
    public static Answer<TyreRoom> beside(FrameGeometry geometry, BentStay path, double width_mm, double tyre_mm) {
        return fits(new Objections(), geometry, tyre_mm)
                .orElse(() -> along(geometry, path.axis(CORNERS_A_BEND), width_mm, tyre_mm)
                        .map(Answer::of)
                        .orElseThrow());
    }

    /**
     * Looks for it along an axis.
     *
     * @param axis corner by corner, drive side
     * @param width_mm of the part across
     * @param tyre_mm width; null where it is not known
     */
    static Optional<TyreRoom> along(
            FrameGeometry geometry, List<SpacePoint> axis, double width_mm, @Nullable Double tyre_mm) {
        if (tyre_mm == null) {
            return Optional.empty();
        }
        double core = geometry.layout().rearWheelRadius_mm() - tyre_mm / 2;
        double least = Double.POSITIVE_INFINITY;
        SpacePoint onAxis = axis.get(0);
        for (int i = 1; i < axis.size(); i++) {
            SpacePoint nearest = nearest(geometry, axis.get(i - 1), axis.get(i), core);
            double distance = Math.hypot(fromAxle_mm(geometry, nearest) - core, nearest.z_mm());
            if (distance < least) {
                least = distance;
                onAxis = nearest;
            }
        }
        return Optional.of(new TyreRoom(least - tyre_mm / 2 - width_mm / 2, onAxis));
    }

    /** Objects to a tyre that no wheel of this radius has. */
    static Objections fits(Objections objections, FrameGeometry geometry, @Nullable Double tyre_mm) {
        double radius = geometry.layout().rearWheelRadius_mm();
        return tyre_mm == null
                ? objections
                : objections.unless(
                        tyre_mm > 0 && tyre_mm < radius,
                        "tyreWidth",
                        () -> "The rear tyre's width of " + Objections.shown(tyre_mm) + " does not fit its wheel of "
                                + Objections.shown(radius) + " radius.");
    }

    private static SpacePoint nearest(FrameGeometry geometry, SpacePoint from, SpacePoint to, double core) {
        double start = fromAxle_mm(geometry, from);
        double along = fromAxle_mm(geometry, to) - start;
        double outward = to.z_mm() - from.z_mm();
        double share = ((core - start) * along - from.z_mm() * outward) / (along * along + outward * outward);
        return from.between(to, Math.max(0, Math.min(1, share)));
    }

    private static double fromAxle_mm(FrameGeometry geometry, SpacePoint place) {
        return geometry.rearAxle().distance_mm(new Point(place.x_mm(), place.y_mm()));
    }
}
