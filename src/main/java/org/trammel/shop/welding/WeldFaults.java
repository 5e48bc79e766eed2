package org.trammel.shop.welding;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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

/** What does not conform of a weld opens a nonconformance, and what was decided about it. */
@Component
class WeldFaults {

    private static final Set<NonconformanceState> DECIDED =
            EnumSet.of(NonconformanceState.DECIDED, NonconformanceState.CLOSED);

    private final Opening opening;
    private final NonconformanceReads reads;
    private final Evidence evidence;
    private final Settings settings;

    WeldFaults(Opening opening, NonconformanceReads reads, Evidence evidence, Settings settings) {
        this.opening = opening;
        this.reads = reads;
        this.evidence = evidence;
        this.settings = settings;
    }

    /**
     * Opens one for what is recorded of a weld, or seen of it at another operation.
     *
     * @param welds codes of the operations that may be at fault, the first that the traveller has is named; none where it is
     *     the operation itself
     * @return its number
     */
    String open(Act act, FrameSheet.Head head, long operationId, List<String> welds, String words) {
        return opening.ofRecord(
                act,
                head.travellerId(),
                operationId,
                welds.stream()
                        .filter(code ->
                                !evidence.operationsOf(head.travellerId(), code).isEmpty())
                        .findFirst()
                        .orElse(null),
                words.length() > 1000 ? words.substring(0, 999) + "…" : words);
    }

    /** Whether a concession that has not ended lets the weld stay as it is. */
    boolean conceded(String serial, String number) {
        LocalDate today = settings.today();
        return decided(serial, number, Decision.CONCESSION)
                .filter(one -> one.expiresOn() == null || !one.expiresOn().isBefore(today))
                .isPresent();
    }

    /** Whether it was decided that it conforms after all; that lets nothing through without a newer record that says so. */
    boolean cleared(String serial, String number) {
        return decided(serial, number, Decision.CLEARED).isPresent();
    }

    private Optional<NonconformanceLine> decided(String serial, String number, Decision decision) {
        return reads.of(serial).stream()
                .filter(one ->
                        one.number().equals(number) && one.decision() == decision && DECIDED.contains(one.state()))
                .findFirst();
    }
}
