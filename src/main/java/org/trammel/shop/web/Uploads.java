package org.trammel.shop.web;

import java.io.IOException;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.multipart.MultipartFile;

/**
 * Takes a file that is kept whole, such as a photograph or a certificate. Only the record of a logger, which is read as it
 * comes, may be larger.
 */
public final class Uploads {

    private static final long MOST_BYTES = 20L * 1024 * 1024;

    private Uploads() {}

    public static byte[] bytes(MultipartFile file) throws IOException {
        if (file.getSize() > MOST_BYTES) {
            throw new MaxUploadSizeExceededException(MOST_BYTES);
        }
        return file.getBytes();
    }
}
