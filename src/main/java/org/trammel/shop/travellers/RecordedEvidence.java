package org.trammel.shop.travellers;

import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;

/**
 * Where a record of another module, such as that of an oven run, is let judge a characteristic. Who may make the record count
 * is asked there; nobody signs it here as a reading.
 */
@Service
public class RecordedEvidence {

    private final TravellerRepository travellers;
    private final OperationRepository operations;
    private final CharacteristicRepository characteristics;
    private final Bench bench;
    private final Gate gate;
    private final ActLog log;

    RecordedEvidence(
            TravellerRepository travellers,
            OperationRepository operations,
            CharacteristicRepository characteristics,
            Bench bench,
            Gate gate,
            ActLog log) {
        this.travellers = travellers;
        this.operations = operations;
        this.characteristics = characteristics;
        this.bench = bench;
        this.gate = gate;
        this.log = log;
    }

    /** The characteristic of an operation by its code, where a record may judge it now; empty where none may. */
    @Transactional(propagation = Propagation.MANDATORY)
    public Optional<Evidence.Wanted> givable(long operationId, String code) {
        Operation o = operations.findById(operationId).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller t = travellers.findById(o.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        return open(t, o)
                ? characteristics.findByOperationIdOrderByPosition(operationId).stream()
                        .filter(c -> c.code().equals(code) && c.state() != CharacteristicState.CONCESSION)
                        .map(c -> Evidence.wanted(t, o, c))
                        .findFirst()
                : Optional.empty();
    }

    private boolean open(Traveller t, Operation o) {
        return t.state().open() && !o.state().past() && gate.earlier(t, o).isEmpty();
    }

    /** What a record said of a characteristic holds no longer, and nothing took its place yet. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void takeBack(Act act, long characteristicId) {
        Characteristic c = characteristics.findById(characteristicId).orElseThrow(() -> Bench.noSuch("characteristic"));
        Operation o = operations.findById(c.operationId()).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller t = travellers.findById(o.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        c.readAgain();
        log.event(t.chain(), "to be given again", Map.of("characteristic", c.id(), "code", c.code()));
        if (o.state() == OperationState.AT_POINT) {
            bench.reopen(act, t, o);
        }
    }
}
