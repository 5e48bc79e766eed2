package org.trammel.shop.travellers;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
    private final Progress progress;
    private final Crewed crewed;
    private final ActLog log;

    Rework(
            Bench bench,
            TravellerRepository travellers,
            OperationRepository operations,
            StepRepository steps,
            CharacteristicRepository characteristics,
            FrameClockRepository clocks,
            HoldRepository holds,
            Progress progress,
            Crewed crewed,
            ActLog log) {
        this.bench = bench;
        this.travellers = travellers;
        this.operations = operations;
        this.steps = steps;
        this.characteristics = characteristics;
        this.clocks = clocks;
        this.holds = holds;
        this.progress = progress;
        this.crewed = crewed;
        this.log = log;
    }

    /**
     * Puts a loop in, inside an act that is open: the operations from one to another are done again. The loop follows
     * the last of them; the first of it is at hand.
     *
     * @param fromCode code of the first operation to do again
     * @param untilOperationId the last one; usually where the fault was found
     * @param source the nonconformance that asks for it
     * @param beyondLimit true if QA lead and owner agreed to more loops than the route allows
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void repeat(Act act, String fromCode, long untilOperationId, String source, boolean beyondLimit) {
        Operation found = operations.findById(untilOperationId).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller traveller = travellers.findById(found.travellerId()).orElseThrow();
        traveller.requireOpen("reworked");
        List<Operation> all = operations.findByTravellerIdOrderByPosition(traveller.id());
        Operation until = inForce(all, found);
        Operation from = all.stream()
                .filter(o -> o.code().equals(fromCode)
                        && o.position() <= until.position()
                        && o.state() != OperationState.REPEATED)
                .findFirst()
                .orElseThrow(() -> Refusal.input(
                        "from",
                        "The rework was not put in.",
                        "The traveller of " + traveller.mark() + " has no operation " + fromCode + " before operation "
                                + until.called() + ".",
                        "Choose one of the operations that were done."));
        List<Operation> span = done(all, from, until);
        if (span.isEmpty()) {
            log.event(traveller.chain(), "loop put in before", Map.of("from", from.id(), "source", source));
            return;
        }
        int after = span.get(span.size() - 1).position();
        List<Operation> ever = operations.ofSamePiece(travellers.ofSamePiece(traveller.id()));
        span.forEach(o -> requireLimit(ever, o, traveller, beyondLimit));
        all.stream().filter(o -> o.position() > after).forEach(o -> o.moveDown(span.size() * Operation.SPACING));
        clocks.findByTravellerIdOrderById(traveller.id()).stream()
                .filter(c -> span.stream().anyMatch(o -> o.code().equals(c.startedBy())))
                .forEach(FrameClock::startOver);
        for (int i = 0; i < span.size(); i++) {
            Operation old = span.get(i);
            old.doneOver(source);
            int loop = 1
                    + all.stream()
                            .filter(o -> o.code().equals(old.code()))
                            .mapToInt(Operation::loop)
                            .max()
                            .orElse(0);
            copyContent(old, operations.save(old.again(after + (i + 1) * Operation.SPACING, loop)));
        }
        operations.flush();
        holds.openOn(traveller.serial()).stream()
                .filter(h -> !h.source().equals(source)
                        && span.stream().anyMatch(o -> Long.valueOf(o.id()).equals(h.operationId())))
                .forEach(Hold::reachOn);
        progress.takeUpAgain(act, traveller);
        progress.advance(act, traveller);
        log.event(
                traveller.chain(),
                "loop put in",
                Map.of(
                        "part", traveller.part(),
                        "from", from.id(),
                        "until", until.id(),
                        "source", source,
                        "beyondLimit", beyondLimit));
    }

    /** Where the operation a fault was found at is done over already, its newest loop. */
    private static Operation inForce(List<Operation> all, Operation found) {
        return found.state() != OperationState.REPEATED
                ? found
                : all.stream()
                        .filter(o -> o.code().equals(found.code()) && o.state() != OperationState.REPEATED)
                        .findFirst()
                        .orElse(found);
    }

    /** The operations of a span that have begun; those that wait are done anyway. */
    private static List<Operation> done(List<Operation> all, Operation from, Operation until) {
        List<Operation> span = new ArrayList<>(all.stream()
                .filter(o -> o.position() >= from.position() && o.position() <= until.position())
                .filter(o -> o.state() != OperationState.REPEATED)
                .toList());
        while (!span.isEmpty() && span.get(span.size() - 1).state() == OperationState.WAITING) {
            span.remove(span.size() - 1);
        }
        return span;
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
            if (clock.kind() != ClockKind.WINDOW || !clock.closedAt(act.at())) {
                throw Refusal.state(
                        "Nothing is done again.",
                        "The window " + clock.name() + " of " + traveller.mark() + " is not closed.",
                        "Go on with the operation at hand.");
            }
            operation.requireAt("put back", OperationState.WAITING);
            List<Operation> all = operations.findByTravellerIdOrderByPosition(traveller.id());
            Operation last = all.stream()
                    .filter(o -> o.position() < operation.position() && o.state() == OperationState.DONE)
                    .reduce((a, b) -> b)
                    .orElseThrow(() -> Bench.noSuch("operation done before"));
            boolean undoable = all.stream()
                    .filter(o -> o.position() <= last.position() && o.state() == OperationState.DONE)
                    .dropWhile(o -> !o.code().equals(clock.startedBy()))
                    .noneMatch(this::irreversible);
            if (!undoable) {
                crewed.holding(act.by(), Role.QA_LEAD, "Doing again operations that cannot be undone");
            }
            repeat(act, clock.startedBy(), last.id(), "clock " + clock.code(), false);
        });
    }

    private boolean irreversible(Operation operation) {
        return operation.irreversible()
                || steps.findByOperationIdOrderByPosition(operation.id()).stream()
                        .anyMatch(Step::irreversible);
    }

    /** Scraps a frame or a part, inside an act that is open. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void scrap(Act act, long travellerId, String source) {
        Traveller traveller = travellers.findById(travellerId).orElseThrow(() -> Bench.noSuch("traveller"));
        if (traveller.state() == TravellerState.SCRAPPED) {
            return;
        }
        traveller.scrap(source);
        travellers.findByParentIdOrderById(travellerId).stream()
                .filter(child -> child.state().open())
                .forEach(child -> child.scrap(source));
        if (!traveller.frame()) {
            progress.tellOrder(act, traveller);
        }
        log.event(traveller.chain(), "scrapped", Map.of("part", traveller.part(), "source", source));
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
