package org.trammel.shop.travellers;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;
import org.trammel.shop.orders.OrderState;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.routes.ClockKind;
import org.trammel.shop.settings.Settings;

/** Moves a frame on when the last thing an operation waited for has come, whichever thing that was. */
@Component
class Progress {

    private final TravellerRepository travellers;
    private final OperationRepository operations;
    private final StepRepository steps;
    private final CharacteristicRepository characteristics;
    private final FrameClockRepository clocks;
    private final Gate gate;
    private final WindowWork windowWork;
    private final ActLog log;
    private final Orders orders;
    private final Settings settings;
    private final ApplicationEventPublisher events;

    Progress(
            TravellerRepository travellers,
            OperationRepository operations,
            StepRepository steps,
            CharacteristicRepository characteristics,
            FrameClockRepository clocks,
            Gate gate,
            WindowWork windowWork,
            ActLog log,
            Orders orders,
            Settings settings,
            ApplicationEventPublisher events) {
        this.travellers = travellers;
        this.operations = operations;
        this.steps = steps;
        this.characteristics = characteristics;
        this.clocks = clocks;
        this.gate = gate;
        this.windowWork = windowWork;
        this.log = log;
        this.orders = orders;
        this.settings = settings;
        this.events = events;
    }

    /** Begins the operation if it waits; refuses if anything stands in the way. */
    void begin(Act act, Traveller traveller, Operation operation) {
        traveller.requireOpen("worked on");
        if (operation.state() != OperationState.WAITING) {
            return;
        }
        List<FrameClock> running = clocks.findByTravellerIdOrderById(traveller.id());
        Gate.refuseFirst(gate.beginning(traveller, operation, act.at(), running));
        operation.begin(act.at());
        traveller.begin();
        traveller.standsAt(operation);
        meetClocks(running, operation);
        log.event(
                traveller.chain(),
                "operation begun",
                Map.of("operation", operation.id(), "code", operation.code(), "part", traveller.part()));
    }

    /** A waiting time is met when the last operation it guards begins; a window is, where no step can tell the work. */
    private void meetClocks(List<FrameClock> running, Operation operation) {
        for (FrameClock clock : running) {
            if (clock.running()
                    && clock.lastGate(operation.code())
                    && (clock.kind() == ClockKind.WAIT
                            || steps.findByOperationIdOrderByPosition(operation.id())
                                    .isEmpty())) {
                clock.meet();
            }
        }
    }

    /** A step was ticked: says so where it took a qualification, and looks whether the operation is done. */
    void ticked(Act act, Traveller traveller, Operation operation, List<Step> all) {
        if (operation.qualification() != null) {
            events.publishEvent(new SkilledWork(act, traveller.id(), traveller.serial()));
        }
        settle(act, traveller, operation, all);
    }

    /** Finishes the work of the operation if nothing is left to tick or read and no hold covers it. */
    void settle(Act act, Traveller traveller, Operation operation) {
        if (operation.state() != OperationState.IN_WORK) {
            return;
        }
        settle(act, traveller, operation, steps.findByOperationIdOrderByPosition(operation.id()));
    }

    /** The same, for whoever has read the steps of the operation already. */
    void settle(Act act, Traveller traveller, Operation operation, List<Step> all) {
        if (operation.state() != OperationState.IN_WORK) {
            return;
        }
        boolean ticked = all.stream().allMatch(Step::ticked);
        boolean settled = ticked
                && characteristics.findByOperationIdOrderByPosition(operation.id()).stream()
                        .allMatch(c -> c.state().settled() && !c.concessionOver(settings.dayOf(act.at())));
        if (!settled
                || !gate.coveringHolds(traveller, operation).isEmpty()
                || !gate.awaited(traveller, operation).isEmpty()) {
            return;
        }
        operation.workDone(act.at());
        if (operation.state() == OperationState.DONE) {
            done(act, traveller, operation);
        } else {
            log.event(
                    traveller.chain(),
                    "at the point",
                    Map.of("operation", operation.id(), "code", operation.code(), "part", traveller.part()));
        }
    }

    /** The operation is done: its clocks start and the next one is at hand. */
    void done(Act act, Traveller traveller, Operation operation) {
        log.event(
                traveller.chain(),
                "operation done",
                Map.of("operation", operation.id(), "code", operation.code(), "part", traveller.part()));
        closeColdSet(traveller, operation);
        startClocks(act, traveller, operation);
        advance(act, traveller);
    }

    /** What could have been cold-set at this operation is conforming: nobody waits for that window any more. */
    private void closeColdSet(Traveller traveller, Operation operation) {
        Set<String> windows = coldSetWindows(operation);
        if (!windows.isEmpty()) {
            operations.findByTravellerIdOrderByPosition(traveller.id()).stream()
                    .filter(o -> o.id() != operation.id() && !o.state().past())
                    .map(this::coldSetWindows)
                    .forEach(windows::removeAll);
            clocks.findByTravellerIdOrderById(traveller.id()).stream()
                    .filter(c -> c.running() && c.gates().isEmpty() && windows.contains(c.code()))
                    .forEach(FrameClock::meet);
        }
    }

    /** An operation is open again: what is read at it may be cold-set while the window it names has not closed. */
    void coldSetAgain(Traveller traveller, Operation operation) {
        Set<String> windows = coldSetWindows(operation);
        clocks.findByTravellerIdOrderById(traveller.id()).stream()
                .filter(c -> c.gates().isEmpty() && windows.contains(c.code()))
                .forEach(FrameClock::judgeAgain);
    }

    private Set<String> coldSetWindows(Operation operation) {
        return characteristics.findByOperationIdOrderByPosition(operation.id()).stream()
                .map(Characteristic::coldSetClock)
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
    }

    private void startClocks(Act act, Traveller traveller, Operation operation) {
        List<FrameClock> started = clocks.findByTravellerIdOrderById(traveller.id()).stream()
                .filter(c -> c.startedBy().equals(operation.code()))
                .toList();
        if (started.isEmpty()) {
            return;
        }
        List<String> byStep = steps.findByOperationIdOrderByPosition(operation.id()).stream()
                .map(Step::startsClock)
                .filter(Objects::nonNull)
                .toList();
        for (FrameClock clock : started) {
            if (!byStep.contains(clock.code())) {
                start(act, traveller, clock, null);
            }
        }
    }

    /**
     * Starts a clock by an event at the device's time, as far as it can be believed. Where the work it gates has begun
     * already, because its start was only recorded anew, nothing waits for it.
     */
    void start(Act act, Traveller traveller, FrameClock clock, @Nullable Long stepId) {
        if (nothingWaitsFor(clock, traveller)) {
            return;
        }
        Instant earliest = EventTime.earliest(act);
        clock.start(earliest, act.at(), stepId);
        tell(traveller, clock);
    }

    /** Starts a clock by what was done at that time, before the traveller had it. */
    void startSince(Instant then, Traveller traveller, FrameClock clock) {
        if (!nothingWaitsFor(clock, traveller)) {
            clock.start(then, then, null);
            tell(traveller, clock);
        }
    }

    private void tell(Traveller traveller, FrameClock clock) {
        log.event(
                traveller.chain(),
                "clock started",
                Map.of(
                        "clock",
                        clock.code(),
                        "from",
                        clock.startedAt().toString(),
                        "ends",
                        clock.endsAt().toString()));
    }

    /** Takes a traveller up again after its last operation was done, if that is where it stood. */
    void takeUpAgain(Act act, Traveller traveller) {
        if (traveller.state() == TravellerState.FINISHED) {
            traveller.takeUpAgain();
            log.event(traveller.chain(), "traveller taken up again", Map.of("part", traveller.part()));
            tellOrder(act, traveller);
        }
    }

    /** An order is ready to ship while its frame and every part of it are, and in work again when one is not. */
    void tellOrder(Act act, Traveller traveller) {
        Traveller whole = traveller.parentId() == null
                ? traveller
                : travellers.findById(traveller.parentId()).orElseThrow();
        if (whole.orderId() == null) {
            return;
        }
        boolean ready = whole.state() == TravellerState.FINISHED
                && travellers.partsInForce(whole.id()).stream()
                        .allMatch(part -> part.state() == TravellerState.FINISHED);
        OrderState state = orders.byId(whole.orderId()).state();
        if (ready && state == OrderState.IN_WORK) {
            orders.finished(act, whole.orderId());
        } else if (!ready && state == OrderState.READY_TO_SHIP) {
            orders.reopened(act, whole.orderId());
        }
    }

    private boolean nothingWaitsFor(FrameClock clock, Traveller traveller) {
        List<Operation> gated = clock.gates().isEmpty()
                ? List.of()
                : operations.findByTravellerIdOrderByPosition(traveller.id()).stream()
                        .filter(o -> clock.gates(o.code()) && o.state() != OperationState.REPEATED)
                        .toList();
        return !gated.isEmpty() && gated.stream().noneMatch(windowWork::mattersTo);
    }

    /** Stands the traveller at its first operation that is not past; without one it is finished. */
    void advance(Act act, Traveller traveller) {
        if (!standsAtFirstOpen(traveller)) {
            traveller.finish(act.at());
            log.event(traveller.chain(), "traveller finished", Map.of("part", traveller.part()));
            tellOrder(act, traveller);
            events.publishEvent(new TravellerFinished(act, traveller.id(), traveller.serial(), traveller.part()));
        }
    }

    /** Stands the traveller at its first operation that is not past; false if there is none. */
    boolean standsAtFirstOpen(Traveller traveller) {
        Operation first = operations.findByTravellerIdOrderByPosition(traveller.id()).stream()
                .filter(o -> !o.state().past())
                .findFirst()
                .orElse(null);
        traveller.standsAt(first);
        return first != null;
    }
}
