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
import org.trammel.calc.metrology.Alignment;
import org.trammel.calc.metrology.ConformityDecision;
import org.trammel.calc.metrology.ConformityProbability;
import org.trammel.calc.metrology.DatumFit;
import org.trammel.calc.metrology.DecisionBasis;
import org.trammel.calc.metrology.DecisionRule;
import org.trammel.calc.metrology.Limits;
import org.trammel.shop.web.OnlyTheseNames;

@RestController
@RequestMapping("/api/v1/calculations")
@Tag(name = "Calculations")
class AlignmentApi {

    private static final BigDecimal FACTOR = new BigDecimal("1.65");
    private static final BigDecimal RESOLUTION = new BigDecimal("0.001");
    private static final BigDecimal MOST = new BigDecimal("1e9");
    private static final int DECIMALS = 12;

    private static final String EXAMPLE = """
            {"causes": [{"kind": "GAUGE", "uMm": 0.012}, {"kind": "REPEATABILITY", "uMm": 0.030},
               {"kind": "PLATE", "uMm": 0.006}, {"kind": "CLAMP", "uMm": 0.030}, {"kind": "OVALITY", "uMm": 0.040}],
             "plate": {"post": {"heightMm": 150},
               "headTube": [{"xMm": 503.6, "yMm": 543.0, "heightMm": 150.31}, {"xMm": 466.3, "yMm": 624.9, "heightMm": 149.88}],
               "seatTube": [{"xMm": -26.7, "yMm": 96.4, "heightMm": 150.12}, {"xMm": -106.9, "yMm": 385.5, "heightMm": 150.42}]}}""";

    private static final String TWIST = """
            {"value": -0.344, "lower": -0.3, "upper": 0.3, "u": 0.02}""";

    @PostMapping("/alignment")
    @Operation(
            summary = "Deviations of a frame from raw heights over a plate, or from points, with their uncertainty",
            description =
                    "Plus is the drive side. Lean and twist are angles in degrees, all else is in mm. A cause that"
                            + " readings name alike is one error that they share.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            content = @Content(examples = @ExampleObject(name = "two tubes on a plate", value = EXAMPLE)))
    AlignmentAnswer alignment(@RequestBody AlignmentRequest request) {
        return AlignmentAnswer.of(NotComputed.unless(
                Alignment.of(
                        AlignmentForms.of(request), NotComputed.or(request.cleanWithinMm(), DatumFit.CLEAN_WITHIN_MM)),
                input -> (request.plate() != null ? "plate." : "points.") + input));
    }

    /** A value to be judged, all in one unit. */
    @OnlyTheseNames
    record Judged(
            BigDecimal value,

            @Schema(description = "left out where that side is open") @Nullable
            BigDecimal lower,

            @Nullable BigDecimal upper,

            @Schema(description = "standard uncertainty; left out for an aid without one") @Nullable
            BigDecimal u,

            @Schema(description = "GUARDED if left out") @Nullable
            DecisionRule rule,

            @Schema(description = "guard band in standard uncertainties; 1.65 if left out") @Nullable
            BigDecimal factor,

            @Schema(description = "step to which the guard band is rounded up; 0.001 if left out") @Nullable
            BigDecimal resolution) {}

    /** What was decided, and on what. */
    record Decided(
            @Schema(description = "conforming, not conforming, undecided or gauge unfit")
            String word,

            @Schema(description = "the rule that judged; guarded where the uncertainty forced it")
            DecisionRule rule,

            BigDecimal guardBand,
            @Nullable BigDecimal conformingFrom,
            @Nullable BigDecimal conformingTo,
            @Nullable BigDecimal notConformingBelow,
            @Nullable BigDecimal notConformingAbove,

            @Schema(description = "probability that the value lies within the limits, 0 to 1; null without u") @Nullable
            Double probability) {}

    @PostMapping("/decision")
    @Operation(
            summary =
                    "Verdict on a value by limits and uncertainty, with the guard band and the probability of conformity",
            description = "All figures in one unit.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            content = @Content(examples = @ExampleObject(name = "a twist by the mandrel", value = TWIST)))
    Decided decision(@RequestBody Judged request) {
        kept("value", request.value());
        kept("lower", request.lower());
        kept("upper", request.upper());
        kept("u", request.u());
        kept("factor", request.factor());
        kept("resolution", request.resolution());
        if (request.lower() == null && request.upper() == null) {
            throw NotComputed.input("lower", "Without a limit there is nothing to judge by.");
        }
        if (request.lower() != null
                && request.upper() != null
                && request.lower().compareTo(request.upper()) > 0) {
            throw NotComputed.input(
                    "lower",
                    "The lower limit, " + request.lower().toPlainString() + ", lies above the upper one, "
                            + request.upper().toPlainString() + ".");
        }
        if (request.u() != null && request.u().signum() < 0) {
            throw NotComputed.input("u", "An uncertainty is not below zero.");
        }
        BigDecimal factor = above0("factor", request.factor() == null ? FACTOR : request.factor());
        BigDecimal resolution = above0("resolution", request.resolution() == null ? RESOLUTION : request.resolution());
        Limits limits = new Limits(request.lower(), request.upper());
        ConformityDecision decision = ConformityDecision.of(
                request.value(),
                limits,
                request.rule() == null ? DecisionRule.GUARDED : request.rule(),
                request.u(),
                factor,
                resolution);
        DecisionBasis basis = decision.basis();
        return new Decided(
                decision.word(),
                basis.used(),
                basis.guardBand(),
                basis.conformingFrom(),
                basis.conformingTo(),
                basis.notConformingBelow(),
                basis.notConformingAbove(),
                ConformityProbability.of(request.value(), limits, request.u())
                                instanceof ConformityProbability.Determined there
                        ? there.probability()
                        : null);
    }

    private static BigDecimal above0(String field, BigDecimal figure) {
        if (figure.signum() <= 0) {
            throw NotComputed.input(field, field + " of " + figure.toPlainString() + " is not above 0.");
        }
        return figure;
    }

    private static void kept(String field, @Nullable BigDecimal figure) {
        if (figure != null && (figure.abs().compareTo(MOST) > 0 || figure.scale() > DECIMALS)) {
            throw NotComputed.input(
                    field, field + " has more than nine digits before or twelve after the decimal point.");
        }
    }
}
