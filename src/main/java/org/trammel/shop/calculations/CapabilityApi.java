package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.statistics.Capability;
import org.trammel.calc.statistics.Normality;
import org.trammel.calc.statistics.Shape;

@RestController
@RequestMapping("/api/v1/calculations/capability")
@Tag(name = "Calculations")
class CapabilityApi {

    private static final String EXAMPLE = """
            {"readings": [0.3, -0.1, 0.2, 0.4, 0.1, 0.6, 0.5, -0.3, 0.0, 0.2, -0.2, 0.4, 0.3, 0.1, -0.1, 0.5, 0.2, 0.0, 0.3,
               -0.2, 0.1, 0.4, 0.2, 0.3, 0.0],
             "tolerance": {"lower": -1.0, "upper": 1.0}, "wanted": 1.33}""";

    @PostMapping
    @Operation(
            summary = "Pp and Ppk with their intervals at 95 %, and whether the readings speak against a normal shape",
            description =
                    "By the percentiles of the shape, 6 standard deviations of a normal one. Only of a process that stood"
                            + " still while the readings were taken, which a control chart says; fewer than 20 readings"
                            + " are refused.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            content = @Content(examples = @ExampleObject(name = "offsets of a rear axle, in mm", value = EXAMPLE)))
    CapabilityAnswer reckoned(@RequestBody CapabilityRequest request) {
        List<Double> readings = request.taken();
        double wanted = request.goal();
        Shape shape = Objects.requireNonNullElse(request.shape(), Shape.NORMAL);
        Capability capability =
                NotComputed.unless(Capability.of(readings, request.allowed(), shape), UnaryOperator.identity());
        Normality normality = NotComputed.unless(Normality.of(readings), UnaryOperator.identity());
        return CapabilityAnswer.of(capability, normality, wanted);
    }
}
