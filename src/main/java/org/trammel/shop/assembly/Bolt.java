package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One bolt of one pass as it was tightened.
 *
 * @param round from 1; a fastener that was loosened begins the next
 * @param set_Nm what the tool was set to in this pass
 * @param reading_Nm what it reached, where it did not click at what was set; null where it did
 * @param error_percent what the tool may err by, counted in the verdict
 * @param nonconformance number of the one it opened; null if none
 */
public record Bolt(
        int round,
        int pass,
        int bolt,
        BigDecimal target_Nm,
        BigDecimal set_Nm,
        @Nullable BigDecimal reading_Nm,
        BigDecimal least_Nm,
        BigDecimal most_Nm,
        BigDecimal error_percent,
        String gauge,
        TorqueVerdict verdict,
        @Nullable String nonconformance,
        long by,
        Instant at) {

    public boolean conforming() {
        return verdict == TorqueVerdict.CONFORMING;
    }

    /** What was reached. */
    public BigDecimal reached_Nm() {
        return reading_Nm == null ? set_Nm : reading_Nm;
    }
}
