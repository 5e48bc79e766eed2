package org.trammel.shop.drift;

import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Where a series stands, as it is kept.
 *
 * @param charted how many readings are charted
 * @param before how many are older than what the base charts
 * @param left how many cannot be charted
 * @param alarms how many raised an alarm
 * @param driftsSince number, from 1, of the reading the drift that goes on began at; null if none does
 * @param firstOfReadings number of the first reading with an alarm among the readings or their steps; null if there is
 *     none, likewise {@code firstOfMeans} and {@code firstOfSums}
 * @param stale whether its points are still to be made
 */
record KeptStand(
        long seriesId,
        int charted,
        int before,
        int left,
        int alarms,
        @Nullable Integer driftsSince,
        @Nullable Integer firstOfReadings,
        @Nullable Integer firstOfMeans,
        @Nullable Integer firstOfSums,
        boolean stale) {

    static KeptStand nothing(long seriesId) {
        return new KeptStand(seriesId, 0, 0, 0, 0, null, null, null, null, false);
    }

    /** How many points are kept. */
    int places() {
        return charted + before + left;
    }

    /** Number of the first reading with an alarm on any chart. */
    @Nullable
    Integer first() {
        Integer first = null;
        for (Integer each : Stream.of(firstOfReadings, firstOfMeans, firstOfSums)
                .filter(number -> number != null)
                .toList()) {
            first = first == null || each < first ? each : first;
        }
        return first;
    }

    /** Number of the reading whose alarm tells most of it now: where the drift began, else the first there was. */
    @Nullable
    Integer told() {
        return driftsSince == null ? first() : driftsSince;
    }
}
