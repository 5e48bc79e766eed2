package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Frames that one test covers, and up to which numbers.
 *
 * @param id names these very numbers
 * @param longestFork_mm axle to crown; null where the test says nothing
 * @param heaviestRider_kg null where the test says nothing
 * @param source the report
 * @param by id of the person who entered it
 */
public record TestFamily(
        long id,
        String code,
        String covers,
        @Nullable BigDecimal longestFork_mm,
        @Nullable BigDecimal heaviestRider_kg,
        @Nullable BigDecimal leastStack_mm,
        @Nullable BigDecimal mostStack_mm,
        String source,
        Instant since,
        long by) {}
