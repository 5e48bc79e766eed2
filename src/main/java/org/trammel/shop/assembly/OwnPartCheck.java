package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A customer's own part as it came, measured on arrival and never taken from memory.
 *
 * @param photo SHA-256 of its picture; null without one
 * @param figure of the design it was measured against; null where the design says nothing of it
 * @param gauge code of what it was measured with; null where it was not
 * @param within_mm greatest deviation from the design's figure
 */
public record OwnPartCheck(
        long ownPartId,
        String condition,
        String makerSerial,
        @Nullable String photo,
        @Nullable Figure figure,
        @Nullable BigDecimal measured_mm,
        @Nullable String gauge,
        @Nullable BigDecimal nominal_mm,
        @Nullable BigDecimal within_mm,
        boolean conforming,
        long by,
        Instant at) {

    /** Whether what was measured lies as close to a figure as it was asked to. */
    boolean conformsTo(BigDecimal drawn_mm) {
        return measured_mm != null
                && within_mm != null
                && measured_mm.subtract(drawn_mm).abs().compareTo(within_mm) <= 0;
    }

    /** A figure of the design that a part must have; its name is the design's own code for it. */
    public enum Figure {
        FORK_LENGTH("fork", "fork, axle to crown"),
        SHOCK_LENGTH("shock", "shock, eye to eye");

        private final String part;
        private final String word;

        Figure(String part, String word) {
            this.part = part;
            this.word = word;
        }

        /** The figure of a part by what the order calls it; empty for what no drawing gives a figure of. */
        static Optional<Figure> of(String what) {
            return Stream.of(values())
                    .filter(figure -> what.toLowerCase(Locale.ROOT).contains(figure.part))
                    .findFirst();
        }

        public String word() {
            return word;
        }
    }
}
