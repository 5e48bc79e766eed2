package org.trammel.shop.welding;

import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the welder sets and takes to hand.
 *
 * @param fillers classes of filler, any of which may be scanned
 * @param gases classes of gas; none where no gas is asked for
 */
@Embeddable
public record ArcSettings(
        @Convert(converter = WordList.class) @Column(name = "fillers", nullable = false)
        List<String> fillers,

        @Nullable @Column(name = "filler_mm") BigDecimal filler_mm,

        @Convert(converter = WordList.class) @Column(name = "gases", nullable = false)
        List<String> gases,

        @Nullable @Column(name = "flow_l_per_min") BigDecimal flow_L_per_min,
        @Column(name = "tungsten", nullable = false) String tungsten,
        @Column(name = "polarity", nullable = false) String polarity,
        @Nullable @Column(name = "amps_from") BigDecimal ampsFrom,
        @Nullable @Column(name = "amps_to") BigDecimal ampsTo) {

    public ArcSettings {
        fillers = fillers == null ? List.of() : List.copyOf(fillers);
        gases = gases == null ? List.of() : List.copyOf(gases);
        tungsten = tungsten == null ? "" : tungsten;
        polarity = polarity == null ? "" : polarity;
    }

    /** Whether a current lies in its range; one without a range takes any. */
    boolean takes(BigDecimal amps) {
        return (ampsFrom == null || amps.compareTo(ampsFrom) >= 0) && (ampsTo == null || amps.compareTo(ampsTo) <= 0);
    }
}
