package org.trammel.shop.gauges;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What a gauge can measure and how well.
 *
 * @param kind gauge kind a characteristic asks for, such as HEIGHT
 * @param unit unit of everything below; empty for an aid that only says yes or no
 * @param lowest least value it may read, included; null if open
 * @param highest greatest value it may read, included; null if open
 * @param resolution least step of its scale; null for an aid without a scale
 * @param u standard uncertainty in the unit; null for an aid or where {@code uPercent} is given
 * @param uPercent standard uncertainty in per cent of the value read; null where {@code u} is given
 * @param uSource where the uncertainty comes from; may be empty for an aid
 * @param errorPercent greatest error in per cent of what is set, of a tool that is set; null where it is not stated
 */
public record GaugeRange(
        String kind,
        String unit,
        @Nullable BigDecimal lowest,
        @Nullable BigDecimal highest,
        @Nullable BigDecimal resolution,
        @Nullable BigDecimal u,
        @Nullable BigDecimal uPercent,
        String uSource,
        @Nullable BigDecimal errorPercent) {

    /** Of a gauge that is read, not set. */
    public GaugeRange(
            String kind,
            String unit,
            @Nullable BigDecimal lowest,
            @Nullable BigDecimal highest,
            @Nullable BigDecimal resolution,
            @Nullable BigDecimal u,
            @Nullable BigDecimal uPercent,
            String uSource) {
        this(kind, unit, lowest, highest, resolution, u, uPercent, uSource, null);
    }

    public boolean covers(BigDecimal value) {
        return (lowest == null || value.compareTo(lowest) >= 0) && (highest == null || value.compareTo(highest) <= 0);
    }

    /** False for an error greater than all it measures. */
    boolean mayErrBy(BigDecimal error) {
        return lowest == null || highest == null || error.abs().compareTo(highest.subtract(lowest)) <= 0;
    }

    boolean serves(String wantedKind, String wantedUnit) {
        return kind.equals(wantedKind) && unit.equals(Units.plain(wantedUnit));
    }

    /** Standard uncertainty at a value, exact; null for an aid. */
    @Nullable
    BigDecimal uAt(BigDecimal value) {
        if (u != null) {
            return u;
        }
        return uPercent == null ? null : value.abs().multiply(uPercent).movePointLeft(2);
    }

    /** The greatest uncertainty anywhere in the range: the cautious figure while no value is known. */
    @Nullable
    BigDecimal uAtWorst() {
        if (u != null || uPercent == null) {
            return u;
        }
        BigDecimal low = lowest == null ? BigDecimal.ZERO : lowest.abs();
        BigDecimal high = highest == null ? BigDecimal.ZERO : highest.abs();
        return uAt(low.max(high));
    }
}
