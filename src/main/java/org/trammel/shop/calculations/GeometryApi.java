package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.geometry.Clearances;
import org.trammel.calc.geometry.Closure;
import org.trammel.calc.geometry.ClosureOutcome;
import org.trammel.calc.geometry.Dimension;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.Sensitivity;
import org.trammel.calc.geometry.Substitution;
import org.trammel.calc.geometry.TubeAxes;
import org.trammel.shop.calculations.GeometryAnswer.Outcome;

@RestController
@RequestMapping("/api/v1/calculations/geometry")
@Tag(name = "Calculations", description = "Values in, values out; nothing of the shop is read or kept")
class GeometryApi {

    private static final double STANDOVER_AHEAD_MM = 20;

    /** Parts by their inputs; a frame that cannot stand with them is no fault of one of them. */
    private static final Set<String> PARTS =
            Set.of("lowerStack", "forkLength", "forkOffset", "frontWheelRadius", "rearWheelRadius");

    private static final String EXAMPLE = """
            {"given": {"headAngleDeg": 65.5, "seatAngleDeg": 74.5, "reachMm": 458, "headTubeMm": 110, "lowerStackMm": 12,
              "forkLengthMm": 541, "forkOffsetMm": 44, "shellDropMm": 58, "chainstayMm": 432, "seatTubeMm": 430,
              "frontWheelRadiusMm": 370, "rearWheelRadiusMm": 370},
             "joints": {"topTubeAtHeadMm": 30, "downTubeAtHeadMm": 29, "topTubeAtSeatMm": 45, "topTubeOutsideMm": 34.9},
             "changes": [{"of": "headAngleDeg", "by": 0.5}, {"of": "forkLengthMm", "by": 10}],
             "substitute": {"forkLengthMm": 561}}""";

    @PostMapping
    @Operation(
            summary = "Closes a frame from any sufficient set of figures",
            description = "Too little given: what is missing. Too much given that contradicts itself: by how much, and"
                    + " which figures could be given up. Else all nodes and figures; where asked, tubes, sensitivities"
                    + " and the frame with other parts.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            content = @Content(examples = @ExampleObject(name = "hardtail", value = EXAMPLE)))
    GeometryAnswer closed(@RequestBody GeometryRequest request) {
        NotComputed.boundedBy(GeometryRequest.MOST_CHANGES, "changes", request.changes());
        Map<Dimension, Double> given = request.given().given();
        given.putIfAbsent(Dimension.SEAT_TUBE_OFFSET, 0.0);
        Closure.Agreement agreement = request.agreement() == null
                ? Closure.Agreement.USUAL
                : request.agreement().agreement();
        ClosureOutcome outcome = Closure.of(given, agreement);
        if (outcome instanceof ClosureOutcome.Impossible impossible) {
            throw NotComputed.because(impossible.gaps(), GeometryApi::ofGiven);
        }
        if (outcome instanceof ClosureOutcome.UnderDetermined under) {
            return open(
                    Outcome.UNDER_DETERMINED,
                    under.words(),
                    List.of(),
                    List.of(),
                    under.missing().stream().map(GeometryAnswer.Missing::of).toList());
        }
        if (outcome instanceof ClosureOutcome.OverDetermined over) {
            return open(
                    Outcome.OVER_DETERMINED,
                    String.join(" ", words(over)),
                    over.surplus().stream().map(GeometryAnswer.Surplus::of).toList(),
                    over.offers().stream().map(GeometryAnswer.Offer::of).toList(),
                    List.of());
        }
        return whole((ClosureOutcome.Closed) outcome, request);
    }

    private static List<String> words(ClosureOutcome.OverDetermined over) {
        List<String> words = new ArrayList<>();
        over.surplus().forEach(surplus -> words.add(surplus.words()));
        over.offers().forEach(offer -> words.add(offer.words()));
        return words;
    }

    private static GeometryAnswer open(
            Outcome outcome,
            String words,
            List<GeometryAnswer.Surplus> surplus,
            List<GeometryAnswer.Offer> offers,
            List<GeometryAnswer.Missing> missing) {
        return new GeometryAnswer(outcome, words, null, surplus, offers, missing, List.of(), null, List.of(), null);
    }

    private static GeometryAnswer whole(ClosureOutcome.Closed closed, GeometryRequest request) {
        FrameGeometry frame = closed.geometry();
        return new GeometryAnswer(
                Outcome.CLOSED,
                "",
                GeometryAnswer.Frame.of(frame),
                closed.surplus().stream().map(GeometryAnswer.Surplus::of).toList(),
                List.of(),
                List.of(),
                closed.others().stream().map(GeometryAnswer.Frame::of).toList(),
                request.joints() == null ? null : tubes(frame, request.joints()),
                changes(frame, request.changes()),
                request.substitute() == null ? null : substituted(frame, request.substitute()));
    }

    private static GeometryAnswer.Tubes tubes(FrameGeometry frame, GeometryRequest.Joints joints) {
        UnaryOperator<String> field = input -> "joints." + input + "Mm";
        TubeAxes axes = NotComputed.unless(TubeAxes.of(frame, joints.places()), field);
        Double standover = null;
        if (joints.topTubeOutsideMm() != null) {
            standover = NotComputed.unless(
                            Clearances.standover(
                                    frame,
                                    axes.topTubeAtSeat(),
                                    axes.topTubeAtHead(),
                                    joints.topTubeOutsideMm().doubleValue() / 2,
                                    NotComputed.or(joints.standoverAheadMm(), STANDOVER_AHEAD_MM),
                                    Double.MAX_VALUE),
                            field)
                    .value_mm();
        }
        return GeometryAnswer.Tubes.of(axes, standover);
    }

    private static List<GeometryAnswer.Moved> changes(
            FrameGeometry frame, @Nullable List<GeometryRequest.Change> asked) {
        List<GeometryAnswer.Moved> changes = new ArrayList<>();
        for (int i = 0; asked != null && i < asked.size(); i++) {
            GeometryRequest.Change change = asked.get(i);
            String at = "changes[" + i + "].";
            Dimension changed = Arrays.stream(Dimension.values())
                    .filter(dimension -> Dimensions.name(dimension).equals(change.of()))
                    .findAny()
                    .orElseThrow(() ->
                            NotComputed.input(at + "of", "No figure of a frame is called “" + cut(change.of()) + "”."));
            double by = change.by().doubleValue();
            changes.add(GeometryAnswer.Moved.of(NotComputed.unless(
                    Sensitivity.of(frame.layout(), changed, changed.isAngle() ? Math.toRadians(by) : by),
                    input -> at + (isBuiltFrom(changed) ? "by" : "of"))));
        }
        return changes;
    }

    /** One of the thirteen; the others follow from them and are not changed by themselves. */
    private static boolean isBuiltFrom(Dimension dimension) {
        return dimension.compareTo(Dimension.STACK) < 0;
    }

    private static String cut(String text) {
        return text.length() > 60 ? text.substring(0, 60) + "…" : text;
    }

    private static GeometryAnswer.Substituted substituted(FrameGeometry frame, GeometryRequest.Parts parts) {
        return GeometryAnswer.Substituted.of(NotComputed.unless(
                Substitution.of(frame, parts.instead(Substitution.Parts.of(frame.layout()))),
                input -> PARTS.contains(input) ? "substitute." + input + "Mm" : "substitute"));
    }

    private static String ofGiven(String input) {
        return Arrays.stream(Dimension.values())
                .filter(dimension -> dimension.input().equals(input))
                .findAny()
                .map(dimension -> "given." + Dimensions.name(dimension))
                .orElse("given");
    }
}
