package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
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

    /** Characteristics of an operation by their codes, however long it is done, while the frame is in the shop. */
    @Transactional(propagation = Propagation.MANDATORY)
    public List<Evidence.Wanted> given(long operationId, Collection<String> codes) {
        Operation o = operations.findById(operationId).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller t = travellers.findById(o.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        return t.state().open() && o.state() != OperationState.REPEATED
                ? characteristics.findByOperationIdOrderByPosition(operationId).stream()
                        .filter(c -> codes.contains(c.code()))
                        .map(c -> Evidence.wanted(t, o, c))
                        .toList()
                : List.of();
    }

    /**
     * The record that a conforming characteristic rests on is in doubt. It is undecided from now on, also of an operation
     * that is done: that is not gone back to, but the frame does not leave.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void doubt(Act act, long characteristicId, String why) {
        Characteristic c = characteristics.findById(characteristicId).orElseThrow(() -> Bench.noSuch("characteristic"));
        if (c.state() != CharacteristicState.CONFORMING) {
            return;
        }
        Operation o = operations.findById(c.operationId()).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller t = travellers.findById(o.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        c.doubt();
        log.event(t.chain(), "in doubt", Map.of("characteristic", c.id(), "code", c.code(), "source", why));
        if (o.state() == OperationState.AT_POINT) {
            bench.reopen(act, t, o);
        }
    }

    /** The doubt of a record is over, and what the characteristic rests on stands again. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void doubtOver(long characteristicId, String why) {
        Characteristic c = characteristics.findById(characteristicId).orElseThrow(() -> Bench.noSuch("characteristic"));
        if (c.state() != CharacteristicState.UNDECIDED) {
            return;
        }
        Operation o = operations.findById(c.operationId()).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller t = travellers.findById(o.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        c.doubtOver();
        log.event(t.chain(), "out of doubt", Map.of("characteristic", c.id(), "code", c.code(), "source", why));
    }

    /**
     * A concession speaks for what was conceded. A newer record says something else, so the characteristic is open again, and
     * what the record says of it is judged.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void beyondConcession(Act act, long operationId, String code) {
        Operation o = operations.findById(operationId).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller t = travellers.findById(o.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        if (open(t, o)) {
            characteristics.findByOperationIdOrderByPosition(operationId).stream()
                    .filter(c -> c.code().equals(code) && c.state() == CharacteristicState.CONCESSION)
                    .forEach(c -> takeBack(act, c.id()));
        }
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
