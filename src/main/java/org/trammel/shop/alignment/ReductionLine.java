package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A reduction as screens and programs read it.
 *
 * @param residual_mm greatest distance of a point from the plane of its face; null without faces
 * @param residualMost_mm what a clean shell shows at most, by the setting of then
 * @param farthest the point with that distance
 * @param used raw figures it came from
 */
public record ReductionLine(
        long reductionId,
        @Nullable BigDecimal residual_mm,
        BigDecimal residualMost_mm,
        @Nullable String farthest,
        long personId,
        Instant at,
        Set<Long> used,
        List<DeviationLine> deviations) {

    public ReductionLine {
        used = Set.copyOf(used);
        deviations = List.copyOf(deviations);
    }
}
