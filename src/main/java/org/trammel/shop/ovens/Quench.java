package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.time.Instant;

/**
 * How long a load took from the door to the water.
 *
 * @param least_s the shortest it can have been
 * @param delay_s the longest
 * @param late whether it was entered by hand, not tapped as it happened
 * @param words where a late entry comes from
 */
public record Quench(BigDecimal least_s, BigDecimal delay_s, boolean late, String words, long by, Instant at) {

    /** Whether the two clocks that saw the taps agree. */
    public boolean sharp() {
        return least_s.compareTo(delay_s) == 0;
    }
}
