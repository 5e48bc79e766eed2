package org.trammel.shop.routes;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One revision in the list of a route.
 *
 * @param origin what it was drawn up from, in words
 * @param reason why it was released or withdrawn
 * @param contentSha256 seal over its content, set at release
 * @param version counts changes; a change names the version it was made on
 */
public record RevisionSummary(
        long id,
        String letter,
        RevisionState state,
        String origin,
        long drawnBy,
        Instant drawnAt,
        @Nullable Long releasedBy,
        @Nullable Instant releasedAt,
        @Nullable String reason,
        @Nullable String contentSha256,
        @Nullable Instant supersededAt,
        long version) {}
