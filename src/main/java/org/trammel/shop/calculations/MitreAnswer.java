package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.Caution;
import org.trammel.calc.geometry.MitreCurve;

/** How a tube is cut where it ends on its mate. */
record MitreAnswer(
        @Schema(description = "the curve of the tube's outside")
        Curve outside,

        @Schema(description = "the curve of its bore") Curve bore,
        Fixture fixture,
        List<CautionLine> cautions) {

    @Schema(description = "setback along the tube's axis from the foot of the common perpendicular of both axes")
    record Curve(
            double perimeterMm,

            @Schema(description = "the longest lip's setback")
            double leastMm,

            @Schema(description = "the bottom of the cut") double mostMm,
            double depthMm,

            @Schema(description = "setback of the tube's axis itself")
            double axisMm,

            List<Station> stations) {

        static Curve of(MitreCurve curve) {
            return new Curve(
                    curve.joint().tube().perimeter_mm(),
                    curve.least_mm(),
                    curve.most_mm(),
                    curve.depth_mm(),
                    curve.axisSetback_mm(),
                    curve.stations().stream()
                            .map(one ->
                                    new Station(Math.toDegrees(one.angle_rad()), one.developed_mm(), one.setback_mm()))
                            .toList());
        }
    }

    @Schema(
            description = "0° faces the arm of the mate from which the angle is measured; developed on a paper wrapped"
                    + " about the tube")
    record Station(double angleDeg, double developedMm, double setbackMm) {}

    record Fixture(
            double includedAngleDeg,

            @Schema(description = "from a cut straight across the tube")
            double swingDeg,

            double offsetMm,

            @Schema(description = "the saw at hand that suits, if one does") @Nullable
            Double holeSawMm) {}

    record CautionLine(Caution.Kind kind, String words) {}
}
