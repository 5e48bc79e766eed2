package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.geometry.Shock;
import org.trammel.calc.geometry.Suspension;
import org.trammel.calc.geometry.SwingClearance;
import org.trammel.shop.web.OnlyTheseNames;

/** A rear end on one pivot that drives its shock directly. */
@OnlyTheseNames
record SuspensionRequest(
        @Schema(description = "centre of the main pivot") Place pivot,

        @Schema(description = "centre of the rear axle with nothing on the frame")
        Place axle,

        @Schema(description = "how far the axle rises, upright to the ground")
        BigDecimal travelMm,

        @Schema(description = "eye to eye, extended") BigDecimal shockLengthMm,
        BigDecimal shockStrokeMm,

        @Schema(description = "arm from pivot to the shock's lower eye; with it the frame's eye is found") @Nullable
        BigDecimal shockArmMm,

        @Schema(description = "of that arm from straight ahead, rising") @Nullable
        BigDecimal shockArmAngleDeg,

        @Schema(description = "of the two places that suit; HIGHER if left out")
        Suspension.@Nullable FrameEye frameEyeSide,

        @Schema(description = "in place of the arm: the shock's eye on the swing arm") @Nullable
        Place armEye,

        @Schema(description = "in place of the arm: the shock's eye on the frame") @Nullable
        Place frameEye,

        @Schema(description = "share of the stroke with the rider on it; 0.3 if left out") @Nullable
        BigDecimal sagShare,

        @Schema(description = "even steps of travel of the curve, 1 to 500; 20 if left out") @Nullable
        Integer steps,

        @Schema(description = "tube that tyre and shock must clear") @Nullable
        TubeLine tube,

        @Nullable BigDecimal tyreRadiusMm,
        @Nullable BigDecimal shockOutsideMm) {

    static final int MOST_STEPS = 500;

    @OnlyTheseNames
    @Schema(name = "GivenPoint", description = "ahead of and above the shell's centre")
    record Place(BigDecimal xMm, BigDecimal yMm) {

        Point point() {
            return new Point(xMm.doubleValue(), yMm.doubleValue());
        }
    }

    @OnlyTheseNames
    @Schema(description = "a straight round tube in the middle plane, by two points of its axis")
    record TubeLine(Place from, Place to, BigDecimal outsideMm) {

        SwingClearance.Axis axis() {
            return new SwingClearance.Axis(from.point(), to.point(), above0(outsideMm, "tube.outsideMm"));
        }
    }

    Shock shock() {
        return new Shock(shockLengthMm.doubleValue(), shockStrokeMm.doubleValue());
    }

    static double above0(BigDecimal length, String field) {
        if (length.signum() <= 0) {
            throw NotComputed.input(field, field + " of " + length.toPlainString() + " is not above 0.");
        }
        return length.doubleValue();
    }
}
