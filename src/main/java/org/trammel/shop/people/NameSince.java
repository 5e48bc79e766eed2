package org.trammel.shop.people;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A name somebody had from a time on.
 *
 * @param now what the person is called today
 * @param name null, as is the time, where no name of an earlier day is kept
 */
record NameSince(
        long id,
        String initials,
        String now,
        @Nullable String name,
        @Nullable Instant since) {}
