package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;

/**
 * An oven as it is read.
 *
 * @param uniformity_K half the width that its places may differ by, as its class says
 * @param most_kg greatest mass of a load
 * @param fitted thermocouples in it now
 * @param locks why it may not be loaded today, one sentence each; empty if it may
 */
public record Oven(
        long id,
        String code,
        String what,
        BigDecimal uniformity_K,
        int length_mm,
        int width_mm,
        int height_mm,
        BigDecimal most_kg,
        OvenState state,
        String stateReason,
        Instant stateSince,
        long version,
        List<Fitted> fitted,
        List<String> locks) {

    public Oven {
        uniformity_K = ProgrammeStep.bare(uniformity_K);
        most_kg = ProgrammeStep.bare(most_kg);
        fitted = List.copyOf(fitted);
        locks = List.copyOf(locks);
    }

    /** Whether it may be loaded today. */
    public boolean open() {
        return locks.isEmpty();
    }
}
