package org.trammel.shop.drift;

import java.util.Comparator;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A reading of a series, with where its charts stand after it.
 *
 * @param place among all of them by time, from 1
 * @param shown what a chart shows of it; null if it cannot be charted
 * @param after null if it is not charted
 */
record KeptRow(
        int place,
        Point point,
        @Nullable Double shown,
        @Nullable After after) {

    /** By time; what came from before this program stands first. */
    static final Comparator<Point> ORDER = Comparator.comparing(Point::at)
            .thenComparing(Point::earlier, Comparator.reverseOrder())
            .thenComparing(Point::numberOfKey);

    /**
     * Where the charts stand after a reading.
     *
     * @param number of the reading among those that are charted, from 1
     * @param mean the weighted mean, and {@code above}, {@code below} the sums; 0 without a base
     * @param alarms how many readings so far raised one
     * @param driftsSince number of the reading the drift began at; null if this one raised none
     */
    record After(
            int number,
            double mean,
            double above,
            double below,
            int alarms,
            @Nullable Integer driftsSince) {}

    /** What is shown of one that is charted. */
    double value() {
        return Objects.requireNonNull(shown);
    }

    /** Of one that is charted. */
    After state() {
        return Objects.requireNonNull(after);
    }
}
