package org.trammel.shop.cuts;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A hole saw of the register.
 *
 * @param diameter_mm by its mark
 * @param retiredBecause null while it is in use, and of one that was retired before the reason was asked
 * @param check the newest measurement; null before the first
 */
public record HoleSaw(
        String code,
        String what,
        BigDecimal diameter_mm,
        @Nullable LocalDate retiredOn,
        @Nullable String retiredBecause,
        @Nullable Check check) {

    /**
     * As it was measured over its teeth.
     *
     * @param worn_mm below its mark
     * @param mostWorn_mm that was allowed
     * @param dueOn last day on which that stands
     */
    public record Check(
            BigDecimal measured_mm,
            BigDecimal worn_mm,
            BigDecimal mostWorn_mm,
            LocalDate dueOn,
            String gauge,
            long by,
            Instant at) {

        public boolean worn() {
            return worn_mm.compareTo(mostWorn_mm) > 0;
        }
    }

    public boolean due(LocalDate today) {
        return check == null || today.isAfter(check.dueOn());
    }

    /** Whether it may cut on that day. */
    public boolean cuts(LocalDate today) {
        return retiredOn == null && !due(today) && check != null && !check.worn();
    }
}
