package org.trammel.shop.travellers;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;

/** Parts of frames for programs: the same verb and checks as the story's sheet. */
@RestController
@RequestMapping("/api/v1/travellers/{travellerId}")
@Tag(name = "Parts", description = "Parts of a frame, such as a swing arm.")
class PartApi {

    private final Rework rework;

    PartApi(Rework rework) {
        this.rework = rework;
    }

    record Anew(long traveller) {}

    @PostMapping("/anew")
    @Operation(summary = "Makes a scrapped part anew, on the route it was released with; gives its new traveller.")
    Anew anew(Act act, @PathVariable long travellerId) {
        return new Anew(rework.makeAnew(act, travellerId));
    }
}
