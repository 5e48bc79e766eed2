package org.trammel.shop.handwork;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.dew.MetalAirSent;
import org.trammel.shop.records.Act;

/** Handwork for programs. */
@RestController
@RequestMapping("/api/v1/handwork")
@Tag(name = "Handwork", description = "What the tick of a step rests on: tools, air and metal, the serial read back")
class HandApi {

    private final Handwork handwork;
    private final SerialReads serials;
    private final ProofTicks ticks;

    HandApi(Handwork handwork, SerialReads serials, ProofTicks ticks) {
        this.ticks = ticks;
        this.handwork = handwork;
        this.serials = serials;
    }

    record WaterFilm(
            @Schema(description = "in one film on all of the parts") @Nullable
            Boolean held,

            @Schema(description = "those that were looked at, or those on which it broke") @Nullable
            List<String> parts) {

        Handwork.WaterSeen seen() {
            return new Handwork.WaterSeen(held, parts == null ? List.of() : parts);
        }
    }

    record Proven(
            @Schema(description = "ids of steps; several only where the operation is done for frames together")
            @Nullable
            List<Long> steps,

            @Schema(description = "labels of what touched the metal") @Nullable
            List<String> tools,

            @Schema(description = "air and metal, where the step rests on them") @Nullable
            MetalAirSent air,

            @Schema(description = "how water ran off, where the step rests on it") @Nullable
            WaterFilm water,

            @Schema(description = "as read from the metal, whole") @Nullable
            String serial,

            @Schema(description = "code of the lot, where the step asks for one") @Nullable
            String lot,

            @Schema(description = "why a step is ticked before an earlier one") @Nullable
            String reason) {}

    @PostMapping("/ticks")
    @Operation(
            summary = "Records what a step rests on and ticks it, in one act",
            description =
                    "What was recorded stays recorded where it is not enough for the tick, which is then refused.")
    void ticks(Act act, @RequestBody Proven body) {
        ticks.tick(
                act,
                body.steps() == null ? List.of() : body.steps(),
                new ProofEntry(
                        body.tools() == null ? List.of() : body.tools(),
                        body.air() == null ? null : body.air().entry(),
                        body.water() == null ? null : body.water().seen(),
                        body.serial()),
                body.lot(),
                body.reason());
    }

    @GetMapping("/{operationId}")
    @Operation(summary = "What the steps of an operation rest on, and what is recorded of it")
    HandRecord one(@PathVariable long operationId) {
        return handwork.of(operationId);
    }

    record Taken(
            @Schema(description = "as on its label") @Nullable
            String tool) {}

    @PostMapping("/{operationId}/tools")
    HandRecord tool(Act act, @PathVariable long operationId, @RequestBody Taken body) {
        return handwork.touched(act, operationId, body.tool());
    }

    @PostMapping("/{operationId}/air")
    @Operation(summary = "Air and metal; the margin over the dew or frost point is computed and kept, enough or not")
    HandRecord air(Act act, @PathVariable long operationId, @RequestBody MetalAirSent body) {
        return handwork.measured(act, operationId, body.entry());
    }

    @PostMapping("/{operationId}/water")
    @Operation(summary = "How water ran off the parts; where the film broke, cleaning and brushing are done again")
    HandRecord water(Act act, @PathVariable long operationId, @RequestBody WaterFilm body) {
        return handwork.water(act, operationId, body.seen());
    }

    record Keyed(
            @Schema(description = "as read from the metal, whole") @Nullable
            String serial) {}

    @PostMapping("/{operationId}/serial")
    HandRecord serial(Act act, @PathVariable long operationId, @RequestBody Keyed body) {
        return serials.readBack(act, operationId, body.serial());
    }
}
