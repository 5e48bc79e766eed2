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
import org.trammel.calc.thermal.DewPoint;
import org.trammel.shop.web.OnlyTheseNames;

@RestController
@RequestMapping("/api/v1/calculations/dew-point")
@Tag(name = "Calculations")
class DewPointApi {

    private static final BigDecimal USUAL_MARGIN_K = BigDecimal.valueOf(3);
    private static final BigDecimal MOST_MARGIN_K = BigDecimal.valueOf(50);
    private static final BigDecimal MOST_SURFACE_DEG_C = BigDecimal.valueOf(1300);

    private static final String EXAMPLE =
            "{\"airDegC\": 21, \"humidityPercent\": 68, \"surfaceDegC\": 17.2, \"marginK\": 3}";

    @OnlyTheseNames
    record DewPointRequest(
            BigDecimal airDegC,
            BigDecimal humidityPercent,
            @Nullable BigDecimal surfaceDegC,

            @Schema(description = "that the surface should have; 3 if left out") @Nullable
            BigDecimal marginK) {}

    record DewPointAnswer(
            @Schema(description = "over water") double dewPointDegC,

            @Schema(description = "over ice; null where the dew point is not below 0 °C") @Nullable
            Double frostPointDegC,

            @Schema(description = "which of the two the margin is taken from")
            DewPoint.Over over,

            @Schema(description = "of the surface, rounded down; null without a surface") @Nullable
            BigDecimal marginK,

            @Schema(description = "whether the margin is there; null without a surface") @Nullable
            Boolean enough,

            @Schema(description = "least surface temperature that has the margin, rounded up")
            BigDecimal leastSurfaceDegC) {}

    @PostMapping
    @Operation(
            summary = "Dew point of the air and the margin of a surface above it",
            description =
                    "Magnus form with the constants of Sonntag 1990. Below 0 °C the frost point is told as well, and the"
                            + " margin is taken from it.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            content = @Content(examples = @ExampleObject(name = "metal that is too cold", value = EXAMPLE)))
    DewPointAnswer point(@RequestBody DewPointRequest request) {
        BigDecimal margin = request.marginK() == null ? USUAL_MARGIN_K : request.marginK();
        if (margin.signum() < 0 || margin.compareTo(MOST_MARGIN_K) > 0) {
            throw NotComputed.input(
                    "marginK", "A margin of " + margin + " K is not from 0 to " + MOST_MARGIN_K + " K.");
        }
        BigDecimal surface = request.surfaceDegC();
        if (surface != null && surface.abs().compareTo(MOST_SURFACE_DEG_C) > 0) {
            throw NotComputed.input("surfaceDegC", "A surface of " + surface + " °C is beyond any part.");
        }
        DewPoint point = NotComputed.unless(
                DewPoint.of(request.airDegC(), request.humidityPercent()),
                input -> input.equals("air") ? "airDegC" : "humidityPercent");
        BigDecimal has = surface == null ? null : point.margin_K(surface);
        return new DewPointAnswer(
                point.water_degC(),
                point.frost_degC(),
                point.over(),
                has,
                has == null ? null : has.compareTo(margin) >= 0,
                point.leastSurface_degC(margin));
    }
}
