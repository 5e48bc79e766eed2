package org.trammel.shop.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.geometry.SideView;

/**
 * A frame with what was measured of its straightness, for a drawing that exaggerates it.
 *
 * @param side the frame from its drive side
 * @param plain whether that is a plain frame in proportion, since the drawing computes none
 * @param shellWidth_mm null where the drawing gives none
 * @param stations where it was read, in the side view
 * @param mandrelBase_mm distance of the stations on a mandrel; null where none was used
 * @param head offset of the head tube from the middle plane; null where it is not measured here
 * @param axle the same of the rear axle
 * @param lean leans of the two tubes; null where they are not measured here
 * @param flags letters of characteristics that belong to a part of the side view
 * @param built how far the side view is off its drawing; null before any of it is read
 * @param finding what the drawing shows, in words
 */
public record TableView(
        SideView side,
        boolean plain,
        @Nullable Double shellWidth_mm,
        List<Station> stations,
        @Nullable Double mandrelBase_mm,
        @Nullable Offset head,
        @Nullable Offset axle,
        @Nullable Lean lean,
        List<Flag> flags,
        @Nullable Built built,
        String finding) {

    public TableView {
        stations = List.copyOf(stations);
        flags = List.copyOf(flags);
    }

    /** A place that was read. */
    public record Station(Point at, String label) {}

    /**
     * How far a point lies off the middle plane, positive to the drive side.
     *
     * @param value_mm null before it is judged
     * @param limit_mm to either side; null where none is set
     * @param verdict kind of the state mark; null before there is one
     */
    public record Offset(
            String letter,
            @Nullable Double value_mm,
            @Nullable Double limit_mm,
            @Nullable String verdict) {}

    /**
     * Leans in degrees, positive to the drive side.
     *
     * @param limit_deg of the twist to either side; null where none is set
     * @param guard_deg guard band; 0 where none is used
     */
    public record Lean(
            @Nullable Double seat_deg,
            @Nullable Double head_deg,
            @Nullable Double limit_deg,
            double guard_deg,
            @Nullable String verdict) {}

    /**
     * How far the side view is off its drawing; null where that was not read.
     *
     * @param headAngle_deg steeper is above 0
     * @param seatAngle_deg likewise
     */
    public record Built(
            @Nullable Double headAngle_deg,
            @Nullable Double seatAngle_deg,
            @Nullable Double stack_mm,
            @Nullable Double reach_mm) {

        /** Whether anything of it was read. */
        public boolean any() {
            return headAngle_deg != null || seatAngle_deg != null || stack_mm != null || reach_mm != null;
        }
    }

    /** A letter at a part of the frame. */
    public record Flag(String letter, Point at, @Nullable String verdict) {}
}
