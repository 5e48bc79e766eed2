package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.coating.FilmGauge;

/**
 * A map of a film and its verdict.
 *
 * @param readings a line to an area: its name, then its spots
 * @param u_um standard uncertainty of the gauge; null for an aid
 * @param guard_um half the band the doubt was counted with; null by the plain rule
 * @param words one sentence for each part of the rule, what is not met first
 * @param nonconformance the one that stands for it; null where it conforms or is undecided
 */
public record Film(
        List<String> readings,
        String gauge,
        FilmGauge principle,
        @Nullable BigDecimal u_um,
        @Nullable BigDecimal guard_um,
        CoatVerdict verdict,
        List<String> words,
        @Nullable String nonconformance,
        long by,
        Instant at) {}
