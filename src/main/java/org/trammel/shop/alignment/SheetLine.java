package org.trammel.shop.alignment;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The sheet of an operation as it stands.
 *
 * @param turn 1 for the first; one more after each time the frame was bent or measured anew from the start
 * @param setUpId to be named as seen when another way to lie is said; null where nobody said one
 * @param figures all raw figures of the turn, those replaced and struck out included, oldest first
 * @param reductions of the turn, oldest first
 */
public record SheetLine(
        long operationId,
        long travellerId,
        int turn,
        TableSetUp setUp,
        @Nullable Long setUpId,
        List<RawLine> figures,
        List<ReductionLine> reductions) {

    public SheetLine {
        figures = List.copyOf(figures);
        reductions = List.copyOf(reductions);
    }

    /** Those that count. */
    public List<RawLine> standing() {
        return figures.stream().filter(RawLine::stands).toList();
    }

    /** The one that counts at a spot. */
    public @Nullable RawLine at(Spot spot) {
        return standing().stream()
                .filter(line -> line.spot().equals(spot.name()))
                .findFirst()
                .orElse(null);
    }

    /** The newest reduction; null before there is one. */
    public @Nullable ReductionLine newest() {
        return reductions.isEmpty() ? null : reductions.get(reductions.size() - 1);
    }
}
