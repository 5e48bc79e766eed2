package org.trammel.shop.coats;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.nonconformance.NonconformanceLine;
import org.trammel.shop.nonconformance.NonconformanceReads;
import org.trammel.shop.nonconformance.NonconformanceState;
import org.trammel.shop.nonconformance.Opening;
import org.trammel.shop.records.Act;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Awaited;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.Travellers;

/** What does not conform of a coat opens a nonconformance, as a refused reading does. */
@Component
class CoatFaults {

    /** Kinds of gauge that a route asks for where it has a characteristic for the film or the look of a coat. */
    private static final Set<String> KINDS = Set.of("FILM-EDDY", "FILM-MAGNETIC", "GLOSS");

    private final Opening opening;
    private final NonconformanceReads reads;
    private final Travellers travellers;
    private final Settings settings;

    CoatFaults(Opening opening, NonconformanceReads reads, Travellers travellers, Settings settings) {
        this.opening = opening;
        this.reads = reads;
        this.travellers = travellers;
        this.settings = settings;
    }

    /**
     * Opens one. One about the same thing, or about a characteristic that the same record gave, stands for it while nobody
     * put a decision forward; any other does not: a decision about one thing releases nothing else.
     *
     * @param what does not conform, as a sentence
     * @return its number
     */
    String open(Act act, CoatTurn.At at, String what, String found) {
        long operation = at.line().operationId();
        String words = what + " " + found;
        return reads.of(at.head().serial()).stream()
                .filter(one -> one.operationId() == operation
                        && one.state() == NonconformanceState.OPEN
                        && (one.words().startsWith(what) || given(operation, one)))
                .map(NonconformanceLine::number)
                .findFirst()
                .orElseGet(() -> opening.ofRecord(
                        act,
                        at.head().travellerId(),
                        operation,
                        words.length() > 1000 ? words.substring(0, 999) + "…" : words));
    }

    private boolean given(long operationId, NonconformanceLine one) {
        return travellers.operation(operationId).characteristics().stream()
                .anyMatch(c -> KINDS.contains(c.gaugeKind())
                        && Long.valueOf(c.characteristicId()).equals(one.characteristicId()));
    }

    /**
     * Whether a concession that still runs lets a film or a look stay as it is: one on its nonconformance, or on a
     * characteristic of the coat.
     *
     * @param nonconformance the one that stands for it; null where it is undecided
     */
    boolean conceded(Awaited.AtItsGate operation, @Nullable String nonconformance) {
        return nonconformance != null
                        && reads.of(operation.serial()).stream()
                                .anyMatch(one -> one.number().equals(nonconformance) && concession(one))
                || onCharacteristic(operation.operationId());
    }

    /** Those that say the same of a frame. */
    List<NonconformanceLine> about(String serial, String words) {
        return reads.of(serial).stream().filter(one -> same(one.words(), words)).toList();
    }

    static boolean same(String one, String other) {
        return one.replaceAll("\\s+", " ").equalsIgnoreCase(other.replaceAll("\\s+", " "));
    }

    /** Whether it still says what becomes of it, so that no second one is opened. */
    boolean stands(NonconformanceLine one) {
        return one.decidedAt() == null
                || concession(one)
                || one.closedAt() == null
                        && one.decision() != Decision.CLEARED
                        && one.decision() != Decision.CONCESSION;
    }

    /** Whether it is a concession that still runs. */
    boolean concession(NonconformanceLine one) {
        return one.decision() == Decision.CONCESSION
                && one.decidedAt() != null
                && one.expiresOn() != null
                && !one.expiresOn().isBefore(settings.today());
    }

    private boolean onCharacteristic(long operationId) {
        return travellers.operation(operationId).characteristics().stream()
                .filter(one -> KINDS.contains(one.gaugeKind()))
                .anyMatch(one -> one.state() == CharacteristicState.CONCESSION);
    }

    static @Nullable String numberOf(CoatVerdict verdict, java.util.function.Supplier<String> open) {
        return verdict == CoatVerdict.NOT_CONFORMING ? open.get() : null;
    }
}
