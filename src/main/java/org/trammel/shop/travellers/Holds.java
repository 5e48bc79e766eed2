package org.trammel.shop.travellers;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Refusal;

/** Holds: anybody places one, those the reason names lift it, never who caused it. */
@Service
public class Holds {

    private final Locator locator;
    private final TravellerRepository travellers;
    private final OperationRepository operations;
    private final HoldRepository holds;
    private final HoldFreedRepository freed;
    private final HoldAgreementRepository agreements;
    private final Doers doers;
    private final Progress progress;
    private final Crewed crewed;
    private final ActLog log;

    Holds(
            Locator locator,
            TravellerRepository travellers,
            OperationRepository operations,
            HoldRepository holds,
            HoldFreedRepository freed,
            HoldAgreementRepository agreements,
            Doers doers,
            Progress progress,
            Crewed crewed,
            ActLog log) {
        this.locator = locator;
        this.travellers = travellers;
        this.operations = operations;
        this.holds = holds;
        this.freed = freed;
        this.agreements = agreements;
        this.doers = doers;
        this.progress = progress;
        this.crewed = crewed;
        this.log = log;
    }

    /**
     * A hold to place.
     *
     * @param travellerId the frame or part it is about
     * @param operationId the operation, for a hold of one operation
     * @param source what raised it, such as NC-0012 or a lot's code; "by hand" for a worker's word
     * @param causers people who took part in what it is about: none of them lifts it
     */
    public record Request(
            long travellerId,
            HoldScope scope,
            @Nullable Long operationId,
            HoldReason reason,
            String words,
            String source,
            Set<Long> causers) {}

    /**
     * Places a hold as an act of its own.
     *
     * @return id of the hold; 0 if the act was sent a second time
     */
    @Transactional
    public long place(Act act, Request request) {
        List<Locator.Place> places = locator.ofTraveller(request.travellerId());
        if (places.isEmpty()) {
            throw Bench.noSuch("traveller");
        }
        if (!log.opens(act, "place hold", "traveller:" + request.travellerId(), Bench.chains(places))) {
            return 0;
        }
        Person person = crewed.worker(act.by(), "Placing a hold");
        if (request.reason().saysWhatWasFound() && !person.maySign()) {
            throw Refusal.person(
                    "The hold was not placed.",
                    "A hold for " + request.reason().word() + " says what was found out, and an apprentice does not"
                            + " decide that.",
                    "Call QA, or hold it for safety if it cannot wait.");
        }
        return placeWithin(act, withCausers(request));
    }

    /** Who worked at the operation a hold is about, or at the one at hand, does not lift it where the reason says so. */
    private Request withCausers(Request request) {
        Long at = request.operationId() != null
                ? request.operationId()
                : travellers
                        .findById(request.travellerId())
                        .map(Traveller::currentOperationId)
                        .orElse(null);
        if (!request.reason().barsCauser() || at == null) {
            return request;
        }
        Set<Long> causers = new HashSet<>(request.causers());
        causers.addAll(doers.andSigners(at));
        return new Request(
                request.travellerId(),
                request.scope(),
                request.operationId(),
                request.reason(),
                request.words(),
                request.source(),
                causers);
    }

    /** Places a hold inside an act that is open: a trace, a nonconformance. */
    @Transactional(propagation = Propagation.MANDATORY)
    public long placeWithin(Act act, Request request) {
        Traveller traveller = travellers.findById(request.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        if (request.scope() == HoldScope.OPERATION && request.operationId() == null) {
            throw Refusal.input(
                    "operation",
                    "The hold was not placed.",
                    "A hold of one operation names the operation.",
                    "Choose the operation, or hold the frame.");
        }
        String words = Bench.required(request.words(), "words", "The hold was not placed.");
        HoldScope scope =
                request.operationId() == null ? request.scope() : scope(request, traveller, request.operationId());
        Hold hold = holds.save(new Hold(
                traveller,
                scope,
                request.operationId(),
                request.reason(),
                new Hold.Origin(words, request.source(), act.by(), act.at(), request.causers())));
        log.event(
                traveller.chain(),
                "hold placed",
                Map.of(
                        "hold", hold.id(),
                        "reason", request.reason().name(),
                        "scope", scope.name(),
                        "source", request.source()));
        return hold.id();
    }

    /** What was done is not held by closing its own gate any more: the hold reaches what follows in the part. */
    private HoldScope scope(Request request, Traveller traveller, long operationId) {
        Operation operation = operations.findById(operationId).orElseThrow(() -> Bench.noSuch("operation"));
        if (operation.travellerId() != traveller.id()) {
            throw Refusal.input(
                    "operation",
                    "The hold was not placed.",
                    "Operation " + operation.called() + " belongs to another frame or part.",
                    "Choose one of " + traveller.mark() + ", or hold the frame.");
        }
        return request.scope() == HoldScope.OPERATION && operation.state().past() ? HoldScope.PART : request.scope();
    }

    /**
     * Lifts a hold, or agrees to it being lifted where several must agree.
     *
     * @param words what was found or done
     * @return true if the hold is lifted now; false if somebody else must still agree
     */
    @Transactional
    public boolean lift(Act act, long holdId, String words) {
        List<Locator.Place> places = locator.ofHold(holdId);
        if (places.isEmpty()) {
            throw Bench.noSuch("hold");
        }
        if (!log.opens(act, "lift hold", "hold:" + holdId, Bench.chains(places))) {
            return !holds.findById(holdId).orElseThrow().open();
        }
        Hold hold = holds.findById(holdId).orElseThrow(() -> Bench.noSuch("hold"));
        if (hold.source().startsWith("NC-")) {
            throw Refusal.state(
                    "The hold cannot be lifted by itself.",
                    "It belongs to nonconformance " + hold.source() + ".",
                    "Decide the nonconformance; its decision lifts the hold.");
        }
        if (hold.source().startsWith("RJ-")) {
            throw Refusal.state(
                    "The hold cannot be lifted by itself.",
                    "It belongs to re-judgement " + hold.source() + ".",
                    "Give the frame its result there; the result lifts the hold.");
        }
        if (hold.source().startsWith("OT-")) {
            throw Refusal.state(
                    "The hold cannot be lifted by itself.",
                    "It belongs to oven trace " + hold.source() + ".",
                    "Give the frame its result there; the last result of it lifts the hold.");
        }
        return liftWithin(act, hold, words);
    }

    /**
     * Lifts, inside an act that is open, every hold a source placed on a frame, by somebody who may lift it.
     *
     * @return how many there were
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public int liftFor(Act act, String serial, String source, String words) {
        List<Hold> open = holds.openOn(serial).stream()
                .filter(h -> h.source().equals(source))
                .toList();
        open.forEach(hold -> liftWithin(act, hold, words));
        return open.size();
    }

    private boolean liftWithin(Act act, Hold hold, String words) {
        String deed = "Lifting the hold for " + hold.reason().word();
        Person person = crewed.signing(act.by(), deed);
        String said = Bench.required(words, "words", "The hold was not lifted.");
        if (hold.reason().barsCauser() && hold.causedBy().contains(person.id())) {
            throw Refusal.person(
                    deed + " is not open to " + person.name() + ".",
                    person.name() + " took part in what it is about.",
                    "The QA lead's deputy or the owner, who took no part, lifts it.");
        }
        List<Role> lifters = hold.reason().lifters();
        if (!lifters.isEmpty() && lifters.stream().noneMatch(r -> mayLiftAs(person, r, hold))) {
            throw Refusal.person(
                    deed + " is not open to " + person.name() + ".",
                    "It is for the "
                            + String.join(
                                    " and the ",
                                    lifters.stream().map(Role::word).toList()) + ".",
                    "Call them; the frame stays where it is.");
        }
        hold.agree(person.id());
        if (lifters.size() > 1 && !agreedByAll(hold, lifters)) {
            agreements.save(new HoldAgreement(hold.id(), person.id(), act.at(), said));
            log.event(chain(hold), "agreed to lift", Map.of("hold", hold.id(), "person", person.id()));
            return false;
        }
        lifted(act, hold, said);
        return true;
    }

    /** A deputy, else the owner, stands in where the QA lead took part in what the hold is about. */
    private boolean mayLiftAs(Person person, Role role, Hold hold) {
        return person.is(role) || role == Role.QA_LEAD && crewed.standsInForQaLead(person, hold.causedBy());
    }

    private boolean agreedByAll(Hold hold, List<Role> lifters) {
        return hold.agreed().size() >= lifters.size()
                && lifters.stream()
                        .allMatch(r -> hold.agreed().stream().anyMatch(id -> mayLiftAs(crewed.person(id), r, hold)));
    }

    /** Lifts, inside an act that is open, every hold a source placed on a frame. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void liftOf(Act act, String serial, String source, String words) {
        holds.openOn(serial).stream().filter(h -> h.source().equals(source)).forEach(h -> lifted(act, h, words));
    }

    private void lifted(Act act, Hold hold, String words) {
        hold.lift(act.by(), act.at(), words);
        log.event(
                chain(hold),
                "hold lifted",
                Map.of("hold", hold.id(), "reason", hold.reason().name()));
        holds.flush();
        for (Traveller traveller : travellers.findBySerialOrderById(hold.serial())) {
            if (traveller.state().open() && traveller.currentOperationId() != null) {
                operations.findById(traveller.currentOperationId()).ifPresent(o -> progress.settle(act, traveller, o));
            }
        }
    }

    private String chain(Hold hold) {
        return Bench.chains(locator.ofSerial(hold.serial()))[0];
    }

    /** Lets one time-critical, reversible operation go on under a hold that stays. By the QA lead, with a reason. */
    @Transactional
    public void free(Act act, long holdId, long operationId, String reason) {
        List<Locator.Place> places = locator.ofHold(holdId);
        if (places.isEmpty()) {
            throw Bench.noSuch("hold");
        }
        if (!log.opens(
                act,
                "free operation under hold",
                "hold:" + holdId + " operation:" + operationId,
                Bench.chains(places))) {
            return;
        }
        Hold hold = holds.findById(holdId).orElseThrow(() -> Bench.noSuch("hold"));
        Operation operation = operations.findById(operationId).orElseThrow(() -> Bench.noSuch("operation"));
        String deed = "Freeing operation " + operation.called() + " under the hold";
        Person person = crewed.holding(act.by(), Role.QA_LEAD, deed);
        if (hold.reason().barsCauser() && hold.causedBy().contains(person.id())) {
            throw Refusal.person(
                    deed + " is not open to " + person.name() + ".",
                    person.name() + " took part in what the hold is about.",
                    "The QA lead's deputy or the owner decides.");
        }
        if (!hold.open()) {
            throw Refusal.stale(deed + " is not needed.", "The hold is lifted.", "Open the frame again.");
        }
        if (operation.irreversible()) {
            throw Refusal.state(
                    deed + " is not possible.",
                    "Operation " + operation.called() + " cannot be undone once begun.",
                    "Lift the hold first, or wait.");
        }
        requireReached(hold, operation, deed);
        String said = Bench.required(reason, "reason", "The operation was not freed.");
        hold.reachOn();
        freed.save(new HoldFreed(holdId, operationId, act.by(), act.at(), said));
        log.event(chain(hold), "operation freed under hold", Map.of("hold", holdId, "operation", operationId));
    }

    private void requireReached(Hold hold, Operation operation, String deed) {
        Traveller traveller = travellers.findById(operation.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        if (!hold.serial().equals(traveller.serial()) || !hold.covers(traveller, operation)) {
            throw Refusal.state(
                    deed + " is not needed.", "The hold does not reach this operation.", "Open the frame again.");
        }
        if (freed.existsByHoldIdAndOperationId(hold.id(), operation.id())) {
            throw Refusal.stale(deed + " is not needed.", "It was freed before.", "Open the frame again.");
        }
    }

    /** Whether an open hold covers an operation, freed under it or not: nothing that cannot be undone is done there. */
    @Transactional(readOnly = true)
    public boolean cover(long operationId) {
        Operation operation = operations.findById(operationId).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller traveller = travellers.findById(operation.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        return holds.openOn(traveller.serial()).stream().anyMatch(hold -> hold.covers(traveller, operation));
    }
}
