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
class PrintPages {

    private final DesignReading reading;
    private final Templates templates;
    private final FramePage frames;
    private final PaperSizes papers;

    PrintPages(DesignReading reading, Templates templates, FramePage frames, PaperSizes papers) {
        this.reading = reading;
        this.templates = templates;
        this.frames = frames;
        this.papers = papers;
    }

    /** The templates of a tube, or of the whole frame. */
    @GetMapping("/designs/{id:\\d+}/templates")
    ResponseEntity<byte[]> templates(
            @PathVariable long id,
            @RequestParam(required = false) @Nullable String tube,
            @RequestParam(required = false) @Nullable String end,
            @RequestParam(required = false) @Nullable String paper) {
        return printed(templates.of(reading.story(id, false).sheet(), tube, end, paper));
    }

    /** The drawing with its numbers, all sheets. */
    @GetMapping("/designs/{id:\\d+}/sheets")
    ResponseEntity<byte[]> sheets(@PathVariable long id, @RequestParam(required = false) @Nullable String paper) {
        return printed(frames.file(reading.story(id, false), papers.of(paper, "No drawing was made.")));
    }

    private static ResponseEntity<byte[]> printed(Templates.Made made) {
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
