package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is recorded of a frame's surface at an operation.
 *
 * @param masks one for each landmark of the finish, in its order
 * @param blast the newest; null if none is recorded
 * @param air the newest; null if none is recorded
 * @param spray the newest; null if none is recorded
 */
public record SurfaceRecord(
        long operationId,
        List<Mask> masks,
        @Nullable Blast blast,
        @Nullable Air air,
        @Nullable Spray spray) {

    /** @param by who ticked it last; null if nobody did */
    public record Mask(
            String landmark,
            boolean fitted,
            @Nullable Long by,
            @Nullable Instant at) {}

    public record Blast(
            String lot,
            BigDecimal pressure_bar,
            BigDecimal most_bar,
            String gauge,
            String cleanliness,
            long by,
            Instant at) {

        public boolean gentle() {
            return pressure_bar.compareTo(most_bar) <= 0;
        }
    }

    /**
     * Air and metal.
     *
     * @param point_degC the dew point; below 0 °C the frost point, which lies higher and is met first
     * @param overIce whether it is the frost point
     * @param margin_K how far the metal lies above it
     * @param wanted_K what the setting asks for
     * @param leastMetal_degC the least temperature of the metal with that margin
     * @param source of the setting
     */
    public record Air(
            BigDecimal air_degC,
            BigDecimal humidity_percent,
            BigDecimal metal_degC,
            BigDecimal point_degC,
            boolean overIce,
            BigDecimal margin_K,
            BigDecimal wanted_K,
            BigDecimal leastMetal_degC,
            String source,
            String airGauge,
            String metalGauge,
            long by,
            Instant at) {

        public boolean enough() {
            return margin_K.compareTo(wanted_K) >= 0;
        }

        /** Which point it is. */
        public String pointWords() {
            return overIce ? "frost point, over ice" : "dew point, over water";
        }

        boolean olderThan(int minutes, Instant now) {
            return Duration.between(at, now).compareTo(Duration.ofMinutes(minutes)) > 0;
        }
    }

    /** @param earth_MOhm from hook to frame; null where the finish does not ask for it */
    public record Spray(
            String lot,
            @Nullable LocalDate expiresOn,
            @Nullable BigDecimal earth_MOhm,
            @Nullable BigDecimal mostEarth_MOhm,
            @Nullable String gauge,
            long by,
            Instant at) {

        public boolean earthed(@Nullable BigDecimal most_MOhm) {
            return most_MOhm == null || earth_MOhm != null && earth_MOhm.compareTo(most_MOhm) <= 0;
        }

        boolean expired(LocalDate on) {
            return expiresOn != null && on.isAfter(expiresOn);
        }
    }

    /** Landmarks that are not covered. */
    public List<String> bare() {
        return masks.stream().filter(mask -> !mask.fitted()).map(Mask::landmark).toList();
    }
}
