package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.thermal.EquivalentHours;
import org.trammel.calc.thermal.EquivalentTime;
import org.trammel.calc.thermal.ProgrammeWorth;

@RestController
@RequestMapping("/api/v1/calculations/equivalent-time")
@Tag(name = "Calculations")
class EquivalentTimeApi {

    private static final String RECORDED = """
            {"referenceDegC": 177, "activation": {"usualKJPerMol": 115, "lowKJPerMol": 80, "highKJPerMol": 130, "source": "shop"},
             "record": {"minutes": [0, 15, 30, 45, 60, 75, 90, 300, 480, 555, 570, 600], "longestGapMin": 240,
               "thermocouples": [{"name": "load 1", "degC": [22, 95, 142, 163, 172, 176, 177, 178, 177, 177, 150, 90]}]}}""";

    private static final String PLANNED = """
            {"referenceDegC": 149, "activation": {"usualKJPerMol": 115, "source": "shop"},
             "soaks": [{"degC": 200, "hours": 0.33333}]}""";

    @PostMapping
    @Operation(
            summary = "What the heat of a run, or of a plan, is worth in hours at a reference temperature",
            description =
                    "By the usual activation energy and by the ones held possible. A screening: hardness decides.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            content =
                    @Content(
                            examples = {
                                @ExampleObject(name = "a recorded age", value = RECORDED),
                                @ExampleObject(name = "a bake that is planned", value = PLANNED)
                            }))
    EquivalentTimeAnswer worth(@RequestBody EquivalentTimeRequest request) {
        double reference = request.referenceDegC().doubleValue();
        if ((request.record() == null) == (request.soaks() == null)) {
            throw NotComputed.input("record", "Either a record or soaks are given, not both and not neither.");
        }
        if (request.record() != null) {
            EquivalentTime time = NotComputed.unless(
                    EquivalentTime.of(
                            request.record().trace(),
                            reference,
                            request.activation().activation()),
                    EquivalentTimeApi::field);
            return new EquivalentTimeAnswer(
                    EquivalentTimeAnswer.Worth.of(time.coldest()),
                    EquivalentTimeAnswer.Worth.of(time.hottest()),
                    EquivalentTimeAnswer.Worth.of(time.inGaps()));
        }
        NotComputed.boundedBy(EquivalentTimeRequest.MOST_SOAKS, "soaks", request.soaks());
        EquivalentHours hours = NotComputed.unless(
                        ProgrammeWorth.of(
                                request.soaks().stream()
                                        .map(EquivalentTimeRequest.Planned::soak)
                                        .toList(),
                                reference,
                                request.activation().activation(),
                                List.of()),
                        EquivalentTimeApi::field)
                .hours();
        EquivalentTimeAnswer.Worth worth = EquivalentTimeAnswer.Worth.of(hours);
        return new EquivalentTimeAnswer(worth, worth, EquivalentTimeAnswer.Worth.of(EquivalentHours.NONE));
    }

    private static String field(String input) {
        return input.equals("reference") ? "referenceDegC" : OvenRecord.field(input);
    }
}
