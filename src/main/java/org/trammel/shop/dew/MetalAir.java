package org.trammel.shop.dew;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.web.Keyed;

/**
 * Air and metal as they were read.
 *
 * @param metal each place once; at least one
 */
public record MetalAir(
        @Nullable BigDecimal air_degC,
        @Nullable BigDecimal humidity_percent,
        List<Place> metal,
        String airGauge,
        String metalGauge) {

    /** The places a form offers, by the names of their fields. The first is asked for, the others where they may be colder. */
    public static final Map<String, String> PLACES = places();

    /** @param place as people call it */
    public record Place(String place, @Nullable BigDecimal metal_degC) {}

    /** Read at one place. */
    public MetalAir(
            @Nullable BigDecimal air_degC,
            @Nullable BigDecimal humidity_percent,
            @Nullable BigDecimal metal_degC,
            String airGauge,
            String metalGauge) {
        this(air_degC, humidity_percent, List.of(new Place(PLACES.get("metal"), metal_degC)), airGauge, metalGauge);
    }

    /** As a form sends it. */
    public static MetalAir of(Map<String, String> fields, String deed) {
        List<Place> read = PLACES.entrySet().stream()
                .map(place -> new Place(
                        place.getValue(), Keyed.figureOrNone(place.getKey(), deed, fields.get(place.getKey()))))
                .filter(place -> place.metal_degC() != null)
                .toList();
        return new MetalAir(
                Keyed.figureOrNone("air", deed, fields.get("air")),
                Keyed.figureOrNone("humidity", deed, fields.get("humidity")),
                read.isEmpty() ? List.of(new Place(PLACES.get("metal"), null)) : read,
                fields.getOrDefault("airGauge", "").strip(),
                fields.getOrDefault("metalGauge", "").strip());
    }

    /** Whether a form says anything of it. */
    public static boolean begun(Map<String, String> fields) {
        return !fields.getOrDefault("air", "").isBlank()
                || !fields.getOrDefault("humidity", "").isBlank()
                || PLACES.keySet().stream()
                        .anyMatch(place -> !fields.getOrDefault(place, "").isBlank());
    }

    private static Map<String, String> places() {
        Map<String, String> places = new LinkedHashMap<>();
        places.put("metal", "thickest tube");
        places.put("metal2", "thinnest tube");
        places.put("metal3", "head tube");
        places.put("metal4", "shell");
        return places;
    }
}
