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

    /** A letter at a part of the frame. */
    public record Flag(String letter, Point at, @Nullable String verdict) {}
}
