package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.metrology.Reduction;

/**
 * A gauge or set-up that may be used for a reading, with the uncertainty it brings to it.
 *
 * @param gaugeId its row in the register; set-ups have their own
 * @param unit unit of the reading, of the resolution and of u
 * @param resolution least step of its scale; null for an aid without one
 * @param u standard uncertainty; the greatest over the values asked about, or over the whole range while none is
 *     known; null for an aid
 * @param dueOn last day it may be used
 * @param aid without uncertainty: plain rule only
 */
public record Means(
        long gaugeId,
        String code,
        String what,
        String unit,
        @Nullable BigDecimal resolution,
        @Nullable BigDecimal u,
        LocalDate dueOn,
        boolean aid) {

    /** The same for a value reduced from several readings, with the uncertainty of that value. */
    public Means reducedBy(Reduction reduction) {
        return new Means(gaugeId, code, what, unit, resolution, reduction.uncertainty(u), dueOn, aid);
    }

    /** The same for a value computed from what it read, with the unit and the uncertainty of that value. */
    public Means computing(String otherUnit, BigDecimal otherU) {
        return new Means(gaugeId, code, what, otherUnit, null, otherU, dueOn, aid);
    }
}
