package org.trammel.shop.inspection;

import org.jspecify.annotations.Nullable;

/**
 * What came of a frame that was not cleared, as it was said.
 *
 * @param words what was found, done or told; needed
 * @param changesWhatWasOrdered whether dimension, looks or weight may differ from what was ordered; for one that is
 *     decided without measuring
 * @param customer who of the customer agreed to that, when and how
 */
public record FrameSettling(
        FrameResult result,
        String words,
        boolean changesWhatWasOrdered,
        @Nullable String customer) {

    /** One that changes nothing of what was ordered. */
    static FrameSettling of(FrameResult result, String words) {
        return new FrameSettling(result, words, false, null);
    }
}
