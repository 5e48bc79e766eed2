package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Refusal;

/**
 * Characteristics that another module records on a sheet of its own, so that nobody keys them twice. Whoever takes one over
 * guards its gate as {@link Awaited}.
 */
@Service
public class OwnSheets {

    /** What was read of these before stays what it is. */
    private static final Set<CharacteristicState> TAKEN_FROM =
            Set.of(CharacteristicState.OPEN, CharacteristicState.FIRST_READ);

    private final CharacteristicRepository characteristics;
    private final OperationRepository operations;
    private final TravellerRepository travellers;
    private final Bench bench;
    private final ActLog log;

    OwnSheets(
            CharacteristicRepository characteristics,
            OperationRepository operations,
            TravellerRepository travellers,
            Bench bench,
            ActLog log) {
        this.characteristics = characteristics;
        this.operations = operations;
        this.travellers = travellers;
        this.bench = bench;
        this.log = log;
    }

    /**
     * Says which characteristics of an operation that is not done are recorded on the sheet; those that were and no longer
     * are become open here.
     *
     * @param gaugeKind kind that the sheet is for
     * @param codes of those the sheet has now
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void keep(Act act, long operationId, String gaugeKind, Collection<String> codes) {
        Operation o = operations.findById(operationId).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller t = travellers.findById(o.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        if (o.state().past()) {
            return;
        }
        List<Characteristic> all = characteristics.findByOperationIdOrderByPosition(operationId).stream()
                .filter(c -> c.gaugeKind().equals(gaugeKind))
                .toList();
        for (Characteristic c : all) {
            if (codes.contains(c.code()) && TAKEN_FROM.contains(c.state())) {
                c.toOwnSheet();
                log.event(t.chain(), "on its own sheet", Map.of("characteristic", c.id(), "code", c.code()));
            } else if (!codes.contains(c.code()) && c.onOwnSheet()) {
                c.fromOwnSheet();
                log.event(t.chain(), "off its own sheet", Map.of("characteristic", c.id(), "code", c.code()));
                if (o.state() == OperationState.AT_POINT) {
                    bench.reopen(act, t, o);
                }
            }
        }
        characteristics.flush();
    }

    static void refuse(String deed, Characteristic c) {
        if (c.onOwnSheet()) {
            throw Refusal.state(
                    deed + " is not done here.",
                    "It is recorded on the sheet of this frame's own components.",
                    "Open that sheet from the sheet of the frame.");
        }
    }
}
