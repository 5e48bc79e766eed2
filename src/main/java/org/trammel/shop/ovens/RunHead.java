package org.trammel.shop.ovens;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A run without what is in it. */
public record RunHead(
        long id,
        String code,
        long revisionId,
        @Nullable Instant startedAt,
        @Nullable Instant stoppedAt) {}
