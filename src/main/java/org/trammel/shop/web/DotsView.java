package org.trammel.shop.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Readings as dots on one axis, a row for each group; their figures stand in a table beside it.
 *
 * @param finding the sentence the drawing is read out as
 * @param groups one below the other; at least one, each with a value
 * @param lower limit, or null where there is none; likewise {@code upper}
 * @param unit of the axis
 */
public record DotsView(
        String finding,
        List<Group> groups,
        @Nullable Double lower,
        @Nullable Double upper,
        String unit) {

    public DotsView {
        groups = List.copyOf(groups);
        if (groups.isEmpty() || groups.stream().anyMatch(group -> group.values().isEmpty())) {
            throw new IllegalArgumentException("There is nothing to draw");
        }
    }

    /** Readings of one row. */
    public record Group(String name, List<Double> values) {

        public Group {
            values = List.copyOf(values);
        }
    }
}
