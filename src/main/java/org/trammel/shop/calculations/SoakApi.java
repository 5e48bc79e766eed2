package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.thermal.RunRules;
import org.trammel.calc.thermal.RunVerdict;

@RestController
@RequestMapping("/api/v1/calculations/soak")
@Tag(name = "Calculations")
class SoakApi {

    private static final String EXAMPLE = """
            {"record": {"minutes": [0, 15, 30, 45, 60, 75, 90, 300, 480, 555, 570, 600], "longestGapMin": 240,
               "thermocouples": [{"name": "load 1", "degC": [22, 95, 142, 163, 172, 176, 177, 178, 177, 177, 150, 90]}]},
             "steps": [{"setDegC": 177, "belowK": 5, "aboveK": 5, "soakH": 8}]}""";

    @PostMapping
    @Operation(
            summary = "Time in band of an oven run, step by step, and what the programme says of it",
            description =
                    "Readings are joined by straight lines and the coldest load thermocouple stands for the load. What"
                            + " hangs on a gap of the record is undecided.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            content = @Content(examples = @ExampleObject(name = "one step of eight hours", value = EXAMPLE)))
    SoakAnswer judged(@RequestBody SoakRequest request) {
        double coldest = NotComputed.or(request.coldestPlaceK(), 0);
        double hottest = NotComputed.or(request.hottestPlaceK(), 0);
        if (coldest > 0 || hottest < 0) {
            throw NotComputed.input(
                    coldest > 0 ? "coldestPlaceK" : "hottestPlaceK",
                    "The coldest place is not hotter than the thermocouples, nor the hottest colder.");
        }
        RunRules rules = RunRules.usual().withGap(request.record().longestGap()).surveyed(coldest, hottest);
        return SoakAnswer.of(NotComputed.unless(
                RunVerdict.of(request.record().samples(), request.record().wired(), request.programme(), rules),
                SoakRequest::field));
    }
}
