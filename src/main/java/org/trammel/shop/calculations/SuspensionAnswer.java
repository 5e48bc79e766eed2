package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.Suspension;
import org.trammel.calc.geometry.SwingClearance;

/** How a rear end swings and what it does to its shock. */
record SuspensionAnswer(
        @Schema(description = "pivot to axle") double swingMm,

        @Schema(description = "of the swing arm over all its travel")
        double rotationDeg,

        GeometryAnswer.PointMm armEye,
        GeometryAnswer.PointMm frameEye,
        double ratioStart,
        @Schema(description = "at that share of the travel") double ratioAtSag,
        double ratioEnd,
        double ratioMean,

        @Schema(description = "of the ratio from start to end; below 0 where it rises")
        double changePercent,

        double extendedMm,
        double bottomedMm,

        @Schema(description = "eye to eye at that share of the stroke")
        double lengthAtSagMm,

        @Schema(description = "how far the axle has risen then")
        double travelAtSagMm,

        List<Step> curve,

        @Schema(description = "where a tube and a tyre radius were given") @Nullable
        Least tyre,

        @Schema(description = "where a tube and an outside of the shock were given") @Nullable
        Least shock) {

    @Schema(description = "the least room over the travel; below 0 by how far they meet")
    record Least(
            double clearanceMm, double atTravelMm, @Nullable Double atEndMm) {}

    record Step(double travelMm, double rotationDeg, GeometryAnswer.PointMm axle, double shockLengthMm, double ratio) {

        static Step of(Suspension.At at) {
            return new Step(
                    at.travel_mm(),
                    Math.toDegrees(at.rotation_rad()),
                    GeometryAnswer.PointMm.of(at.axle()),
                    at.shockLength_mm(),
                    at.ratio());
        }
    }

    static SuspensionAnswer of(
            Suspension suspension, double sag, int steps, @Nullable Least tyre, @Nullable Least shock) {
        double travel = suspension.swing().travel_mm();
        double length = suspension.shock().atSag_mm(sag);
        return new SuspensionAnswer(
                suspension.swing().radius_mm(),
                Math.toDegrees(suspension.at(travel).rotation_rad()),
                GeometryAnswer.PointMm.of(suspension.armEye()),
                GeometryAnswer.PointMm.of(suspension.frameEye()),
                suspension.ratioAt(0),
                suspension.ratioAt(sag),
                suspension.ratioAt(1),
                suspension.meanRatio(),
                100 * suspension.change(),
                suspension.extended_mm(),
                suspension.bottomed_mm(),
                length,
                suspension.travelAt_mm(length),
                suspension.curve(steps).stream().map(Step::of).toList(),
                tyre,
                shock);
    }

    static Least least(SwingClearance least, @Nullable Double atEnd_mm) {
        return new Least(least.clearance_mm(), least.travel_mm(), atEnd_mm);
    }
}
