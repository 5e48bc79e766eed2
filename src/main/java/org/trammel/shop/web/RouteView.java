package org.trammel.shop.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A frame's way through the shop as a strip: one length for each stop, in the order it goes through them. */
public record RouteView(List<Stop> stops) {

    public RouteView {
        stops = List.copyOf(stops);
    }

    /** How far the work at a stop is. */
    public enum Progress {
        DONE,
        IN_WORK,
        STOPPED,
        TO_COME
    }

    /**
     * One stop.
     *
     * @param name of the station
     * @param done share of the work done here, 0 to 1, drawn while it is in work
     * @param hold words of the hold point it ends with, such as "load release"; null if it has none
     * @param released whether that hold point is signed
     */
    public record Stop(
            String name,
            Progress progress,
            double done,
            @Nullable String hold,
            boolean released) {}
}
