package org.trammel.shop.welding;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.welding.Imperfection;

/**
 * What was seen of one node.
 *
 * @param level quality level that the procedure gives it
 * @param looks at this operation, oldest first
 * @param earlier looks at earlier loops and revisions, oldest first; they pass nothing, and say where to look twice
 * @param passes whether it was looked at, and everything found conforms or was decided to stay
 */
public record SeenNode(String node, String level, List<Look> looks, List<Look> earlier, boolean passes) {

    /**
     * One thing seen.
     *
     * @param imperfection null where nothing was found
     * @param size in the unit of the imperfection; null for one that conforms to nothing
     * @param isShort as the standard of the table says what is short
     * @param limit of it; null where there is none
     * @param nonconformance the one that stands for it
     */
    public record Look(
            @Nullable Imperfection imperfection,
            @Nullable BigDecimal size,
            boolean isShort,
            @Nullable BigDecimal wall_mm,
            @Nullable BigDecimal width_mm,
            @Nullable BigDecimal throat_mm,
            String level,
            String limits,
            @Nullable BigDecimal limit,
            LookVerdict verdict,
            String words,
            @Nullable String nonconformance,
            long by,
            Instant at) {

        Look(
                WeldLooks.Sighting seen,
                String level,
                String limits,
                @Nullable BigDecimal limit,
                LookVerdict verdict,
                String words,
                @Nullable String nonconformance,
                long by,
                Instant at) {
            this(
                    seen.imperfection(),
                    seen.size(),
                    seen.isShort(),
                    seen.wall_mm(),
                    seen.width_mm(),
                    seen.throat_mm(),
                    level,
                    limits,
                    limit,
                    verdict,
                    words,
                    nonconformance,
                    by,
                    at);
        }

        WeldLooks.Sighting seen() {
            return new WeldLooks.Sighting(imperfection, size, isShort, wall_mm, width_mm, throat_mm);
        }
    }
}
