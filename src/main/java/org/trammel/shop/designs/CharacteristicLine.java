package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One line of a frame's characteristic list: what the route says, with what the design gives.
 *
 * @param code with the part in front for a child, such as FT/080-1
 * @param operation number of the operation
 * @param fromDesign the route leaves the nominal to the design
 * @param nominal the design's, else the route's; null where there is none
 * @param lowest lower limit; null where the side is open or the nominal is missing
 * @param highest upper limit; null where the side is open or the nominal is missing
 * @param ownLimits the design gives limits of its own instead of the route's
 * @param lacking the design must give a nominal and does not
 */
public record CharacteristicLine(
        String code,
        String operation,
        String operationName,
        String name,
        String unit,
        int decimals,
        boolean fromDesign,
        @Nullable BigDecimal nominal,
        @Nullable BigDecimal lowest,
        @Nullable BigDecimal highest,
        boolean ownLimits,
        boolean lacking,
        String gaugeKind,
        List<String> points,
        String rule,
        List<String> signers) {}
