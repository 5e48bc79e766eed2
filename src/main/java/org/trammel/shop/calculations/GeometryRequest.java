package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.Closure;
import org.trammel.calc.geometry.JointPlaces;
import org.trammel.calc.geometry.Substitution;
import org.trammel.shop.web.OnlyTheseNames;

/** A frame by any set of figures that suffices, and what else is asked of it. */
@OnlyTheseNames
record GeometryRequest(
        @Schema(description = "any figures of the frame; thirteen independent ones suffice")
        Dimensions given,

        @Schema(description = "how far figures beyond need may be off; 1 mm and 0.1° if left out") @Nullable
        Agreement agreement,

        @Schema(description = "where the tubes of the front triangle meet; with them the tubes are told") @Nullable
        Joints joints,

        @Schema(description = "what a change of one figure does to the others, 50 at most") @Nullable
        List<Change> changes,

        @Schema(description = "other parts on the frame once it is built; what is left out stays") @Nullable
        Parts substitute) {

    /** Changes looked at in one request. */
    static final int MOST_CHANGES = 50;

    @OnlyTheseNames
    record Agreement(BigDecimal lengthMm, BigDecimal angleDeg) {

        Closure.Agreement agreement() {
            if (lengthMm.signum() < 0) {
                throw NotComputed.input("agreement.lengthMm", "An agreement of " + lengthMm + " mm is below 0.");
            }
            if (angleDeg.signum() < 0) {
                throw NotComputed.input("agreement.angleDeg", "An agreement of " + angleDeg + "° is below 0.");
            }
            return new Closure.Agreement(lengthMm.doubleValue(), Math.toRadians(angleDeg.doubleValue()));
        }
    }

    @OnlyTheseNames
    record Joints(
            @Schema(description = "top tube's axis below the top of the head tube")
            BigDecimal topTubeAtHeadMm,

            @Schema(description = "down tube's axis above the bottom of the head tube")
            BigDecimal downTubeAtHeadMm,

            @Schema(description = "top tube's axis below the top of the seat tube")
            BigDecimal topTubeAtSeatMm,

            @Schema(description = "with it the standover is told") @Nullable
            BigDecimal topTubeOutsideMm,

            @Schema(description = "where the standover is taken, ahead of the shell; 20 if left out") @Nullable
            BigDecimal standoverAheadMm) {

        JointPlaces places() {
            return new JointPlaces(
                    topTubeAtHeadMm.doubleValue(), downTubeAtHeadMm.doubleValue(), topTubeAtSeatMm.doubleValue());
        }
    }

    @OnlyTheseNames
    record Change(
            @Schema(description = "one of the first thirteen figures, such as headAngleDeg")
            String of,

            @Schema(description = "by how much, in the unit that its name says")
            BigDecimal by) {}

    @OnlyTheseNames
    record Parts(
            @Nullable BigDecimal lowerStackMm,
            @Nullable BigDecimal forkLengthMm,
            @Nullable BigDecimal forkOffsetMm,
            @Nullable BigDecimal frontWheelRadiusMm,
            @Nullable BigDecimal rearWheelRadiusMm) {

        Substitution.Parts instead(Substitution.Parts drawn) {
            return new Substitution.Parts(
                    NotComputed.or(lowerStackMm, drawn.lowerStack_mm()),
                    NotComputed.or(forkLengthMm, drawn.forkLength_mm()),
                    NotComputed.or(forkOffsetMm, drawn.forkOffset_mm()),
                    NotComputed.or(frontWheelRadiusMm, drawn.frontWheelRadius_mm()),
                    NotComputed.or(rearWheelRadiusMm, drawn.rearWheelRadius_mm()));
        }
    }
}
