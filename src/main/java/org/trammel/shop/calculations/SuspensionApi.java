package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.geometry.Suspension;
import org.trammel.calc.geometry.Swing;
import org.trammel.calc.geometry.SwingClearance;
import org.trammel.calc.units.Answer;

@RestController
@RequestMapping("/api/v1/calculations/suspension")
@Tag(name = "Calculations")
class SuspensionApi {

    private static final double USUAL_SAG = 0.3;
    private static final int USUAL_STEPS = 20;

    private static final Map<String, String> FIELDS = Map.of(
            "travel", "travelMm",
            "shockArm", "shockArmMm",
            "shockArmAngle", "shockArmAngleDeg",
            "shockLength", "shockLengthMm",
            "shockStroke", "shockStrokeMm");

    private static final String BY_ARM = """
            {"pivot": {"xMm": 22, "yMm": 72}, "axle": {"xMm": -434.824, "yMm": 32}, "travelMm": 140,
             "shockLengthMm": 210, "shockStrokeMm": 55, "shockArmMm": 182, "shockArmAngleDeg": 98,
             "tube": {"from": {"xMm": 21.39, "yMm": -5.14}, "to": {"xMm": -77.82, "yMm": 408.12}, "outsideMm": 38},
             "tyreRadiusMm": 370}""";

    private static final String BY_EYES = """
            {"pivot": {"xMm": 22, "yMm": 72}, "axle": {"xMm": -434.824, "yMm": 32}, "travelMm": 140,
             "shockLengthMm": 210, "shockStrokeMm": 55, "armEye": {"xMm": -3.33, "yMm": 252.23},
             "frameEye": {"xMm": 205.14, "yMm": 277.54}, "sagShare": 0.25, "steps": 7}""";

    @PostMapping
    @Operation(
            summary = "Travel, ratio, axle path and shock length of a rear end on one pivot",
            description = "The shock by the arm from pivot to its lower eye, its other eye is then found so that all"
                    + " its stroke is used; or by both eyes as they are drawn.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            content =
                    @Content(
                            examples = {
                                @ExampleObject(name = "by the arm", value = BY_ARM),
                                @ExampleObject(name = "by both eyes", value = BY_EYES)
                            }))
    SuspensionAnswer swung(@RequestBody SuspensionRequest request) {
        double sag = NotComputed.or(request.sagShare(), USUAL_SAG);
        if (!(sag >= 0 && sag <= 1)) {
            throw NotComputed.input("sagShare", "A sag of " + sag + " of the stroke is not between 0 and 1.");
        }
        int steps = Objects.requireNonNullElse(request.steps(), USUAL_STEPS);
        NotComputed.count(steps, SuspensionRequest.MOST_STEPS, "steps");
        Suspension suspension = NotComputed.unless(
                Swing.of(
                                request.pivot().point(),
                                request.axle().point(),
                                request.travelMm().doubleValue())
                        .then(swing -> driven(swing, request)),
                input -> FIELDS.getOrDefault(input, input));
        return SuspensionAnswer.of(
                suspension, sag, steps, tyre(suspension.swing(), request), shock(suspension, request));
    }

    private static Answer<Suspension> driven(Swing swing, SuspensionRequest request) {
        boolean eyes = request.armEye() != null || request.frameEye() != null;
        boolean arm = request.shockArmMm() != null || request.shockArmAngleDeg() != null;
        if (eyes == arm) {
            throw NotComputed.input(
                    "shockArmMm",
                    "The shock is told by shockArmMm with shockArmAngleDeg, or by armEye with frameEye; "
                            + (eyes ? "not by both." : "neither is given."));
        }
        if (arm) {
            return Suspension.of(
                    swing,
                    NotComputed.needed(request.shockArmMm(), "shockArmMm", "an arm has a length."),
                    Math.toRadians(NotComputed.needed(
                            request.shockArmAngleDeg(), "shockArmAngleDeg", "an arm has a direction.")),
                    request.shock(),
                    Objects.requireNonNullElse(request.frameEyeSide(), Suspension.FrameEye.HIGHER));
        }
        return Suspension.between(
                swing,
                there(request.armEye(), "armEye").point(),
                there(request.frameEye(), "frameEye").point(),
                request.shock());
    }

    private static SuspensionRequest.Place there(SuspensionRequest.@Nullable Place eye, String field) {
        if (eye == null) {
            throw NotComputed.input(field, field + " is missing: a shock has two eyes.");
        }
        return eye;
    }

    private static SuspensionAnswer.@Nullable Least tyre(Swing swing, SuspensionRequest request) {
        BigDecimal radius = request.tyreRadiusMm();
        if (radius == null) {
            return null;
        }
        SwingClearance.Axis tube = tube(request);
        double tyre = SuspensionRequest.above0(radius, "tyreRadiusMm");
        return SuspensionAnswer.least(
                SwingClearance.leastOfTyre(swing, tube, tyre),
                SwingClearance.tyre_mm(swing, tube, tyre, swing.travel_mm()));
    }

    private static SuspensionAnswer.@Nullable Least shock(Suspension suspension, SuspensionRequest request) {
        BigDecimal outside = request.shockOutsideMm();
        if (outside == null) {
            return null;
        }
        return SuspensionAnswer.least(
                SwingClearance.leastOfShock(
                        suspension, tube(request), SuspensionRequest.above0(outside, "shockOutsideMm")),
                null);
    }

    private static SwingClearance.Axis tube(SuspensionRequest request) {
        if (request.tube() == null) {
            throw NotComputed.input("tube", "tube is missing: there is nothing that the rear end must clear.");
        }
        return request.tube().axis();
    }
}
