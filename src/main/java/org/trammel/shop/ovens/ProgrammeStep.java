package org.trammel.shop.ovens;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.OvenStep;

/**
 * A step of a programme; its clock runs while the coldest load thermocouple lies in the band.
 *
 * @param below_K how far below the set temperature the band reaches
 * @param longest_h most time in band, or null
 * @param unbroken whether the soak must be one part
 * @param overshoot_K how far above the set temperature the hottest may come; null for the band's upper limit
 * @param spread_K greatest difference between load thermocouples in the soak, or null
 * @param rise_KPerH steepest rise on the way to it, or null
 */
public record ProgrammeStep(
        BigDecimal set_degC,
        BigDecimal below_K,
        BigDecimal above_K,
        BigDecimal soak_h,
        @Nullable BigDecimal longest_h,
        boolean unbroken,
        @Nullable BigDecimal overshoot_K,
        @Nullable BigDecimal spread_K,
        @Nullable BigDecimal rise_KPerH) {

    public ProgrammeStep {
        set_degC = bare(set_degC);
        below_K = bare(below_K);
        above_K = bare(above_K);
        soak_h = bare(soak_h);
        longest_h = bareOrNone(longest_h);
        overshoot_K = bareOrNone(overshoot_K);
        spread_K = bareOrNone(spread_K);
        rise_KPerH = bareOrNone(rise_KPerH);
    }

    /** A figure without the zeros that a column of the database adds behind it. */
    static BigDecimal bare(BigDecimal figure) {
        BigDecimal bare = figure.stripTrailingZeros();
        return bare.scale() >= 0 ? bare : bare.setScale(0);
    }

    static @Nullable BigDecimal bareOrNone(@Nullable BigDecimal figure) {
        return figure == null ? null : bare(figure);
    }

    /** A step with a band as wide above as below. */
    public static ProgrammeStep of(BigDecimal set_degC, BigDecimal band_K, BigDecimal soak_h) {
        return new ProgrammeStep(set_degC, band_K, band_K, soak_h, null, false, null, null, null);
    }

    OvenStep computed() {
        return new OvenStep(
                set_degC.doubleValue(),
                below_K.doubleValue(),
                above_K.doubleValue(),
                soak_h.doubleValue(),
                orNull(longest_h),
                unbroken,
                orNull(overshoot_K),
                orNull(spread_K),
                orNull(rise_KPerH));
    }

    static @Nullable Double orNull(@Nullable BigDecimal value) {
        return value == null ? null : value.doubleValue();
    }
}
