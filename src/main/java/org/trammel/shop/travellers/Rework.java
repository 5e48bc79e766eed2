package org.trammel.shop.travellers;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.ClockKind;

/** Operations done over: loops put into the traveller, parts scrapped and made anew. What was done stays on record. */
@Service
public class Rework {

    private final Bench bench;
    private final TravellerRepository travellers;
    private final OperationRepository operations;
    private final StepRepository steps;
    private final CharacteristicRepository characteristics;
    private final FrameClockRepository clocks;
    private final HoldRepository holds;
    private final DoneSince doneSince;
    private final Progress progress;
    private final WindowWork windowWork;
    private final Crewed crewed;
    private final ActLog log;
    private final ApplicationEventPublisher events;

    Rework(
            Bench bench,
            TravellerRepository travellers,
            OperationRepository operations,
            StepRepository steps,
            CharacteristicRepository characteristics,
            FrameClockRepository clocks,
            HoldRepository holds,
            DoneSince doneSince,
            Progress progress,
            WindowWork windowWork,
            Crewed crewed,
            ActLog log,
            ApplicationEventPublisher events) {
        this.bench = bench;
        this.travellers = travellers;
        this.operations = operations;
        this.steps = steps;
        this.characteristics = characteristics;
        this.clocks = clocks;
        this.holds = holds;
        this.doneSince = doneSince;
        this.progress = progress;
        this.windowWork = windowWork;
        this.crewed = crewed;
        this.log = log;
        this.events = events;
    }

    /**
     * A loop to put in.
     *
     * @param from code of the first operation to do again
     * @param foundAt the operation the fault was found at
     * @param source the nonconformance that asks for it
     * @param beyondLimit true if QA lead and owner agreed to more loops than the route allows
     * @param stillValid operations done since that are said to be valid although what came before them is done over
     */
    public record Loop(String from, long foundAt, String source, boolean beyondLimit, Set<Long> stillValid) {}

    /**
     * Puts a loop in, inside an act that is open: the operations from one to where the fault was found are done again,
     * and so is everything done since, the joined frame's operations included, unless it is said to be valid still. The
     * loop follows the last of them; the first of it is at hand.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void repeat(Act act, Loop loop) {
        Operation found = operations.findById(loop.foundAt()).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller traveller = travellers.findById(found.travellerId()).orElseThrow();
        traveller.requireOpen("reworked");
        List<Operation> all = operations.findByTravellerIdOrderByPosition(traveller.id());
        Operation until = DoneSince.inForce(all, found);
        Operation from = all.stream()
                .filter(o -> o.code().equals(loop.from())
                        && o.position() <= until.position()
                        && o.state() != OperationState.REPEATED)
                .findFirst()
                .orElseThrow(() -> Refusal.input(
                        "from",
                        "The rework was not put in.",
                        "The traveller of " + traveller.mark() + " has no operation " + loop.from()
                                + " before operation " + until.called() + ".",
                        "Choose one of the operations that were done."));
        List<Operation> since = doneSince.inPiece(all, until);
        List<Operation> span = all.stream()
                .filter(o -> o.position() >= from.position() && o.state() != OperationState.REPEATED)
                .filter(o -> o.position() <= until.position() || since.contains(o))
                .toList();
        boolean put = putIn(act, traveller, all, span, since, loop);
        put |= againSinceJoined(act, traveller, loop);
        if (!put) {
            log.event(traveller.chain(), "loop put in before", Map.of("from", from.id(), "source", loop.source()));
        }
    }

    /** The same for the frame that a part was joined into. */
    private boolean againSinceJoined(Act act, Traveller part, Loop loop) {
        Optional<Traveller> whole = doneSince.whole(part);
        if (whole.isEmpty()) {
            return false;
        }
        List<Operation> ofWhole =
                operations.findByTravellerIdOrderByPosition(whole.get().id());
        List<Operation> joined = doneSince.sinceJoined(ofWhole);
        if (joined.isEmpty()) {
            ofWhole.stream().filter(o -> o.state() == OperationState.WAITING).forEach(this::readAgain);
            return false;
        }
        whole.get().requireOpen("reworked");
        return putIn(act, whole.get(), ofWhole, joined, joined, loop);
    }

    /** What waits is done anyway, and what is still valid stays; both keep their place in the order of the route. */
    private boolean putIn(
            Act act, Traveller traveller, List<Operation> all, List<Operation> span, List<Operation> since, Loop loop) {
        Predicate<Operation> again = o -> o.state() != OperationState.WAITING
                && !(since.contains(o) && loop.stillValid().contains(o.id()));
        List<Operation> over = span.stream().filter(again).toList();
        if (over.isEmpty()) {
            return false;
        }
        List<Operation> placed = new ArrayList<>(span);
        while (placed.get(placed.size() - 1).state() == OperationState.WAITING) {
            placed.remove(placed.size() - 1);
        }
        int after = placed.get(placed.size() - 1).position();
        List<Operation> toCome = all.stream()
                .filter(o -> o.state() == OperationState.WAITING
                        && o.position() > over.get(0).position())
                .toList();
        List<Operation> ever = operations.ofSamePiece(travellers.ofSamePiece(traveller.id()));
        over.forEach(o -> requireLimit(ever, o, traveller, loop.beyondLimit()));
        all.stream().filter(o -> o.position() > after).forEach(o -> o.moveDown(placed.size() * Operation.SPACING));
        for (FrameClock clock : clocks.findByTravellerIdOrderById(traveller.id())) {
            if (over.stream().anyMatch(o -> o.code().equals(clock.startedBy()))) {
                clock.startOver();
            } else if (over.stream().anyMatch(o -> clock.gates(o.code()))) {
                clock.judgeAgain();
            }
        }
        toCome.forEach(this::readAgain);
        for (int i = 0; i < placed.size(); i++) {
            Operation old = placed.get(i);
            int place = after + (i + 1) * Operation.SPACING;
            if (!over.contains(old)) {
                old.moveDown(place - old.position());
                continue;
            }
            old.doneOver(loop.source());
            int number = 1
                    + all.stream()
                            .filter(o -> o.code().equals(old.code()))
                            .mapToInt(Operation::loop)
                            .max()
                            .orElse(0);
            copyContent(old, operations.save(old.again(place, number)));
        }
        operations.flush();
        over.forEach(o -> progress.coldSetAgain(traveller, o));
        holds.openOn(traveller.serial()).stream()
                .filter(h -> !h.source().equals(loop.source())
                        && over.stream().anyMatch(o -> Long.valueOf(o.id()).equals(h.operationId())))
                .forEach(Hold::reachOn);
        progress.takeUpAgain(act, traveller);
        progress.advance(act, traveller);
        log.event(
                traveller.chain(),
                "loop put in",
                Map.of(
                        "part", traveller.part(),
                        "from", over.get(0).id(),
                        "until", over.get(over.size() - 1).id(),
                        "source", loop.source(),
                        "beyondLimit", loop.beyondLimit(),
                        "stillValid",
                                since.stream()
                                        .map(Operation::id)
                                        .filter(loop.stillValid()::contains)
                                        .toList()));
        return true;
    }

    /** What was read before its operation began, under a hold, was read of the piece as it was before the loop. */
    private void readAgain(Operation toCome) {
        characteristics.findByOperationIdOrderByPosition(toCome.id()).stream()
                .filter(c -> c.state() != CharacteristicState.OPEN)
                .forEach(Characteristic::readAgain);
    }

    /** Loops count for the piece, whatever revision they were made under. */
    private static void requireLimit(List<Operation> ever, Operation operation, Traveller traveller, boolean beyond) {
        Integer limit = operation.repeatLimit();
        long loops = ever.stream()
                .filter(o -> o.code().equals(operation.code()) && o.loop() > 0)
                .count();
        if (limit != null && loops >= limit && !beyond) {
            throw Refusal.state(
                    "Operation " + operation.code() + " of " + traveller.mark() + " is not done over once more.",
                    "The route allows " + limit + " loops of it and it has had " + loops + ".",
                    "QA lead and owner together may decide on more, or scrap the part.");
        }
    }

    private void copyContent(Operation old, Operation fresh) {
        steps.findByOperationIdOrderByPosition(old.id()).forEach(s -> steps.save(s.again(fresh.id())));
        characteristics
                .findByOperationIdOrderByPosition(old.id())
                .forEach(c -> characteristics.save(c.again(fresh.id())));
    }

    /**
     * Does the operations since a clock's start once more, after the clock's window has closed. A worker may, as long as
     * none of them is one that cannot be undone; otherwise the QA lead decides.
     */
    @Transactional
    public void redoForClock(Act act, long operationId, String clockCode) {
        bench.onOperation(act, "redo for clock " + clockCode, operationId, (traveller, operation) -> {
            crewed.worker(act.by(), "Doing operations again");
            FrameClock clock = clocks.findByTravellerIdOrderById(traveller.id()).stream()
                    .filter(c -> c.code().equals(clockCode))
                    .findFirst()
                    .orElseThrow(() -> Bench.noSuch("clock"));
            if (clock.kind() != ClockKind.WINDOW || !clock.closedAt(act.at()) || !clock.gates(operation.code())) {
                throw Refusal.state(
                        "Nothing is done again.",
                        "The window " + clock.name() + " of " + traveller.mark() + " does not keep operation "
                                + operation.called() + " from beginning.",
                        "Go on with the operation at hand.");
            }
            operation.requireAt("put back", OperationState.WAITING, OperationState.IN_WORK);
            if (!windowWork.mattersTo(operation)) {
                throw Refusal.state(
                        "Nothing is done again.",
                        "The work of operation " + operation.called() + " of " + traveller.mark()
                                + " has begun, and was in time when it began.",
                        "Go on with the operation at hand.");
            }
            List<Operation> all = operations.findByTravellerIdOrderByPosition(traveller.id());
            Operation last = all.stream()
                    .filter(o -> o.position() < operation.position() && o.state() == OperationState.DONE)
                    .reduce((a, b) -> b)
                    .orElseThrow(() -> Bench.noSuch("operation done before"));
            boolean undoable = all.stream()
                    .filter(o -> o.state() == OperationState.DONE)
                    .dropWhile(o -> !o.code().equals(clock.startedBy()))
                    .noneMatch(this::irreversible);
            if (!undoable) {
                crewed.holding(act.by(), Role.QA_LEAD, "Doing again operations that cannot be undone");
            }
            repeat(act, new Loop(clock.startedBy(), last.id(), "clock " + clock.code(), false, Set.of()));
        });
    }

    private boolean irreversible(Operation operation) {
        return operation.irreversible()
                || steps.findByOperationIdOrderByPosition(operation.id()).stream()
                        .anyMatch(Step::irreversible);
    }

    /**
     * Scraps a frame or a part, inside an act that is open. What was done to the frame with the part in it is no
     * evidence for the part that is made in its place: it is done over, unless it is said to be valid still.
     *
     * @param beyondLimit true if QA lead and owner agreed to more loops than the route allows
     * @param stillValid operations done since the frame was joined that are said to be valid with another part too
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void scrap(Act act, long travellerId, String source, boolean beyondLimit, Set<Long> stillValid) {
        Traveller traveller = travellers.findById(travellerId).orElseThrow(() -> Bench.noSuch("traveller"));
        if (traveller.state() == TravellerState.SCRAPPED) {
            return;
        }
        traveller.scrap(source);
        travellers.findByParentIdOrderById(travellerId).stream()
                .filter(child -> child.state().open())
                .forEach(child -> child.scrap(source));
        progress.tellOrder(act, traveller);
        if (!traveller.frame()) {
            events.publishEvent(new PieceGone(act, travellerId, traveller.serial(), traveller.part(), Set.of()));
        }
        log.event(traveller.chain(), "scrapped", Map.of("part", traveller.part(), "source", source));
        againSinceJoined(act, traveller, new Loop("", 0, source, beyondLimit, stillValid));
    }

    /** Makes a scrapped part anew, on the route it was released with. By the QA lead. */
    @Transactional
    public long makeAnew(Act act, long travellerId) {
        Traveller asked = travellers.findById(travellerId).orElseThrow(() -> Bench.noSuch("traveller"));
        if (!log.opens(act, "make part anew", "traveller:" + travellerId, asked.chain())) {
            return travellers.findBySerialOrderById(asked.serial()).stream()
                    .filter(t -> t.part().equals(asked.part()))
                    .reduce(asked, (older, newer) -> newer)
                    .id();
        }
        crewed.holding(act.by(), Role.QA_LEAD, "Making " + asked.mark() + " anew");
        if (asked.state() != TravellerState.SCRAPPED || asked.frame()) {
            throw Refusal.state(
                    asked.mark() + " is not made anew.",
                    asked.frame()
                            ? "It is a whole frame."
                            : "It is " + asked.state().word() + ".",
                    asked.frame() ? "Enter a new order for a new frame." : "Only a scrapped part is made anew.");
        }
        Traveller whole = travellers.findById(asked.parentId()).orElseThrow();
        if (!whole.state().open()) {
            throw Refusal.state(
                    asked.mark() + " is not made anew.",
                    "Its frame, revision " + whole.letter() + ", is "
                            + whole.state().word() + ".",
                    "Open the frame again; a newer revision has a part of its own.");
        }
        boolean replaced = travellers.findByParentIdOrderById(asked.parentId()).stream()
                .anyMatch(t -> t.part().equals(asked.part()) && t.copyNumber() > asked.copyNumber());
        if (replaced) {
            throw Refusal.stale(asked.mark() + " is not made anew.", "It was before.", "Open the frame again.");
        }
        Traveller fresh = travellers.save(asked.anew(act.at()));
        for (Operation old : operations.findByTravellerIdOrderByPosition(travellerId)) {
            if (old.loop() == 0) {
                copyContent(old, operations.save(old.again(fresh.id(), old.position(), 0)));
            }
        }
        clocks.findByTravellerIdOrderById(travellerId).forEach(c -> clocks.save(c.planned(fresh.id())));
        operations.flush();
        progress.advance(act, fresh);
        log.event(fresh.chain(), "part made anew", Map.of("part", fresh.part(), "traveller", fresh.id()));
        return fresh.id();
    }
}
