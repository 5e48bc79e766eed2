package org.trammel.shop.assembly;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A component on the list of a frame.
 *
 * @param part of the frame, such as SA; empty for the whole
 * @param place where on the frame; empty where there is but one
 * @param removedAt when it was taken off; null while it stands
 */
public record FramePart(
        long id,
        String serial,
        String part,
        Component component,
        String place,
        long givenBy,
        Instant givenAt,
        @Nullable Long removedBy,
        @Nullable Instant removedAt,
        @Nullable String removedWords) {

    /** Article with its place, as people say it. */
    public String called() {
        return place.isEmpty() ? component.what() : component.what() + ", " + place;
    }
}
