package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a coat holds and looks.
 *
 * @param crossCut class on the panel that ran with it
 * @param colourDifference from the ordered sample, ΔE00
 * @param nonconformance the one that stands for it; null where it conforms
 */
public record Look(
        @Nullable Integer crossCut,
        @Nullable BigDecimal gloss,
        @Nullable BigDecimal colourDifference,
        CoatVerdict verdict,
        List<String> words,
        @Nullable String nonconformance,
        long by,
        Instant at) {}
