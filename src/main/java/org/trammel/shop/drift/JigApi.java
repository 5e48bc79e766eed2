package org.trammel.shop.drift;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;

@RestController
@RequestMapping("/api/v1/frames/{serial}/jig")
@Tag(name = "Drift")
class JigApi {

    private final JigUses uses;

    JigApi(JigUses uses) {
        this.uses = uses;
    }

    @GetMapping
    @Operation(summary = "In which jig the frame and its parts were last set up")
    List<JigUses.Piece> of(@PathVariable String serial) {
        return uses.pieces(serial);
    }

    /**
     * What is noted.
     *
     * @param part left out for the whole frame
     * @param reason asked for where it was read already as set up in another jig
     */
    record SetUp(
            @Nullable String part, String jig, @Nullable String reason) {}

    @PostMapping
    @Operation(summary = "Notes that a frame, or a part of one, is set up in a jig")
    List<JigUses.Piece> setUp(Act act, @PathVariable String serial, @RequestBody SetUp body) {
        uses.setUp(act, serial, body.part() == null ? "" : body.part(), body.jig(), body.reason());
        return uses.pieces(serial);
    }
}
