package org.trammel.shop.travellers;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;

/**
 * Where the modules that keep evidence give it to a frame. What they report moves the frame on, or holds it, in the
 * same transaction.
 */
@Service
public class Evidence {

    private final Locator locator;
    private final TravellerRepository travellers;
    private final OperationRepository operations;
    private final CharacteristicRepository characteristics;
    private final FrameClockRepository clocks;
    private final Bench bench;
    private final Doers doers;
    private final Gate gate;
    private final Progress progress;
    private final Crewed crewed;
    private final ActLog log;
    private final ApplicationEventPublisher events;

    Evidence(
            Locator locator,
            TravellerRepository travellers,
            OperationRepository operations,
            CharacteristicRepository characteristics,
            FrameClockRepository clocks,
            Bench bench,
            Doers doers,
            Gate gate,
            Progress progress,
            Crewed crewed,
            ActLog log,
            ApplicationEventPublisher events) {
        this.locator = locator;
        this.travellers = travellers;
        this.operations = operations;
        this.characteristics = characteristics;
        this.clocks = clocks;
        this.bench = bench;
        this.doers = doers;
        this.gate = gate;
        this.progress = progress;
        this.crewed = crewed;
        this.log = log;
        this.events = events;
    }

    /** A characteristic as whoever reads it needs it. */
    public record Wanted(
            long characteristicId,
            long operationId,
            long travellerId,
            String serial,
            String part,
            String chain,
            String metal,
            String operationCode,
            OperationState operationState,
            String code,
            String name,
            String unit,
            int decimals,
            @Nullable BigDecimal nominal,
            @Nullable BigDecimal lowerLimit,
            @Nullable BigDecimal upperLimit,
            String gaugeKind,
            List<String> points,
            Reduction reduction,
            Rule rule,
            boolean sided,
            boolean readBack,
            boolean secondPerson,
            boolean deciding,
            @Nullable String coldSetClock,
            int coldSetAttempts,
            @Nullable BigDecimal coldSetAmount,
            @Nullable BigDecimal triageTolerances,
            CharacteristicState state,
            @Nullable Long readingId) {}

    /** The characteristic as it is now, without any lock. */
    @Transactional(readOnly = true)
    public Wanted wanted(long characteristicId) {
        Characteristic c = characteristics.findById(characteristicId).orElseThrow(() -> Bench.noSuch("characteristic"));
        Operation o = operations.findById(c.operationId()).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller t = travellers.findById(o.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        return wanted(t, o, c);
    }

    static Wanted wanted(Traveller t, Operation o, Characteristic c) {
        return new Wanted(
                c.id(),
                o.id(),
                t.id(),
                t.serial(),
                t.part(),
                t.chain(),
                t.metal(),
                o.code(),
                o.state(),
                c.code(),
                c.name(),
                c.unit(),
                c.decimals(),
                c.nominal(),
                c.lowerLimit(),
                c.upperLimit(),
                c.gaugeKind(),
                c.points(),
                c.reduction(),
                c.rule(),
                c.sided(),
                c.readBack(),
                c.secondPerson(),
                c.deciding(),
                c.coldSetClock(),
                c.coldSetAttempts(),
                c.coldSetAmount(),
                c.triageTolerances(),
                c.state(),
                c.readingId());
    }

    /**
     * Locks the frame and opens the act of giving evidence for a characteristic.
     *
     * @return false if the act was carried out before
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public boolean opens(Act act, String kind, long characteristicId) {
        List<Locator.Place> places = locator.ofCharacteristic(characteristicId);
        if (places.isEmpty()) {
            throw Bench.noSuch("characteristic");
        }
        return log.opens(act, kind, "characteristic:" + characteristicId, Bench.chains(places));
    }

    /**
     * Refuses unless the characteristic may be read now by the person who acts: its operation is at hand, and the
     * person may sign the reading. A hold never stops a reading; it stops the operation from being begun by it.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public Wanted readable(Act act, long characteristicId) {
        Characteristic c = characteristics.findById(characteristicId).orElseThrow(() -> Bench.noSuch("characteristic"));
        Operation o = operations.findById(c.operationId()).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller t = travellers.findById(o.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        t.requireOpen("measured");
        String deed = "Reading " + c.code() + ", " + c.name();
        Person person = crewed.worker(act.by(), deed);
        requireReader(act, person, c, deed);
        Gate.refuseFirst(gate.earlier(t, o));
        if (o.state() == OperationState.WAITING && gate.held(t, o, "begin").isEmpty()) {
            progress.begin(act, t, o);
        }
        o.requireAt(
                "measured",
                OperationState.WAITING,
                OperationState.IN_WORK,
                OperationState.AT_POINT,
                OperationState.STOPPED);
        if (c.state() == CharacteristicState.CONCESSION) {
            throw conceded(deed, c);
        }
        OwnSheets.refuse(deed, c);
        return wanted(t, o, c);
    }

    /**
     * Refuses unless a mistyped reading of the characteristic may be corrected now by the person who acts. While the
     * operation is at hand that is whoever may read it. Once it is done, it is whoever read it, or the QA lead; once its
     * gate is signed or a later operation begun, the QA lead alone.
     *
     * @param readBy who took the reading to correct
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public Wanted correctable(Act act, long characteristicId, long readBy) {
        Characteristic c = characteristics.findById(characteristicId).orElseThrow(() -> Bench.noSuch("characteristic"));
        Operation o = operations.findById(c.operationId()).orElseThrow(() -> Bench.noSuch("operation"));
        if (o.state() != OperationState.DONE && !bench.signed(o)) {
            return readable(act, characteristicId);
        }
        Traveller t = travellers.findById(o.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        t.requireOpen("corrected");
        String deed = "Correcting the reading of " + c.code() + ", " + c.name();
        Person person = crewed.worker(act.by(), deed);
        requireReader(act, person, c, deed);
        o.requireAt("corrected", OperationState.IN_WORK, OperationState.AT_POINT, OperationState.DONE);
        if (!person.is(Role.QA_LEAD) && bench.passed(t, o)) {
            throw Refusal.person(
                    deed + " is not open to " + person.name() + ".",
                    "The gate of operation " + o.called() + " is signed, or a later operation has begun.",
                    "Call the QA lead, who corrects it with a reason.");
        }
        if (!person.is(Role.QA_LEAD) && person.id() != readBy) {
            throw Refusal.person(
                    deed + " is not open to " + person.name() + ".",
                    "Operation " + o.called() + " is done, and "
                            + crewed.person(readBy).name() + " read it.",
                    "Whoever read it corrects it, or the QA lead.");
        }
        if (c.state() == CharacteristicState.CONCESSION) {
            throw conceded(deed, c);
        }
        return wanted(t, o, c);
    }

    private static Refusal conceded(String deed, Characteristic c) {
        return Refusal.state(
                deed + " is not needed.",
                "It is released by concession " + c.nonconformance() + ".",
                "It is read again only after the part was changed: set, or done over.");
    }

    private void requireReader(Act act, Person person, Characteristic c, String deed) {
        List<Signer> signers = c.signers();
        if (signers.isEmpty() || signers.contains(Signer.WORKER) || signers.contains(Signer.SECOND)) {
            return;
        }
        boolean may = person.is(Role.QA_LEAD)
                || signers.contains(Signer.ALIGNER) && person.is(Role.ALIGNER)
                || signers.contains(Signer.HEAT_TREATER) && person.is(Role.HEAT_TREATER)
                || signers.contains(Signer.OWNER) && person.is(Role.OWNER);
        if (!may) {
            throw Refusal.person(
                    deed + " is not open to " + person.name() + ".",
                    "The route asks for "
                            + String.join(
                                    " or ", signers.stream().map(Signer::word).toList()) + ".",
                    "Call one of them; anybody may stop and call meanwhile.");
        }
    }

    /**
     * Takes a verdict. A verdict that is not conforming, or that takes back an earlier one, opens the gate's operation
     * again; a conforming one may finish it. Whoever signed a point that is not passed yet did so for the reading before:
     * its signatures are asked for anew.
     *
     * @param verdict what the newest valid reading says
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void judged(Act act, long characteristicId, CharacteristicState verdict, long readingId) {
        Characteristic c = characteristics.findById(characteristicId).orElseThrow(() -> Bench.noSuch("characteristic"));
        Operation o = operations.findById(c.operationId()).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller t = travellers.findById(o.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        c.judge(verdict, readingId);
        log.event(
                t.chain(),
                "judged",
                Map.of("characteristic", c.id(), "code", c.code(), "verdict", verdict.name(), "reading", readingId));
        boolean done = o.state() == OperationState.AT_POINT || o.state() == OperationState.DONE;
        boolean signedBefore = o.state() == OperationState.AT_POINT && bench.signed(o);
        if (!verdict.settled() && done || signedBefore) {
            bench.reopen(act, t, o);
        }
        if (verdict == CharacteristicState.NOT_CONFORMING) {
            events.publishEvent(new EvidenceRefused(
                    act, t.id(), t.serial(), t.part(), o.id(), o.code(), c.id(), c.code(), readingId, c.deciding()));
        }
        progress.settle(act, t, o);
    }

    /**
     * Releases a characteristic by a concession.
     *
     * @param until last day on which its gate may be passed with it
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void concede(Act act, long characteristicId, String nonconformance, LocalDate until) {
        Characteristic c = characteristics.findById(characteristicId).orElseThrow(() -> Bench.noSuch("characteristic"));
        Operation o = operations.findById(c.operationId()).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller t = travellers.findById(o.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        c.concede(nonconformance, until);
        log.event(t.chain(), "conceded", Map.of("characteristic", c.id(), "code", c.code(), "by", nonconformance));
        characteristics.flush();
        progress.settle(act, t, o);
    }

    /**
     * Every characteristic of the operation is to be read again: the part was bent or otherwise changed. What was
     * conceded was another shape; the concession does not speak for this one.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void readAllAgain(Act act, long operationId) {
        Operation o = operations.findById(operationId).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller t = travellers.findById(o.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        characteristics.findByOperationIdOrderByPosition(operationId).stream().forEach(Characteristic::readAgain);
        bench.untickQualified(act, o);
        bench.reopen(act, t, o);
        log.event(t.chain(), "all to be read again", Map.of("operation", operationId));
    }

    /** Refuses while an open hold covers the operation and it was not freed under that hold. */
    @Transactional(readOnly = true)
    public void requireNotHeld(long operationId, String verb) {
        Operation o = operations.findById(operationId).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller t = travellers.findById(o.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        Gate.refuseFirst(gate.held(t, o, verb));
    }

    /** Refuses what cannot be undone while any open hold covers the operation, freed under it or not. */
    @Transactional(readOnly = true)
    public void requireFree(long operationId, String verb) {
        Operation o = operations.findById(operationId).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller t = travellers.findById(o.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        Gate.refuseFirst(gate.heldForGood(t, o, verb));
    }

    /** Refuses unless whoever acts holds the qualification that the operation asks for. */
    @Transactional(readOnly = true)
    public void requireQualified(Act act, long operationId, String deed) {
        Operation o = operations.findById(operationId).orElseThrow(() -> Bench.noSuch("operation"));
        crewed.qualified(crewed.person(act.by()), o.qualification(), operationId, deed, act.at());
    }

    /** The clock of that code on the traveller, if the route has one. */
    @Transactional(readOnly = true)
    public List<ClockView> clocks(long travellerId) {
        return clocks.findByTravellerIdOrderById(travellerId).stream()
                .map(ClockView::of)
                .toList();
    }

    /**
     * Everybody who took part in the operations of a traveller that ask for a qualification of that kind, also under an
     * older revision.
     */
    @Transactional(readOnly = true)
    public Set<Long> tookPartWhere(long travellerId, String qualificationKind) {
        Set<Long> people = new HashSet<>();
        operations.ofSamePiece(travellers.ofSamePiece(travellerId)).stream()
                .filter(o -> o.qualification() != null && o.qualification().startsWith(qualificationKind))
                .forEach(o -> people.addAll(doers.of(o.id())));
        return people;
    }

    /** The operations of a traveller by that code, loops and those done under an older revision included. */
    @Transactional(readOnly = true)
    public List<Long> operationsOf(long travellerId, String code) {
        return operations.ofSamePiece(travellers.ofSamePiece(travellerId)).stream()
                .filter(o -> o.code().equals(code))
                .map(Operation::id)
                .toList();
    }

    /**
     * Characteristics of the traveller that are not conforming and wait for a cold-set, also where an earlier operation
     * was opened again and is at hand.
     */
    @Transactional(readOnly = true)
    public List<Wanted> waitingForColdSet(long travellerId, String clockCode) {
        Traveller t = travellers.findById(travellerId).orElseThrow(() -> Bench.noSuch("traveller"));
        Map<Long, Operation> open = operations.findByTravellerIdOrderByPosition(travellerId).stream()
                .filter(o -> !o.state().past())
                .collect(Collectors.toMap(Operation::id, o -> o));
        return characteristics.findByOperationIdInOrderByOperationIdAscPositionAsc(open.keySet()).stream()
                .filter(c -> c.state() == CharacteristicState.NOT_CONFORMING && clockCode.equals(c.coldSetClock()))
                .map(c -> wanted(t, open.get(c.operationId()), c))
                .toList();
    }

    /** Everybody who ticked, read or signed at an operation. */
    @Transactional(readOnly = true)
    public Set<Long> tookPart(long operationId) {
        return doers.andSigners(operationId);
    }

    /** Who may not sign the point of an operation as that signer, because they did its work. */
    @Transactional(readOnly = true)
    public Set<Long> barredFrom(long operationId, Signer as) {
        return doers.barredFrom(operationId, as);
    }
}
