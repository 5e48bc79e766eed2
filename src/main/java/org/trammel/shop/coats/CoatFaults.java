package org.trammel.shop.coats;

import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.nonconformance.NonconformanceLine;
import org.trammel.shop.nonconformance.NonconformanceReads;
import org.trammel.shop.nonconformance.NonconformanceState;
import org.trammel.shop.nonconformance.Opening;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** What does not conform of a coat opens a nonconformance, as a refused reading does; one that is open stands for it. */
@Component
class CoatFaults {

    /** Kinds of gauge that a route asks for where it has a characteristic for the film or the look of a coat. */
    private static final Set<String> KINDS = Set.of("FILM-EDDY", "FILM-MAGNETIC", "GLOSS");

    private final Opening opening;
    private final NonconformanceReads reads;
    private final Travellers travellers;

    CoatFaults(Opening opening, NonconformanceReads reads, Travellers travellers) {
        this.opening = opening;
        this.reads = reads;
        this.travellers = travellers;
    }

    /** @return number of the nonconformance */
    String open(Act act, CoatTurn.At at, String words) {
        long operation = at.line().operationId();
        return reads.of(at.head().serial()).stream()
                .filter(one -> one.operationId() == operation
                        && (one.state() == NonconformanceState.OPEN || one.state() == NonconformanceState.PROPOSED))
                .map(NonconformanceLine::number)
                .findFirst()
                .orElseGet(() -> opening.byHand(
                        act,
                        at.head().travellerId(),
                        operation,
                        characteristic(operation).orElse(null),
                        at.line().code(),
                        words.length() > 1000 ? words.substring(0, 999) + "…" : words));
    }

    /** A concession releases a characteristic; where the route has one for the coat, it speaks for all of the coat. */
    private Optional<Long> characteristic(long operationId) {
        return travellers.operation(operationId).characteristics().stream()
                .filter(one -> KINDS.contains(one.gaugeKind()))
                .map(FrameSheet.CharacteristicLine::characteristicId)
                .findFirst();
    }

    boolean conceded(long operationId) {
        return travellers.operation(operationId).characteristics().stream()
                .filter(one -> KINDS.contains(one.gaugeKind()))
                .anyMatch(one -> one.state() == CharacteristicState.CONCESSION);
    }

    static @Nullable String numberOf(CoatVerdict verdict, java.util.function.Supplier<String> open) {
        return verdict == CoatVerdict.NOT_CONFORMING ? open.get() : null;
    }
}
