package org.trammel.shop.assembly;

import io.swagger.v3.oas.annotations.Operation;
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
import org.trammel.shop.people.Signatures;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;

/** Joins, final checks and packings for programs. */
@RestController
@RequestMapping("/api/v1/builds/{operationId}")
@Tag(name = "Builds", description = "What is recorded where a frame is joined, ridden and packed")
class BuildApi {

    private final Builds builds;
    private final Signatures signatures;

    BuildApi(Builds builds, Signatures signatures) {
        this.builds = builds;
        this.signatures = signatures;
    }

    @GetMapping
    @Operation(summary = "The newest of each record, and what the record of the build lacks")
    BuildRecord one(@PathVariable long operationId) {
        return builds.of(operationId);
    }

    record Joining(
            @Schema(description = "tag of each part, as it hangs on it") @Nullable
            List<String> parts,

            @Nullable BigDecimal frontMm,
            @Nullable BigDecimal armMm,
            @Nullable BigDecimal bearingMm,
            @Nullable BigDecimal dropoutMm,
            @Nullable String words) {}

    @PostMapping("/join")
    BuildRecord join(Act act, @PathVariable long operationId, @RequestBody Joining body) {
        return builds.join(
                act,
                operationId,
                body.parts() == null ? List.of() : body.parts(),
                new OffsetShares(body.frontMm(), body.armMm(), body.bearingMm(), body.dropoutMm()),
                body.words());
    }

    record Bedded(
            BuildRecord.@Nullable Brake brake,
            int stops,
            @Nullable BigDecimal kmh,

            @Schema(description = "by the sheet of its pads; left out, what the rules say") @Nullable
            Integer askedStops,

            @Nullable BigDecimal askedKmh,
            @Nullable String source,

            @Schema(description = "the lever stays clear of the bar at full pull")
            boolean clear) {}

    @PostMapping("/bedding")
    BuildRecord bed(Act act, @PathVariable long operationId, @RequestBody Bedded body) {
        return builds.bed(
                act,
                operationId,
                new Builds.Bedding(
                        body.brake(),
                        body.stops(),
                        body.kmh(),
                        body.askedStops(),
                        body.askedKmh(),
                        body.source(),
                        body.clear()));
    }

    record Ridden(
            long rider,

            @Schema(description = "the rider's own, keyed at this moment") @Nullable
            String pin,

            boolean good,
            @Nullable String words) {}

    @PostMapping("/ride")
    BuildRecord ride(Act act, SignedOn who, @PathVariable long operationId, @RequestBody Ridden body) {
        signatures.sign(body.rider(), body.pin() == null ? "" : body.pin(), who.deviceId());
        return builds.ride(act, operationId, body.rider(), body.good(), body.words());
    }

    record Item(@Nullable String item, boolean there) {}

    @PostMapping("/items")
    BuildRecord item(Act act, @PathVariable long operationId, @RequestBody Item body) {
        return builds.item(act, operationId, body.item(), body.there());
    }

    record Packing(
            @Nullable String frame,
            @Nullable String box,
            @Nullable String paper) {}

    @PostMapping("/pack")
    BuildRecord pack(Act act, @PathVariable long operationId, @RequestBody Packing body) {
        return builds.pack(act, operationId, text(body.frame()), text(body.box()), text(body.paper()));
    }

    private static String text(@Nullable String sent) {
        return sent == null ? "" : sent;
    }
}
