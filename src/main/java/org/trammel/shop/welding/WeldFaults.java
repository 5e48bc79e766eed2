package org.trammel.shop.welding;

import java.time.LocalDate;
import java.util.EnumSet;
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
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** What does not conform of a weld opens a nonconformance, and what was decided about it. */
@Component
class WeldFaults {

    private static final Set<Decision> STAYS = EnumSet.of(Decision.CONCESSION, Decision.CLEARED);
    private static final Set<NonconformanceState> DECIDED =
            EnumSet.of(NonconformanceState.DECIDED, NonconformanceState.CLOSED);

    private final Opening opening;
    private final NonconformanceReads reads;
    private final Travellers travellers;
    private final Evidence evidence;
    private final Settings settings;

    WeldFaults(
            Opening opening, NonconformanceReads reads, Travellers travellers, Evidence evidence, Settings settings) {
        this.opening = opening;
        this.reads = reads;
        this.travellers = travellers;
        this.evidence = evidence;
        this.settings = settings;
    }

    /**
     * Opens one. A concession releases a characteristic: where the operation has one for what was found, it is about that.
     *
     * @param gaugeKind kind of gauge of such a characteristic; null where there is none
     * @return its number
     */
    String open(Act act, FrameSheet.Head head, long operationId, @Nullable String gaugeKind, String words) {
        FrameSheet.OperationSheetOfFrame operation = travellers.operation(operationId);
        return opening.byHand(
                act,
                head.travellerId(),
                operationId,
                operation.characteristics().stream()
                        .filter(one -> one.gaugeKind().equals(gaugeKind))
                        .map(FrameSheet.CharacteristicLine::characteristicId)
                        .findFirst()
                        .orElse(null),
                operation.line().code(),
                words.length() > 1000 ? words.substring(0, 999) + "…" : words);
    }

    /**
     * Opens one for what was seen at another operation.
     *
     * @param welds codes of the operations that may be at fault, the first that the traveller has is named
     */
    String seen(Act act, FrameSheet.Head head, long operationId, List<String> welds, String words) {
        return opening.byHand(
                act,
                head.travellerId(),
                operationId,
                null,
                welds.stream()
                        .filter(code ->
                                !evidence.operationsOf(head.travellerId(), code).isEmpty())
                        .findFirst()
                        .orElse(null),
                words.length() > 1000 ? words.substring(0, 999) + "…" : words);
    }

    /** Whether it was decided that the weld stays as it is, by a concession that has not ended or because it was none. */
    boolean letThrough(String serial, String number) {
        LocalDate today = settings.today();
        return reads.of(serial).stream()
                .filter(one -> one.number().equals(number))
                .anyMatch(one -> stays(one, today));
    }

    private static boolean stays(NonconformanceLine one, LocalDate today) {
        return DECIDED.contains(one.state())
                && one.decision() != null
                && STAYS.contains(one.decision())
                && (one.expiresOn() == null || !one.expiresOn().isBefore(today));
    }
}
