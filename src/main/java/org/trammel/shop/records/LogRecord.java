package org.trammel.shop.records;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A record of the log, to be read.
 *
 * @param place which of the act's records this is
 * @param chains chains the act touched
 * @param events what happened, each with "what" and its facts
 */
public record LogRecord(
        String chain,
        long position,
        UUID act,
        Instant at,
        long by,
        @Nullable Long device,
        @Nullable Instant deviceAt,
        String kind,
        String subject,
        int place,
        List<String> chains,
        List<Map<String, Object>> events,
        String previousHash,
        String hash) {}
