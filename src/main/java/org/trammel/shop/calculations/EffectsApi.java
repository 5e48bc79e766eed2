package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.function.UnaryOperator;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.statistics.Attribution;

@RestController
@RequestMapping("/api/v1/calculations/effects")
@Tag(name = "Calculations")
class EffectsApi {

    private static final String EXAMPLE = """
            {"factors": ["jig", "welder"],
             "readings": [
               {"value": 0.2, "levels": {"jig": "J1", "welder": "W1"}},
               {"value": 0.3, "levels": {"jig": "J1", "welder": "W1"}},
               {"value": 0.1, "levels": {"jig": "J1", "welder": "W2"}},
               {"value": 0.9, "levels": {"jig": "J2", "welder": "W1"}},
               {"value": 0.7, "levels": {"jig": "J2", "welder": "W2"}},
               {"value": 0.8, "levels": {"jig": "J2", "welder": "W2"}}]}""";

    @PostMapping
    @Operation(
            summary = "What readings hang on: differences by factor, each freed from what the others add",
            description =
                    "Additions by least squares that do not hang on each other. Where two factors always went together"
                            + " their difference is not told, but which frame would begin to separate them.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            content = @Content(examples = @ExampleObject(name = "two jigs and two welders, in mm", value = EXAMPLE)))
    EffectsAnswer attributed(@RequestBody EffectsRequest request) {
        List<String> factors = request.named();
        Attribution found = NotComputed.unless(Attribution.of(factors, request.made()), UnaryOperator.identity());
        return EffectsAnswer.of(found, factors);
    }
}
