package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.Joint;
import org.trammel.calc.geometry.SawRules;
import org.trammel.calc.geometry.Section;
import org.trammel.shop.web.OnlyTheseNames;

/** A round tube by its outside, or a formed one by its two axes, where it ends on a round mate. */
@OnlyTheseNames
record MitreRequest(
        @Schema(description = "outside of a round tube") @Nullable
        BigDecimal tubeOutsideMm,

        @Schema(description = "outside of a formed end in the plane of both axes") @Nullable
        BigDecimal inPlaneMm,

        @Schema(description = "outside of a formed end across that plane") @Nullable
        BigDecimal acrossPlaneMm,

        BigDecimal wallMm,

        @Schema(description = "outside of the tube or shell it ends on")
        BigDecimal mateOutsideMm,

        @Schema(description = "between the axes, the interior angle, never folded")
        BigDecimal includedAngleDeg,

        @Schema(
                description =
                        "tube's axis beside the mate's, above 0 to the side where the angle is 90°; 0 if left out")
        @Nullable
        BigDecimal offsetMm,

        @Schema(description = "points of the curve, a multiple of 4 from 8 to 3600; 72 if left out") @Nullable
        Integer stations,

        @Schema(description = "hole saws at hand, 100 at most; without them no saw is looked for") @Nullable
        List<BigDecimal> holeSawsMm,

        @Schema(description = "how much larger than the mate a saw may be; 0.2 if left out") @Nullable
        BigDecimal oversizeMm,

        @Schema(description = "below this angle no hole saw is used; 25 if left out") @Nullable
        BigDecimal shallowestDeg,

        @Schema(description = "up to this wall one template serves outside and bore; 3 if left out") @Nullable
        BigDecimal thinWallMm) {

    private static final int MOST_SAWS = 100;

    Joint joint() {
        return new Joint(
                section(),
                mateOutsideMm.doubleValue(),
                Math.toRadians(includedAngleDeg.doubleValue()),
                NotComputed.or(offsetMm, 0));
    }

    private Section section() {
        double wall = wallMm.doubleValue();
        if (tubeOutsideMm != null) {
            if (inPlaneMm != null || acrossPlaneMm != null) {
                throw NotComputed.input(
                        inPlaneMm != null ? "inPlaneMm" : "acrossPlaneMm",
                        "A tube is given by its outside or by the two axes of its formed end, not by both.");
            }
            return Section.round(tubeOutsideMm.doubleValue(), wall);
        }
        if (inPlaneMm == null && acrossPlaneMm == null) {
            throw NotComputed.input(
                    "tubeOutsideMm", "The tube has neither tubeOutsideMm nor inPlaneMm with acrossPlaneMm.");
        }
        String why = "a formed end has two axes.";
        return new Section(
                NotComputed.needed(inPlaneMm, "inPlaneMm", why),
                NotComputed.needed(acrossPlaneMm, "acrossPlaneMm", why),
                wall);
    }

    SawRules rules() {
        NotComputed.boundedBy(MOST_SAWS, "holeSawsMm", holeSawsMm);
        SawRules usual = SawRules.usual(
                holeSawsMm == null
                        ? List.of()
                        : holeSawsMm.stream().map(BigDecimal::doubleValue).toList());
        return new SawRules(
                usual.holeSaws_mm(),
                NotComputed.or(oversizeMm, usual.oversize_mm()),
                shallowestDeg == null ? usual.shallowest_rad() : Math.toRadians(shallowestDeg.doubleValue()),
                NotComputed.or(thinWallMm, usual.thinWall_mm()),
                usual.trim_mm(),
                usual.buttAtWeld_mm());
    }
}
