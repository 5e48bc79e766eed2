package org.trammel.shop.travellers;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.Formats;

/**
 * What stands in the way of an operation. Every way into an operation and out of it asks here, whatever tablet, screen
 * or program sends the act.
 */
@Component
class Gate {

    private final OperationRepository operations;
    private final TravellerRepository travellers;
    private final HoldRepository holds;
    private final HoldFreedRepository freed;
    private final FrameClockRepository clocks;
    private final Formats formats;
    private final ConsignmentRepository consignments;
    private final ObjectProvider<Awaited> awaited;

    Gate(
            OperationRepository operations,
            TravellerRepository travellers,
            HoldRepository holds,
            HoldFreedRepository freed,
            FrameClockRepository clocks,
            Formats formats,
            ConsignmentRepository consignments,
            ObjectProvider<Awaited> awaited) {
        this.operations = operations;
        this.travellers = travellers;
        this.holds = holds;
        this.freed = freed;
        this.clocks = clocks;
        this.formats = formats;
        this.consignments = consignments;
        this.awaited = awaited;
    }

    /** Everything that keeps the operation from beginning; empty if it may begin. */
    List<Refusal> beginning(Traveller traveller, Operation operation, Instant now) {
        return beginning(traveller, operation, now, clocks.findByTravellerIdOrderById(traveller.id()));
    }

    /** The same, for whoever has read the clocks of the traveller already. */
    List<Refusal> beginning(Traveller traveller, Operation operation, Instant now, List<FrameClock> running) {
        return beginning(traveller, operation, now, holds.openOn(traveller.serial()), running);
    }

    /** The same, for whoever has read the open holds of the frame and its clocks already. */
    List<Refusal> beginning(
            Traveller traveller, Operation operation, Instant now, List<Hold> open, List<FrameClock> running) {
        List<Refusal> found = new ArrayList<>(earlier(traveller, operation));
        found.addAll(held(traveller, operation, "begin", open));
        found.addAll(clocked(traveller, operation, now, running));
        return found;
    }

    /**
     * The first operation before this one that is not done, or was opened again since; and, from the one on that joins
     * the frame, every part that is not finished.
     */
    List<Refusal> earlier(Traveller traveller, Operation operation) {
        List<Refusal> found = new ArrayList<>(earlierInPiece(traveller, operation));
        if (operation.sinceJoin()) {
            found.addAll(unjoined(traveller, operation));
        }
        return found;
    }

    private List<Refusal> earlierInPiece(Traveller traveller, Operation operation) {
        if (traveller.currentOperationId() != null && traveller.currentOperationId() == operation.id()) {
            return List.of();
        }
        return operations.findByTravellerIdOrderByPosition(traveller.id()).stream()
                .filter(o -> o.position() < operation.position() && !o.state().past())
                .limit(1)
                .map(o -> Refusal.state(
                        cannotGoOn(traveller, operation),
                        "Operation " + o.called() + ", " + o.name() + ", comes first and is "
                                + o.state().word() + ".",
                        "Finish " + o.called() + ", then come back to " + operation.called() + "."))
                .toList();
    }

    /** What other modules know to be outstanding before the gate may be passed. */
    List<Refusal> awaited(Traveller traveller, Operation operation) {
        Awaited.AtItsGate at = atItsGate(traveller, operation);
        return awaited.orderedStream()
                .map(one -> one.outstanding(at))
                .flatMap(Optional::stream)
                .toList();
    }

    private Awaited.AtItsGate atItsGate(Traveller traveller, Operation operation) {
        return Awaited.AtItsGate.of(
                traveller,
                operation,
                operation.outside() && consignments.existsByOperationIdAndBackAtIsNotNull(operation.id()));
    }

    /** Nothing is done to a frame whose clocks stand still: it lies where nobody works on it. */
    private List<Refusal> standing(Traveller traveller, List<FrameClock> running) {
        return running.stream()
                .filter(FrameClock::stands)
                .limit(1)
                .map(clock -> Refusal.state(
                        "Nothing is done to " + traveller.mark() + ".",
                        "It lies in the cold store since " + formats.moment(clock.stoppedAt()) + ", and its clock "
                                + clock.name() + " stands still.",
                        "Take it out on the page of the cold store; the clock runs on from then."))
                .toList();
    }

    /** Refuses a step, where it or its operation cannot be undone, under a hold or before what it waits for has come. */
    void requireOpenTo(Traveller traveller, Operation operation, Step step, List<Step> all, long by) {
        if (step.irreversible() || operation.irreversible()) {
            refuseFirst(heldForGood(traveller, operation, "go on"));
        }
        Awaited.AtItsGate at = atItsGate(traveller, operation);
        refuseFirst(unproven(at, step));
        if (step.irreversible()) {
            Awaited.NoWayBack no = new Awaited.NoWayBack(
                    step.id(),
                    step.text(),
                    by,
                    all.stream().noneMatch(other -> other.irreversible() && other.ticked()),
                    step.startsClock());
            refuseFirst(awaited.orderedStream()
                    .map(one -> one.before(at, no))
                    .flatMap(Optional::stream)
                    .toList());
        }
    }

    /** What the tick of a step rests on and is not recorded yet. */
    List<Refusal> unproven(Traveller traveller, Operation operation, Step step) {
        return step.proof() == null ? List.of() : unproven(atItsGate(traveller, operation), step);
    }

    private List<Refusal> unproven(Awaited.AtItsGate at, Step step) {
        if (step.proof() == null) {
            return List.of();
        }
        Awaited.ProvenStep proven = new Awaited.ProvenStep(step.text(), step.proof());
        return awaited.orderedStream()
                .map(one -> one.proof(at, proven))
                .flatMap(Optional::stream)
                .toList();
    }

    /** Open holds that cover the operation and were not freed for it. */
    List<Refusal> held(Traveller traveller, Operation operation, String verb) {
        return held(traveller, operation, verb, holds.openOn(traveller.serial()));
    }

    List<Refusal> held(Traveller traveller, Operation operation, String verb, List<Hold> open) {
        return refusals(traveller, operation, verb, covering(traveller, operation, open));
    }

    /** Every open hold that covers the operation, freed or not: what cannot be undone, and the gate itself, waits for all. */
    List<Refusal> heldForGood(Traveller traveller, Operation operation, String verb) {
        return refusals(
                traveller,
                operation,
                verb,
                holds.openOn(traveller.serial()).stream()
                        .filter(h -> h.covers(traveller, operation))
                        .toList());
    }

    private static List<Refusal> refusals(Traveller traveller, Operation operation, String verb, List<Hold> covering) {
        return covering.stream()
                .map(h -> Refusal.state(
                        "Operation " + operation.called() + " of " + traveller.mark() + " cannot " + verb + ".",
                        "The frame is on hold, " + h.reason().word() + ": " + h.words(),
                        "Leave it where it is. The hold is lifted by "
                                + h.reason().liftedBy(h.source()) + "."))
                .toList();
    }

    List<Hold> coveringHolds(Traveller traveller, Operation operation) {
        return covering(traveller, operation, holds.openOn(traveller.serial()));
    }

    private List<Hold> covering(Traveller traveller, Operation operation, List<Hold> open) {
        List<Hold> covering =
                open.stream().filter(h -> h.covers(traveller, operation)).toList();
        if (covering.isEmpty()) {
            return covering;
        }
        List<Long> let =
                freed
                        .findByHoldIdInAndOperationId(
                                covering.stream().map(Hold::id).toList(), operation.id())
                        .stream()
                        .map(HoldFreed::holdId)
                        .toList();
        return covering.stream().filter(h -> !let.contains(h.id())).toList();
    }

    private List<Refusal> clocked(Traveller traveller, Operation operation, Instant now, List<FrameClock> running) {
        List<Refusal> found = new ArrayList<>(closed(traveller, operation, now, running));
        running.stream()
                .filter(clock -> clock.gates(operation.code()) && clock.waitingAt(now))
                .map(clock -> Refusal.state(
                        cannotGoOn(traveller, operation),
                        "The waiting time " + clock.name() + " ends at " + formats.moment(clock.endsAt())
                                + "; it lasts " + spoken(clock.minutes()) + " after operation " + clock.startedBy()
                                + ".",
                        "Come back when it is over."))
                .forEach(found::add);
        return found;
    }

    /**
     * Closed windows that keep the operation from beginning or, before its work is begun, from going on; and clocks that
     * stand still, whatever they gate.
     */
    List<Refusal> closed(Traveller traveller, Operation operation, Instant now, List<FrameClock> running) {
        List<Refusal> found = new ArrayList<>(standing(traveller, running));
        running.stream()
                .filter(clock -> clock.gates(operation.code()) && clock.closedAt(now))
                .map(clock -> Refusal.state(
                        cannotGoOn(traveller, operation),
                        "The window of the clock " + clock.name() + " closed at " + formats.moment(clock.endsAt())
                                + "; it is open for " + spoken(clock.minutes()) + " after operation "
                                + clock.startedBy() + ".",
                        "Do operation " + clock.startedBy()
                                + " again, which starts the clock anew, or call the QA lead."))
                .forEach(found::add);
        return found;
    }

    private List<Refusal> unjoined(Traveller traveller, Operation operation) {
        return travellers.partsInForce(traveller.id()).stream()
                .filter(child -> child.state() != TravellerState.FINISHED)
                .map(child -> Refusal.state(
                        cannotGoOn(traveller, operation),
                        "Its part " + child.mark() + " is " + child.state().word()
                                + (child.currentCode() == null ? "." : ", at operation " + child.currentCode() + "."),
                        "Finish the part first; the frame is joined, and goes on, when all its parts are ready."))
                .toList();
    }

    private static String cannotGoOn(Traveller traveller, Operation operation) {
        return "Operation " + operation.called() + " of " + traveller.mark() + " cannot "
                + (operation.state() == OperationState.WAITING ? "begin." : "go on.");
    }

    private static String spoken(long minutes) {
        return minutes % 60 == 0 ? minutes / 60 + " h" : minutes + " min";
    }

    static void refuseFirst(List<Refusal> found) {
        if (!found.isEmpty()) {
            throw found.get(0);
        }
    }
}
