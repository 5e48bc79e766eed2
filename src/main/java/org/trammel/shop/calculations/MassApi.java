package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.geometry.ExpectedMass;
import org.trammel.calc.geometry.FramePart;
import org.trammel.calc.geometry.MassComparison;

@RestController
@RequestMapping("/api/v1/calculations/mass")
@Tag(name = "Calculations")
class MassApi {

    private static final double WALL_HALF_WIDTH_MM = 0.05;
    private static final double LIMIT = 3;
    private static final int MOST_WALLS = 50;
    private static final int MOST_SHARES = 20;

    private static final Map<String, String> UNITS = Map.of(
            "outside", "Mm",
            "bore", "Mm",
            "wall", "Mm",
            "length", "Mm",
            "density", "KgPerM3",
            "mass", "Kg",
            "u", "Kg",
            "wallHalfWidth", "Mm");

    private static final Map<String, String> WEIGHING = Map.of(
            "weighed", "weighed.weighedKg",
            "scaleU", "weighed.scaleUKg",
            "u", "weighed.scaleUKg",
            "limit", "weighed.limit",
            "walls", "weighed.wallsMm",
            "weldShares", "weighed.weldShares");

    private static final String EXAMPLE = """
            {"parts": [
               {"kind": "BORED", "name": "head tube", "outsideMm": 54, "boreMm": 44, "lengthMm": 110, "densityKgPerM3": 2700},
               {"kind": "TUBE", "name": "down tube", "outsideMm": 42, "wallMm": 1.4, "lengthMm": 741.24, "densityKgPerM3": 2700},
               {"kind": "TUBE", "name": "chainstays", "outsideMm": 22, "wallMm": 1.6, "lengthMm": 396.69,
                "densityKgPerM3": 2700, "count": 2},
               {"kind": "PIECES", "name": "dropouts", "massKg": 0.150, "uKg": 0.005, "count": 2},
               {"kind": "WELD", "name": "weld", "massKg": 0.045, "uKg": 0.010}],
             "weighed": {"weighedKg": 1.102, "scaleUKg": 0.002, "wallsMm": [1.4, 1.8], "weldShares": [0.5, 2]}}""";

    @PostMapping
    @Operation(
            summary = "What a frame should weigh, uncoated, with its uncertainty; and what a difference may come from")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            content = @Content(examples = @ExampleObject(name = "part of a hardtail", value = EXAMPLE)))
    MassAnswer expected(@RequestBody MassRequest request) {
        NotComputed.boundedBy(MassRequest.MOST_PARTS, "parts", request.parts());
        double halfWidth = NotComputed.or(request.wallHalfWidthMm(), WALL_HALF_WIDTH_MM);
        List<FramePart> parts = new ArrayList<>();
        for (int i = 0; i < request.parts().size(); i++) {
            String at = "parts[" + i + "].";
            MassRequest.Part asked = request.parts().get(i);
            FramePart part = asked.part(at);
            // each by itself first, so that the refusal names its place in the list
            NotComputed.unless(ExpectedMass.of(List.of(part), 0), input -> ofPart(at, asked, input));
            parts.add(part);
        }
        ExpectedMass expected = NotComputed.unless(ExpectedMass.of(parts, halfWidth), MassApi::withUnit);
        return MassAnswer.of(expected, request.weighed() == null ? null : compared(expected, request.weighed()));
    }

    private static MassComparison compared(ExpectedMass expected, MassRequest.Weighing weighed) {
        NotComputed.boundedBy(MOST_WALLS, "weighed.wallsMm", weighed.wallsMm());
        NotComputed.boundedBy(MOST_SHARES, "weighed.weldShares", weighed.weldShares());
        return NotComputed.unless(
                MassComparison.of(
                        expected,
                        weighed.weighedKg().doubleValue(),
                        new MassComparison.Search(
                                weighed.scaleUKg().doubleValue(),
                                NotComputed.or(weighed.limit(), LIMIT),
                                figures(weighed.wallsMm()),
                                figures(weighed.weldShares()))),
                input -> WEIGHING.getOrDefault(input, "weighed"));
    }

    private static List<Double> figures(@Nullable List<BigDecimal> figures) {
        return figures == null
                ? List.of()
                : figures.stream().map(BigDecimal::doubleValue).toList();
    }

    /** Of a stretch the wall may be either end's, so that the list of them is named. */
    private static String ofPart(String at, MassRequest.Part asked, String input) {
        boolean stretch = asked.sections() != null && List.of("wall", "length").contains(input);
        return at + (stretch ? "sections" : withUnit(input));
    }

    private static String withUnit(String input) {
        return input + UNITS.getOrDefault(input, "");
    }
}
