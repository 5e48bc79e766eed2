package org.trammel.calc.geometry;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The tubes a frame is made of.
 *
 * @param headTubeOutside_mm diameter
 * @param shellOutside_mm diameter
 * @param downTube stock; its first end is at the head tube
 * @param topTube stock; its first end is at the head tube
 * @param seatTube stock; its first end is at the shell
 * @param formed the ovals that ends are formed to; an end that is not named stays round
 * @param stays the rear triangle; none where a swing arm takes its place
 */
public record TubeSet(
        double headTubeOutside_mm,
        double shellOutside_mm,
        TubeStock downTube,
        TubeStock topTube,
        TubeStock seatTube,
        Map<FormedPlace, FormedEnd> formed,
        @Nullable StaySet stays) {

    public TubeSet {
        formed = Map.copyOf(formed);
    }

    /** Stock of a tube; null of a stay where a swing arm takes its place. */
    @Nullable
    TubeStock stock(FrameTube tube) {
        return switch (tube) {
            case DOWN_TUBE -> downTube;
            case TOP_TUBE -> topTube;
            case SEAT_TUBE -> seatTube;
            case CHAINSTAY -> stays == null ? null : stays.chainstay();
            case SEATSTAY -> stays == null ? null : stays.seatstay();
        };
    }
}
