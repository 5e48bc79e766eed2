package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.dew.DewMargin;

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
        @Nullable DewMargin air,
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
