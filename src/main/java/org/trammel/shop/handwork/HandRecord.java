package org.trammel.shop.handwork;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.routes.Proof;

/**
 * What stands of the handwork at an operation.
 *
 * @param asked what the steps of the operation rest on
 * @param used every tool that was scanned, oldest first
 * @param air newest measurement of air and metal
 * @param read newest reading back of the serial
 */
public record HandRecord(
        long operationId,
        Set<Proof> asked,
        List<Used> used,
        @Nullable Air air,
        @Nullable SerialRead read) {

    /** A tool that touched the metal. */
    public record Used(String tool, ToolKind kind, long by, Instant at) {}

    /**
     * Air and metal before the arc.
     *
     * @param wanted_K asked for above the dew point
     * @param least_degC asked for of the metal
     * @param leastMetal_degC at which both would be met, in this air
     */
    public record Air(
            BigDecimal air_degC,
            BigDecimal humidity_percent,
            BigDecimal metal_degC,
            BigDecimal point_degC,
            boolean overIce,
            BigDecimal margin_K,
            BigDecimal wanted_K,
            BigDecimal least_degC,
            BigDecimal leastMetal_degC,
            String source,
            String airGauge,
            String metalGauge,
            long by,
            Instant at) {

        public boolean warm() {
            return metal_degC.compareTo(least_degC) >= 0;
        }

        public boolean dry() {
            return margin_K.compareTo(wanted_K) >= 0;
        }

        public boolean enough() {
            return warm() && dry();
        }

        boolean olderThan(int minutes, Instant now) {
            return at.plus(Duration.ofMinutes(minutes)).isBefore(now);
        }

        public String pointWords() {
            return overIce ? "frost point" : "dew point";
        }
    }

    /** A serial read from the metal by somebody who did not strike it. */
    public record SerialRead(long by, Instant at) {}

    public boolean asks(String proof) {
        return asked.contains(Proof.valueOf(proof));
    }

    boolean touchedBy(Collection<ToolKind> kinds) {
        return used.stream().anyMatch(use -> kinds.contains(use.kind()));
    }
}
