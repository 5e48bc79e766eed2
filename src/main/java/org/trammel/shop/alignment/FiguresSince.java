package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.inspection.ReadingLine;

/** Whether figures say more than the reading that judges now does. */
@Component
class FiguresSince {

    private final TurnOfSheet turns;
    private final SetUpRepository setUps;

    FiguresSince(TurnOfSheet turns, SetUpRepository setUps) {
        this.turns = turns;
        this.setUps = setUps;
    }

    /**
     * Whether any of a value's figures is newer than the reading that judges now. What was read before it is no second
     * reading, though the frame is said to be read on something else since: it would judge in the place of a newer one.
     */
    boolean any(@Nullable ReadingLine last, List<RawLine> from) {
        if (last == null) {
            return true;
        }
        Long reduction = last.reductionId();
        long newest = reduction == null
                ? 0
                : turns.reductions(from.get(0).sheetId()).stream()
                        .filter(one -> one.reductionId() == reduction)
                        .flatMap(one -> one.used().stream())
                        .mapToLong(Long::longValue)
                        .max()
                        .orElse(0);
        return from.stream()
                .anyMatch(line ->
                        line.at().isAfter(last.at()) || line.at().equals(last.at()) && line.readingId() > newest);
    }

    /**
     * Whether a figure was read before its stations were said to lie elsewhere, once something was judged: a longer base
     * makes less of a lean and of its uncertainty, so the figures are read at the stations as they are said to lie.
     */
    boolean moved(@Nullable ReadingLine last, List<RawLine> from) {
        if (last == null) {
            return false;
        }
        List<SetUpRow> said = setUps.findBySheetIdOrderById(from.get(0).sheetId());
        return !said.isEmpty()
                && from.stream()
                        .anyMatch(line -> Spot.named(line.spot())
                                .map(Spot::group)
                                .filter(group -> !places(inForce(said, line).setUp(), group)
                                        .equals(places(said.get(said.size() - 1).setUp(), group)))
                                .isPresent());
    }

    /** What was said when a figure was read; the first where nothing was yet. */
    private static SetUpRow inForce(List<SetUpRow> said, RawLine line) {
        return said.stream()
                .filter(row -> !row.at().isAfter(line.at()))
                .reduce((before, after) -> after)
                .orElse(said.get(0));
    }

    private static List<@Nullable BigDecimal> places(TableSetUp setUp, Spot.Group group) {
        return switch (group) {
            case SEAT_TUBE -> alike(setUp.seatLow_mm(), setUp.seatHigh_mm(), setUp.seatDiameter_mm());
            case HEAD_TUBE -> alike(setUp.tubeBase_mm(), setUp.headDiameter_mm());
            case MANDREL -> alike(setUp.mandrelBase_mm(), setUp.mandrelDiameter_mm());
            default -> List.of();
        };
    }

    private static List<@Nullable BigDecimal> alike(@Nullable BigDecimal... figures) {
        return Arrays.stream(figures)
                .map(figure -> figure == null ? null : figure.stripTrailingZeros())
                .toList();
    }
}
