package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.welding.HeatInput;
import org.trammel.shop.web.OnlyTheseNames;

@RestController
@RequestMapping("/api/v1/calculations/heat-input")
@Tag(name = "Calculations")
class HeatInputApi {

    private static final String EXAMPLE =
            "{\"efficiency\": 0.6, \"volts\": 14, \"amps\": 95, \"lengthMm\": 150, \"seconds\": 60}";

    @OnlyTheseNames
    record HeatInputRequest(
            @Schema(
                    description =
                            "share of the arc that reaches the work, above 0 and up to 1; a figure of the procedure")
            BigDecimal efficiency,

            @Schema(description = "arc voltage, up to 100") BigDecimal volts,

            @Schema(description = "mean current, up to 1000")
            BigDecimal amps,

            @Schema(description = "length of weld that was laid in the time, up to 10 000")
            BigDecimal lengthMm,

            @Schema(description = "time of the arc, up to 36 000")
            BigDecimal seconds) {}

    record HeatInputAnswer(
            @Schema(description = "four decimals") BigDecimal kJPerMm) {}

    @PostMapping
    @Operation(
            summary = "Heat that an arc puts into a length of weld",
            description =
                    "Form of EN 1011-1: efficiency · volts · amps · seconds / (1000 · length). An estimate: of a current"
                            + " that pulses the mean says too little.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            content = @Content(examples = @ExampleObject(name = "150 mm in a minute", value = EXAMPLE)))
    HeatInputAnswer heat(@RequestBody HeatInputRequest request) {
        return new HeatInputAnswer(NotComputed.unless(
                        HeatInput.of(
                                request.efficiency(),
                                request.volts(),
                                request.amps(),
                                request.lengthMm(),
                                request.seconds()),
                        input -> input.equals("length") ? "lengthMm" : input)
                .kJPerMm());
    }
}
