package org.trammel.shop.overview;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.routes.Point;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;

/**
 * The way of one traveller through the shop in time, as it is drawn.
 *
 * @param part empty for the whole frame
 * @param from when it was released
 * @param doneTo end of the newest finished operation; the release if none is finished
 * @param workFrom begin of the operation in work; null if none is
 * @param stopped whether work on it stands still
 * @param finished whether nothing is left to do
 * @param left operations not done
 * @param nextHold code of the next hold point that is not signed; null if none is left
 * @param untilHold how many of the operations left come up to that point, itself included
 */
record Track(
        String part,
        Instant from,
        Instant doneTo,
        @Nullable Instant workFrom,
        boolean stopped,
        boolean finished,
        int left,
        @Nullable String nextHold,
        int untilHold) {

    static Track of(FrameSheet.Head head, List<FrameSheet.OperationLine> strip, boolean stopped) {
        List<FrameSheet.OperationLine> standing =
                strip.stream().filter(o -> o.state() != OperationState.REPEATED).toList();
        Instant doneTo = standing.stream()
                .filter(o -> o.state() == OperationState.DONE)
                .map(FrameSheet.OperationLine::finishedAt)
                .filter(Objects::nonNull)
                .max(Instant::compareTo)
                .orElse(head.releasedAt());
        List<FrameSheet.OperationLine> left =
                standing.stream().filter(o -> o.state() != OperationState.DONE).toList();
        Instant workFrom = left.stream()
                .filter(o -> o.state() != OperationState.WAITING)
                .map(FrameSheet.OperationLine::startedAt)
                .filter(Objects::nonNull)
                .min(Instant::compareTo)
                .orElse(null);
        int until = 0;
        String hold = null;
        for (FrameSheet.OperationLine o : left) {
            until++;
            if (o.point() == Point.HOLD) {
                hold = o.code();
                break;
            }
        }
        return new Track(
                head.part(),
                head.releasedAt(),
                doneTo.isBefore(head.releasedAt()) ? head.releasedAt() : doneTo,
                workFrom,
                stopped,
                left.isEmpty(),
                left.size(),
                hold,
                until);
    }
}
