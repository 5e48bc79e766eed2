package org.trammel.shop.assembly;

import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.Travellers;

/** Custody of customers' own parts for programs. */
@RestController
@RequestMapping("/api/v1/frames/{serial}/own-parts")
@Tag(
        name = "Own parts",
        description = "Customers' own parts of a frame: how they came, and whether they fit its drawing")
class OwnPartApi {

    private final OwnPartChecks checks;
    private final Travellers travellers;

    OwnPartApi(OwnPartChecks checks, Travellers travellers) {
        this.checks = checks;
        this.travellers = travellers;
    }

    @GetMapping
    List<OwnPartChecks.Line> of(@PathVariable String serial) {
        return checks.of(travellers.inForce(serial, ""));
    }

    record Came(
            long part,
            @Nullable String condition,

            @Schema(description = "number on it; none where it has none") @Nullable
            String makerSerial,

            @Schema(description = "of the design it is measured against; left out where that says nothing of it")
            OwnPartCheck.@Nullable Figure figure,

            @Nullable BigDecimal measuredMm,

            @Schema(description = "label of what it was measured with, where it is measured") @Nullable
            String gauge) {}

    @PostMapping
    OwnPartCheck checkIn(Act act, @PathVariable String serial, @RequestBody Came body) {
        return checks.checkIn(
                act,
                travellers.inForce(serial, "").travellerId(),
                new OwnPartChecks.Came(
                        body.part(),
                        body.condition(),
                        body.makerSerial(),
                        null,
                        body.figure(),
                        body.measuredMm(),
                        body.gauge()));
    }
}
