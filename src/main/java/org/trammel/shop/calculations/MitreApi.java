package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.Set;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.geometry.Caution;
import org.trammel.calc.geometry.FixtureSetting;
import org.trammel.calc.geometry.Joint;
import org.trammel.calc.geometry.Mitre;
import org.trammel.calc.geometry.MitreCurve;
import org.trammel.calc.geometry.SawRules;
import org.trammel.calc.units.Answer;

@RestController
@RequestMapping("/api/v1/calculations/mitre")
@Tag(name = "Calculations")
class MitreApi {

    private static final Set<String> ANGLES = Set.of("includedAngle", "shallowest");

    private static final String ROUND = """
            {"tubeOutsideMm": 42, "wallMm": 1.4, "mateOutsideMm": 54, "includedAngleDeg": 114.69, "stations": 12,
             "holeSawsMm": [35, 38, 42, 54]}""";

    private static final String FORMED = """
            {"inPlaneMm": 48.46, "acrossPlaneMm": 35, "wallMm": 1.4, "mateOutsideMm": 42, "includedAngleDeg": 90}""";

    @PostMapping
    @Operation(
            summary = "The curve of a mitre, outside and bore, and how the tube is held for a hole saw",
            description = "Refused where the tube is wider than its mate or the axes are all but parallel; what can be"
                    + " cut and should be looked at first stands among the cautions.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            content =
                    @Content(
                            examples = {
                                @ExampleObject(name = "down tube on head tube", value = ROUND),
                                @ExampleObject(name = "formed end on shell", value = FORMED)
                            }))
    MitreAnswer cut(@RequestBody MitreRequest request) {
        SawRules rules = request.rules();
        Joint joint = request.joint();
        Mitre mitre = NotComputed.unless(Mitre.of(joint, rules), MitreApi::field);
        int stations = request.stations() == null ? MitreCurve.USUAL_STATIONS : request.stations();
        MitreCurve outside = NotComputed.unless(MitreCurve.of(joint, stations), MitreApi::field);
        MitreCurve bore = NotComputed.unless(MitreCurve.ofBore(joint, stations), MitreApi::field);
        FixtureSetting fixture = mitre.fixture();
        Double saw = fixture.holeSaw_mm() instanceof Answer.Determined<Double> there ? there.value() : null;
        List<MitreAnswer.CautionLine> cautions = mitre.cautions().stream()
                .filter(caution -> caution.kind() != Caution.Kind.NO_HOLE_SAW
                        || !rules.holeSaws_mm().isEmpty())
                .map(caution -> new MitreAnswer.CautionLine(caution.kind(), caution.words()))
                .toList();
        return new MitreAnswer(
                MitreAnswer.Curve.of(outside),
                MitreAnswer.Curve.of(bore),
                new MitreAnswer.Fixture(
                        Math.toDegrees(fixture.includedAngle_rad()),
                        Math.toDegrees(fixture.swing_rad()),
                        fixture.offset_mm(),
                        saw),
                cautions);
    }

    private static String field(String input) {
        return "stations".equals(input) ? input : input + (ANGLES.contains(input) ? "Deg" : "Mm");
    }
}
