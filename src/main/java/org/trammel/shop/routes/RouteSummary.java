package org.trammel.shop.routes;

import org.jspecify.annotations.Nullable;

/** One route in the list: which revision is released and which is being drawn up. */
public record RouteSummary(
        String code,
        String name,
        String metal,
        String kind,
        @Nullable Long releasedRevisionId,
        @Nullable String releasedLetter,
        @Nullable Long draftRevisionId,
        @Nullable String draftLetter) {}
