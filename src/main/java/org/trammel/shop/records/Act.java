package org.trammel.shop.records;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Who does something now, and under which id. The client makes the id, so that the same act sent twice is one record.
 *
 * @param id made by the client, one for each act
 * @param by id of the person who acts
 * @param device id of the tablet or desk it was done at; null for acts of the service itself
 * @param at the server's time, kept to the microsecond as both databases keep it
 * @param deviceAt the device's time as it was sent; null if it sent none
 * @param content digest of what was sent with it, secrets and times left out; null for acts that nobody sent
 */
public record Act(
        UUID id,
        long by,
        @Nullable Long device,
        Instant at,
        @Nullable Instant deviceAt,
        @Nullable String content) {

    public Act {
        at = at.truncatedTo(ChronoUnit.MICROS);
        deviceAt = deviceAt == null ? null : deviceAt.truncatedTo(ChronoUnit.MICROS);
    }

    public Act(UUID id, long by, @Nullable Long device, Instant at, @Nullable Instant deviceAt) {
        this(id, by, device, at, deviceAt, null);
    }

    /** Id of the person that stands for the service itself (clocks that run out, seeding). */
    public static final long SERVICE = 0;
}
