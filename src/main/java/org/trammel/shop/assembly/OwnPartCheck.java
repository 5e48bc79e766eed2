package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A customer's own part as it came, measured on arrival and never taken from memory.
 *
 * @param photo SHA-256 of its picture; null without one
 * @param figure of the design it was measured against; null where the design says nothing of it
 * @param within_mm greatest deviation from the design's figure
 */
public record OwnPartCheck(
        long ownPartId,
        String condition,
        String makerSerial,
        @Nullable String photo,
        @Nullable Figure figure,
        @Nullable BigDecimal measured_mm,
        @Nullable BigDecimal nominal_mm,
        @Nullable BigDecimal within_mm,
        boolean conforming,
        long by,
        Instant at) {

    /** A figure of the design that a part must have; its name is the design's own code for it. */
    public enum Figure {
        FORK_LENGTH("fork, axle to crown"),
        SHOCK_LENGTH("shock, eye to eye");

        private final String word;

        Figure(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
