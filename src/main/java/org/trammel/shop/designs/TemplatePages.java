package org.trammel.shop.designs;

import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The files that are printed of a revision. */
@Controller
class TemplatePages {

    private final DesignReading reading;
    private final Templates templates;

    TemplatePages(DesignReading reading, Templates templates) {
        this.reading = reading;
        this.templates = templates;
    }

    /** The templates of a tube, or of the whole frame. */
    @GetMapping("/designs/{id:\\d+}/templates")
    ResponseEntity<byte[]> templates(
            @PathVariable long id,
            @RequestParam(required = false) @Nullable String tube,
            @RequestParam(required = false) @Nullable String end,
            @RequestParam(required = false) @Nullable String paper) {
        Templates.Made made = templates.of(reading.story(id, false).sheet(), tube, end, paper);
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline()
                                .filename(made.name(), StandardCharsets.UTF_8)
                                .build()
                                .toString())
                .body(made.content());
    }
}
