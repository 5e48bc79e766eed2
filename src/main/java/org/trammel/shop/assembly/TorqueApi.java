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

/** Torque sheets for programs. */
@RestController
@RequestMapping("/api/v1/torques/{operationId}")
@Tag(name = "Torques", description = "Every fastener that is torqued at an operation of a frame, bolt by bolt")
class TorqueApi {

    private final Torques torques;
    private final TorqueSheets sheets;
    private final Insertions insertions;
    private final Signatures signatures;

    TorqueApi(Torques torques, TorqueSheets sheets, Insertions insertions, Signatures signatures) {
        this.torques = torques;
        this.sheets = sheets;
        this.insertions = insertions;
        this.signatures = signatures;
    }

    @GetMapping
    @Operation(summary = "The fasteners in order, what was tightened, and which bolt is next")
    TorqueSheet one(@PathVariable long operationId) {
        return sheets.of(operationId);
    }

    record Tightened(
            long part,
            long fastener,

            @Schema(description = "as the sheet says; it rises when the fastener is loosened")
            int round,

            @Schema(description = "as the sheet says next") int pass,

            @Schema(description = "as the sheet says next") int bolt,

            @Nullable String gauge,

            @Schema(description = "in N·m; left out, the sheet's own") @Nullable
            BigDecimal targetNm,

            @Schema(description = "in N·m; left out where the tool clicked at what it was set to") @Nullable
            BigDecimal readingNm) {}

    @PostMapping("/bolts")
    @Operation(summary = "The next bolt of a fastener")
    TorqueSheet tighten(Act act, @PathVariable long operationId, @RequestBody Tightened body) {
        return torques.tighten(
                act,
                operationId,
                new Torques.Tightened(
                        body.part(),
                        body.fastener(),
                        body.round(),
                        body.pass(),
                        body.bolt(),
                        body.gauge() == null ? "" : body.gauge(),
                        body.targetNm(),
                        body.readingNm()));
    }

    record Again(long part, long fastener, @Nullable String words) {}

    @PostMapping("/again")
    @Operation(summary = "A fastener loosened, to be begun again from its first bolt")
    TorqueSheet again(Act act, @PathVariable long operationId, @RequestBody Again body) {
        return torques.again(act, operationId, body.part(), body.fastener(), body.words());
    }

    @GetMapping("/insertions")
    @Operation(
            summary =
                    "Seatposts whose sheet says how far they go in, with what the drawing leaves and what was measured")
    List<PostIn> insertions(@PathVariable long operationId) {
        return insertions.of(operationId);
    }

    record Measured(
            long part,

            @Schema(description = "length of the post less what stands out, in mm") @Nullable
            BigDecimal insertedMm) {}

    @PostMapping("/insertions")
    @Operation(summary = "How far a seatpost is in, measured on the frame")
    List<PostIn> measure(Act act, @PathVariable long operationId, @RequestBody Measured body) {
        return insertions.measure(act, operationId, body.part(), body.insertedMm());
    }

    record Seen(
            long part,
            long fastener,

            @Schema(description = "as the sheet says; it rises when the fastener is loosened")
            int round) {}

    record Witnessed(
            @Schema(description = "id of the person who looked; nobody who tightened any of them")
            long signer,

            @Schema(description = "that person's own, keyed at this moment") @Nullable
            String pin,

            @Nullable List<Seen> seen) {}

    @PostMapping("/witness")
    @Operation(summary = "A second person looked at fasteners and signs for it")
    TorqueSheet witness(Act act, SignedOn who, @PathVariable long operationId, @RequestBody Witnessed body) {
        signatures.sign(body.signer(), body.pin() == null ? "" : body.pin(), who.deviceId());
        List<Seen> seen = body.seen() == null ? List.of() : body.seen();
        return torques.witness(
                act,
                operationId,
                body.signer(),
                seen.stream()
                        .map(one -> new Torques.Seen(one.part(), one.fastener(), one.round()))
                        .toList());
    }
}
