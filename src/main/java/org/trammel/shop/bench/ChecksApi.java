package org.trammel.shop.bench;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** The daily checks of the stations for programs. */
@RestController
@RequestMapping("/api/v1/station-checks")
@Tag(name = "Station checks", description = "Daily checks: travellers that belong to no order.")
class ChecksApi {

    private final StationChecks checks;
    private final Travellers travellers;

    ChecksApi(StationChecks checks, Travellers travellers) {
        this.checks = checks;
        this.travellers = travellers;
    }

    record Begin(
            @Schema(description = "code of a released route for station checks") @Nullable
            String route) {}

    @GetMapping
    @Operation(summary = "Today's checks, begun or not")
    List<StationChecks.Check> today(SignedOn who) {
        return checks.today(who);
    }

    @PostMapping
    @Operation(summary = "Begins today's check of a route")
    FrameSheet.Head begin(Act act, @RequestBody Begin begin) {
        return travellers.inForce(checks.begin(act, Needed.in("route", "No check was begun.", begin.route())), "");
    }
}
