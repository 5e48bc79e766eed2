package org.trammel.calc.metrology;

import java.math.BigDecimal;

/**
 * What is known of a gauge that failed its calibration: at some time since its last good one it began to read wrong, by an
 * amount that nobody knows, from none up to what was found.
 *
 * <pre>truth = reading − e(reading),   e between low and high</pre>
 *
 * The error is one over the gauge's own reading: the height of a height gauge, the distance of a calliper. It is taken as
 * equal for readings of one {@link Scale} near each other and independent beyond, so that it falls out of the difference of
 * two readings of about one size and of no other. The error found at one place is allowed in full at all, which is the
 * cautious side for a gauge whose error grows with what it reads.
 *
 * @param gauge id of the gauge
 * @param low_mm least possible error, positive if it reads high; usually 0
 * @param high_mm greatest possible error, above the least
 * @param alike_mm how near readings lie that share the error, such as 20
 */
public record ReadingError(String gauge, BigDecimal low_mm, BigDecimal high_mm, BigDecimal alike_mm) {

    public ReadingError {
        if (low_mm.compareTo(high_mm) >= 0) {
            throw new IllegalArgumentException("The least error " + low_mm + " is not below the greatest " + high_mm);
        }
        if (alike_mm.signum() < 0) {
            throw new IllegalArgumentException("Readings share an error over a distance, not over " + alike_mm);
        }
    }

    /**
     * From what the calibration found.
     *
     * @param asFound_mm the error found, positive if the gauge reads high, not zero; none is possible as well
     */
    public static ReadingError found(String gauge, BigDecimal asFound_mm, BigDecimal alike_mm) {
        return new ReadingError(gauge, asFound_mm.min(BigDecimal.ZERO), asFound_mm.max(BigDecimal.ZERO), alike_mm);
    }
}
