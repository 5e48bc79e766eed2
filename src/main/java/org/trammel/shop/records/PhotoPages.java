package org.trammel.shop.records;

import java.time.Duration;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/**
 * Photographs by their hash, for everybody who is signed on. Documents are given out by the modules they belong to, which
 * know who may read them.
 */
@Controller
class PhotoPages {

    private static final Duration A_YEAR = Duration.ofDays(365);

    private final Files files;

    PhotoPages(Files files) {
        this.files = files;
    }

    @GetMapping("/photos/{sha256:[0-9a-f]{64}}")
    ResponseEntity<byte[]> photo(@PathVariable String sha256) {
        StoredFile photo = files.find(sha256).filter(StoredFile::isImage).orElseThrow(PhotoPages::none);
        byte[] content = files.content(sha256).orElseThrow(PhotoPages::none);
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(photo.mediaType()))
                .cacheControl(CacheControl.maxAge(A_YEAR).cachePrivate().immutable())
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline()
                                .filename(sha256.substring(0, 12))
                                .build()
                                .toString())
                .body(content);
    }

    private static Refusal none() {
        return Refusal.missing(
                "The photograph was not found.",
                "None is kept under this hash, or it was erased.",
                "Go back to the sheet.");
    }
}
