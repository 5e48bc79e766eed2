package org.trammel.shop.overview;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.people.SignedOn;

/** A frame's story for programs. */
@RestController
@RequestMapping("/api/v1/frames/{serial}")
@Tag(name = "Frames", description = "Everything that was recorded of a frame.")
class StoryApi {

    private final Stories stories;
    private final BuildPapers papers;

    StoryApi(Stories stories, BuildPapers papers) {
        this.stories = stories;
        this.papers = papers;
    }

    @GetMapping("/story")
    @Operation(summary = "The whole story of a frame, whole and parts; an auditor reads initials in place of names.")
    Story story(@PathVariable String serial, SignedOn who) {
        return stories.of(FramePages.frame(serial), who.person());
    }

    @GetMapping("/build-record")
    @Operation(summary = "How a bicycle was built, and what its record lacks; unnamed, it names nobody of the shop.")
    BuildPaper buildRecord(
            @PathVariable String serial, @RequestParam(defaultValue = "true") boolean named, SignedOn who) {
        return papers.of(FramePages.frame(serial), who.person(), named);
    }
}
