package org.trammel.shop.dew;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Air and metal as a program sends them. */
public record MetalAirSent(
        @Nullable BigDecimal airDegC,

        @Schema(description = "relative, over water, below 0 °C too") @Nullable
        BigDecimal humidityPercent,

        @Schema(description = "of the thickest tube; not needed where places are named") @Nullable
        BigDecimal metalDegC,

        @Schema(description = "several places of the metal; the coldest judges") @Nullable
        List<PlaceSent> places,

        @Nullable String airGauge,
        @Nullable String metalGauge) {

    public record PlaceSent(
            @Nullable String place, @Nullable BigDecimal metalDegC) {}

    public MetalAir entry() {
        String ofAir = airGauge == null ? "" : airGauge;
        String ofMetal = metalGauge == null ? "" : metalGauge;
        return places == null || places.isEmpty()
                ? new MetalAir(airDegC, humidityPercent, metalDegC, ofAir, ofMetal)
                : new MetalAir(
                        airDegC,
                        humidityPercent,
                        places.stream()
                                .map(one -> new MetalAir.Place(one.place() == null ? "" : one.place(), one.metalDegC()))
                                .toList(),
                        ofAir,
                        ofMetal);
    }
}
