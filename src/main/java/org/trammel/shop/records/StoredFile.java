package org.trammel.shop.records;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A file as it was kept.
 *
 * @param sha256 hash of its content, under which it is found
 * @param mediaType image/jpeg, image/png, application/pdf, text/csv or text/plain
 * @param name the name it was sent with; of a file that is looked up by its content alone, the first it was kept with
 * @param widthPx width of an image, else null
 * @param heightPx height of an image, else null
 */
public record StoredFile(
        String sha256,
        String mediaType,
        String name,
        long sizeBytes,
        @Nullable Integer widthPx,
        @Nullable Integer heightPx,
        Instant keptAt) {

    /** The same content as it was sent under a name of its own. */
    public StoredFile named(String sentAs) {
        return new StoredFile(sha256, mediaType, sentAs, sizeBytes, widthPx, heightPx, keptAt);
    }

    /** Whether it is shown as a picture. */
    public boolean isImage() {
        return mediaType.startsWith("image/");
    }
}
