package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.thermal.CureWindow;
import org.trammel.calc.units.Answer;

@RestController
@RequestMapping("/api/v1/calculations/cure")
@Tag(name = "Calculations")
class CureApi {

    private static final String EXAMPLE = """
            {"pairs": [{"metalDegC": 200, "minutes": 10}, {"metalDegC": 180, "minutes": 20}],
             "record": {"minutes": [0, 30, 45, 50], "longestGapMin": 60,
               "thermocouples": [{"name": "metal 1", "degC": [20, 190, 190, 40]}]}}""";

    @PostMapping
    @Operation(summary = "Cure of a powder by the temperature of the metal, against a window with two sides")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            content = @Content(examples = @ExampleObject(name = "a quarter of an hour at 190 °C", value = EXAMPLE)))
    CureAnswer cured(@RequestBody CureRequest request) {
        CureWindow window = request.window();
        if ((request.record() == null) == (request.metalDegC() == null)) {
            throw NotComputed.input(
                    "record", "Either a record or a metal temperature is given, not both and not neither.");
        }
        Answer<CureWindow.Cure> cure = request.record() != null
                ? window.of(request.record().trace())
                : window.of(
                        request.metalDegC().doubleValue(),
                        NotComputed.needed(request.minutes(), "minutes", "a metal temperature goes with a time."));
        return CureAnswer.of(window, NotComputed.unless(cure, CureRequest::field));
    }
}
