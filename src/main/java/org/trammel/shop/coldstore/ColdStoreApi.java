package org.trammel.shop.coldstore;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;

/** The cold store for programs. */
@RestController
@RequestMapping("/api/v1/cold-store")
@Tag(name = "Cold store", description = "Frames whose clocks stand still while they lie cold")
class ColdStoreApi {

    private final ColdStore store;

    ColdStoreApi(ColdStore store) {
        this.store = store;
    }

    @GetMapping
    @Operation(summary = "Frames that lie in it, the longest first")
    List<ColdStore.Move> lying() {
        return store.lying();
    }

    record Measured(
            @Schema(description = "of the frame or the part") @Nullable
            String tag,

            @Schema(description = "inside, beside the frames") @Nullable
            BigDecimal degC,

            @Nullable String gauge) {}

    @PostMapping("/in")
    @Operation(summary = "Put a frame in; its clocks that the setting names stand still")
    ColdStore.Move putIn(Act act, @RequestBody Measured body) {
        return store.putIn(act, body.tag() == null ? "" : body.tag(), body.degC(), body.gauge());
    }

    @PostMapping("/out")
    @Operation(summary = "Take a frame out; where it was too warm its windows have run all the time")
    ColdStore.Move takeOut(Act act, @RequestBody Measured body) {
        return store.takeOut(act, body.tag() == null ? "" : body.tag(), body.degC(), body.gauge());
    }
}
