package org.trammel.shop.welding;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Oxygen inside the frame as it was read.
 *
 * @param guard_ppm what the doubt of the meter takes from the limit
 * @param volumes how often the room is flushed until the limit is reached, if the gas mixes perfectly
 * @param minutes what that takes; null where room and flow were not said
 */
public record PurgeRecord(
        BigDecimal oxygen_ppm,
        BigDecimal guard_ppm,
        BigDecimal most_ppm,
        @Nullable BigDecimal room_L,
        @Nullable BigDecimal flow_L_per_min,
        BigDecimal volumes,
        @Nullable BigDecimal minutes,
        String gauge,
        long by,
        Instant at) {

    /** An arc may be struck on it: with the doubt of the meter it is not above the limit. */
    public boolean enough() {
        return oxygen_ppm.add(guard_ppm).compareTo(most_ppm) <= 0;
    }

    boolean olderThan(int minutes, Instant now) {
        return now.isAfter(at.plus(Duration.ofMinutes(minutes)));
    }
}
