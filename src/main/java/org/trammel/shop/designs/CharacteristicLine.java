package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One line of a frame's characteristic list: what the route says, with what the design gives.
 *
 * @param code with the part in front for a child, such as FT/080-1
 * @param kind of the route it stands in: of the frame's, or of a part's
 * @param operation number of the operation
 * @param fromDesign the route leaves the nominal to the design
 * @param nominal the design's, else the route's; null where there is none
 * @param fixed the nominal of the route; null where it has none or leaves it to the design
 * @param lowest lower limit; null where the side is open or the nominal is missing
 * @param highest upper limit; null where the side is open or the nominal is missing
 * @param routeLowest lower limit by the route's own numbers; null where the side is open or the nominal is missing
 * @param routeHighest upper limit by the route's own numbers; null where the side is open or the nominal is missing
 * @param routeLower lower deviation of the route; null where the side is open
 * @param routeUpper upper deviation of the route; null where the side is open
 * @param ownLimits the design gives limits of its own instead of the route's
 * @param lacking the design must give a nominal and does not
 * @param sided its sign is a side
 */
public record CharacteristicLine(
        String code,
        String kind,
        String operation,
        String operationName,
        String name,
        String unit,
        int decimals,
        boolean fromDesign,
        @Nullable BigDecimal nominal,
        @Nullable BigDecimal fixed,
        @Nullable BigDecimal lowest,
        @Nullable BigDecimal highest,
        @Nullable BigDecimal routeLowest,
        @Nullable BigDecimal routeHighest,
        @Nullable BigDecimal routeLower,
        @Nullable BigDecimal routeUpper,
        boolean ownLimits,
        boolean lacking,
        boolean sided,
        String gaugeKind,
        List<String> points,
        String rule,
        List<String> signers) {

    /** Whether it is judged against other limits than the route's. */
    public boolean apart() {
        return !Objects.equals(lowest, routeLowest) || !Objects.equals(highest, routeHighest);
    }

    /** What the route fixes: its nominal, or zero, from which its limits count, where it has none. */
    BigDecimal fixedAt() {
        return fixed == null ? BigDecimal.ZERO : fixed;
    }
}
