package org.trammel.shop.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How often readings fall into classes; the counts stand in a table beside it.
 *
 * @param finding the sentence the drawing is read out as
 * @param classes side by side, the lowest first; at least one
 * @param lower limit, or null where there is none; likewise {@code upper}
 * @param decimals of the figures of limits and mean
 * @param unit of the axis
 */
public record HistogramView(
        String finding,
        List<Bar> classes,
        @Nullable Double lower,
        @Nullable Double upper,
        double mean,
        int decimals,
        String unit) {

    public HistogramView {
        classes = List.copyOf(classes);
        if (classes.isEmpty()) {
            throw new IllegalArgumentException("There is nothing to draw");
        }
    }

    /** A class from a value up to another. */
    public record Bar(double from, double to, int count) {}
}
