package org.trammel.shop.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The last values of one axis as a small chart, oldest first.
 *
 * @param last the newest is of the frame the sheet is of
 * @param finding in words
 */
public record TrendView(
        List<Double> values, List<String> frames, @Nullable String unit, boolean last, String finding) {

    public TrendView {
        values = List.copyOf(values);
        frames = List.copyOf(frames);
    }
}
