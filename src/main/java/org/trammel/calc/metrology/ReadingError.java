package org.trammel.calc.metrology;

import java.math.BigDecimal;

/**
 * What is known of a height gauge that failed its calibration: at some time since its last good one it began to read
 * wrong, by an amount that nobody knows, from none up to what was found.
 *
 * <pre>true height = reading − e(h),   e between low and high</pre>
 *
 * The error is taken as equal for heights near each other and independent beyond, so that it falls out of the difference
 * of two readings at about one height and of no other. The error found at one height is allowed in full at all, which is
 * the cautious side for a gauge whose error grows with height.
 *
 * @param gauge id of the gauge
 * @param low_mm least possible error, positive if it reads high; usually 0
 * @param high_mm greatest possible error, above the least
 * @param alike_mm how near heights lie that share the error, such as 20
 */
public record HeightError(String gauge, BigDecimal low_mm, BigDecimal high_mm, BigDecimal alike_mm) {

    public HeightError {
        if (low_mm.compareTo(high_mm) >= 0) {
            throw new IllegalArgumentException("The least error " + low_mm + " is not below the greatest " + high_mm);
        }
        if (alike_mm.signum() < 0) {
            throw new IllegalArgumentException("Heights share an error over a distance, not over " + alike_mm);
        }
    }

    /**
     * From what the calibration found.
     *
     * @param asFound_mm the error found, positive if the gauge reads high, not zero; none is possible as well
     */
    public static HeightError found(String gauge, BigDecimal asFound_mm, BigDecimal alike_mm) {
        return new HeightError(gauge, asFound_mm.min(BigDecimal.ZERO), asFound_mm.max(BigDecimal.ZERO), alike_mm);
    }
}
