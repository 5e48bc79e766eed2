package org.trammel.shop.stations;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A tablet or a desk that acts are done at.
 *
 * @param name T1, T2, … for tablets
 * @param stations codes of the stations a tablet serves; empty for a desk
 * @param tokenAt when the device was given its token; null while a tablet waits for its enrolment
 * @param withdrawn it may not be used any more
 */
public record Device(
        long id,
        String name,
        boolean tablet,
        List<String> stations,
        @Nullable Instant tokenAt,
        boolean withdrawn) {}
