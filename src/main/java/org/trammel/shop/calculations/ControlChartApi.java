package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.statistics.Baseline;
import org.trammel.calc.statistics.ControlChart;

@RestController
@RequestMapping("/api/v1/calculations/control-chart")
@Tag(name = "Calculations")
class ControlChartApi {

    private static final String DRIFT = """
            {"kind": "WEIGHTED_MEAN", "base": {"centre": 0, "sigma": 0.35},
             "readings": [0.3, -0.1, 0.2, 0.4, 0.1, 0.6, 0.5, 0.8, 0.7, 0.9, 0.8, 1.0],
             "weightedMean": {"weight": 0.2, "width": 2.7}}""";

    private static final String GROUPS = """
            {"kind": "MEANS_AND_RANGES", "rules": ["BEYOND_LIMITS", "NINE_ON_ONE_SIDE"],
             "base": {"groups": [[10.1, 9.8, 10.0], [9.9, 10.2, 10.0], [10.0, 10.1, 9.7], [9.8, 10.0, 10.3]]},
             "groups": [[10.0, 9.9, 10.2], [10.6, 10.4, 10.7]]}""";

    @PostMapping
    @Operation(
            summary = "A control chart of readings or groups over a base, with every alarm",
            description =
                    "Limits come from what the process did in its base period, never from the tolerance: 3 standard"
                            + " deviations of what is plotted, or as the weighted mean and the cumulative sum have them."
                            + " Figures carry the unit of the readings. An alarm is what a process standing still shows"
                            + " seldom; a point on its limit is none.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            content =
                    @Content(
                            examples = {
                                @ExampleObject(name = "a jig that drifts, in mm", value = DRIFT),
                                @ExampleObject(name = "groups of three", value = GROUPS)
                            }))
    ControlChartAnswer charted(@RequestBody ControlChartRequest request) {
        Baseline base = request.base().baseline(request.kind());
        ControlChart chart = NotComputed.unless(request.chart(base), ControlChartRequest::field);
        return ControlChartAnswer.of(chart, request.base().doubts());
    }
}
