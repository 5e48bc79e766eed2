package org.trammel.shop.overview;

import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.trammel.shop.routes.ClockKind;
import org.trammel.shop.travellers.ClockView;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;

/** Which windows of a traveller still matter: those that close something which is not done. */
final class Windows {

    private static final Set<OperationState> PAST =
            EnumSet.of(OperationState.AT_POINT, OperationState.DONE, OperationState.REPEATED);

    private Windows() {}

    /**
     * A window that runs or ran out.
     *
     * @param gate operation it closes, in words; empty where a cold-set is all it limits
     */
    record Open(String name, String gate, Instant endsAt, boolean closed) {}

    static List<Open> of(
            List<ClockView> clocks, List<FrameSheet.OperationLine> strip, Set<String> coldSets, Instant now) {
        return clocks.stream()
                .filter(c -> c.kind() == ClockKind.WINDOW && (c.closedAt(now) || c.openAt(now)))
                .map(c -> open(c, strip, coldSets, now))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Open> open(
            ClockView clock, List<FrameSheet.OperationLine> strip, Set<String> coldSets, Instant now) {
        Instant ends = clock.endsAt();
        Optional<FrameSheet.OperationLine> gate = strip.stream()
                .filter(o -> clock.gates().contains(o.code()) && !PAST.contains(o.state()))
                .findFirst();
        return ends == null || gate.isEmpty() && !coldSets.contains(clock.code())
                ? Optional.empty()
                : Optional.of(new Open(
                        clock.name(), gate.map(FrameSheet.OperationLine::name).orElse(""), ends, clock.closedAt(now)));
    }
}
