package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.welding.Purge;
import org.trammel.shop.web.OnlyTheseNames;

@RestController
@RequestMapping("/api/v1/calculations/purge")
@Tag(name = "Calculations")
class PurgeApi {

    private static final String EXAMPLE = "{\"oxygenPpm\": 50, \"roomL\": 1.78, \"flowLPerMin\": 8}";

    @OnlyTheseNames
    record PurgeRequest(
            @Schema(description = "by volume, what is to be reached; above 0 and up to that of air")
            BigDecimal oxygenPpm,

            @Schema(description = "volume inside, up to 1000; with the flow, for the time it takes") @Nullable
            BigDecimal roomL,

            @Schema(description = "of the gas, up to 200") @Nullable
            BigDecimal flowLPerMin) {}

    record PurgeAnswer(
            @Schema(description = "times the room is filled until the oxygen has thinned to it, rounded up")
            BigDecimal volumes,

            @Schema(description = "for the room at the flow, rounded up; null without both") @Nullable
            BigDecimal minutes) {}

    @PostMapping
    @Operation(
            summary = "Volumes of gas until the oxygen inside a tube has thinned",
            description =
                    "For gas that mixes perfectly: ln(209 000 / oxygen). Real rooms have corners: flush a multiple of"
                            + " it, and let the meter decide. Argon displaces air where people breathe; local rules apply.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            content = @Content(examples = @ExampleObject(name = "a front triangle", value = EXAMPLE)))
    PurgeAnswer volumes(@RequestBody PurgeRequest request) {
        if ((request.roomL() == null) != (request.flowLPerMin() == null)) {
            throw NotComputed.input(
                    request.roomL() == null ? "roomL" : "flowLPerMin", "Room and flow go together, or neither.");
        }
        Purge purge = NotComputed.unless(Purge.to(request.oxygenPpm()), PurgeApi::field);
        return new PurgeAnswer(
                purge.volumes(),
                request.roomL() == null || request.flowLPerMin() == null
                        ? null
                        : NotComputed.unless(purge.minutes(request.roomL(), request.flowLPerMin()), PurgeApi::field));
    }

    private static String field(String input) {
        return switch (input) {
            case "oxygen" -> "oxygenPpm";
            case "room" -> "roomL";
            default -> "flowLPerMin";
        };
    }
}
