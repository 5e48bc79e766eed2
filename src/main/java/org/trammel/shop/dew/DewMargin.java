package org.trammel.shop.dew;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Air and metal, with the margin as it was judged at the coldest place.
 *
 * @param metal_degC of the coldest place
 * @param places every place that was measured, the coldest first; empty for one from before places were kept
 * @param point_degC the dew point; below 0 °C the frost point, which lies higher and is met first
 * @param overIce whether it is the frost point
 * @param margin_K how far the metal lies above it
 * @param wanted_K what the setting asks for
 * @param least_degC asked for of the metal; null where nothing is
 * @param leastMetal_degC at which all would be met, in this air
 * @param source of the setting
 */
public record DewMargin(
        BigDecimal air_degC,
        BigDecimal humidity_percent,
        BigDecimal metal_degC,
        List<Place> places,
        BigDecimal point_degC,
        boolean overIce,
        BigDecimal margin_K,
        BigDecimal wanted_K,
        @Nullable BigDecimal least_degC,
        BigDecimal leastMetal_degC,
        String source,
        String airGauge,
        String metalGauge,
        long by,
        Instant at) {

    public record Place(String place, BigDecimal metal_degC) {}

    public boolean warm() {
        return least_degC == null || metal_degC.compareTo(least_degC) >= 0;
    }

    public boolean dry() {
        return margin_K.compareTo(wanted_K) >= 0;
    }

    public boolean enough() {
        return warm() && dry();
    }

    public boolean olderThan(int minutes, Instant now) {
        return Duration.between(at, now).compareTo(Duration.ofMinutes(minutes)) > 0;
    }

    /** Which point it is. */
    public String pointWords() {
        return overIce ? "frost point" : "dew point";
    }

    /** Which point it is, and over what. */
    public String pointInFull() {
        return overIce ? "frost point, over ice" : "dew point, over water";
    }

    /** Where it was coldest, where there was more than one place. */
    public String coldest() {
        return places.size() > 1 ? ", coldest at the " + places.get(0).place() : "";
    }
}
