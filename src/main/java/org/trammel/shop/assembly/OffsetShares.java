package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.fastening.StackUp;
import org.trammel.shop.records.Refusal;

/**
 * What each part of a joined frame contributes to the offset of its wheel.
 *
 * @param front_mm offset of the front triangle's pivot
 * @param arm_mm offset of the swing arm's axle from its pivot
 * @param bearing_mm play and seat of the bearings
 * @param dropout_mm seat of the axle
 */
public record OffsetShares(
        @Nullable BigDecimal front_mm,
        @Nullable BigDecimal arm_mm,
        @Nullable BigDecimal bearing_mm,
        @Nullable BigDecimal dropout_mm) {

    private static final BigDecimal MOST_mm = BigDecimal.TEN;

    OffsetShares checked(String deed) {
        return new OffsetShares(
                share("frontMm", "front triangle", deed, front_mm),
                share("armMm", "swing arm", deed, arm_mm),
                share("bearingMm", "bearings", deed, bearing_mm),
                share("dropoutMm", "dropouts", deed, dropout_mm));
    }

    private static BigDecimal share(String field, String what, String deed, @Nullable BigDecimal value) {
        if (value == null || value.abs().compareTo(MOST_mm) > 0) {
            throw Refusal.input(
                    field,
                    deed,
                    value == null
                            ? "The share of the " + what + " is missing."
                            : value.toPlainString() + " mm of the " + what + " lie beyond " + MOST_mm + " mm.",
                    "Enter the tolerance of the part, or what was read of it, in mm.");
        }
        return value.abs();
    }

    /** @return of figures that were checked */
    StackUp stack() {
        return StackUp.of(List.of(
                java.util.Objects.requireNonNull(front_mm),
                java.util.Objects.requireNonNull(arm_mm),
                java.util.Objects.requireNonNull(bearing_mm),
                java.util.Objects.requireNonNull(dropout_mm)));
    }
}
