package org.trammel.shop.backtraces;

import org.jspecify.annotations.Nullable;

/**
 * What came of a frame whose run is in doubt, as it was said.
 *
 * @param words what was found, done or told; needed
 * @param changesWhatWasOrdered whether dimension, looks or weight may differ from what was ordered; for one that stays as
 *     it is
 * @param customer who of the customer agreed to that, when and how
 */
public record TraceSettling(
        @Nullable TraceResult result,
        @Nullable String words,
        boolean changesWhatWasOrdered,
        @Nullable String customer) {

    /** One that changes nothing of what was ordered. */
    static TraceSettling of(@Nullable TraceResult result, @Nullable String words) {
        return new TraceSettling(result, words, false, null);
    }
}
