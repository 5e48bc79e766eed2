package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.web.multipart.MaxUploadSizeExceededException;

/** What is kept whole is bounded although the record of a logger may be larger. */
class UploadsTest {

    private static final int MEGABYTE = 1024 * 1024;

    @Test
    void twentyMegabytesAreTakenAndNotAByteMore() throws IOException {
        assertThat(Uploads.bytes(file(20 * MEGABYTE))).hasSize(20 * MEGABYTE);
        assertThatThrownBy(() -> Uploads.bytes(file(20 * MEGABYTE + 1)))
                .isInstanceOf(MaxUploadSizeExceededException.class);
    }

    private static MockMultipartFile file(int bytes) {
        return new MockMultipartFile("file", "picture.png", "image/png", new byte[bytes]);
    }
}
