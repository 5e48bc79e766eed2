package org.trammel.shop.travellers;

import java.time.Instant;
import java.util.List;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.ClockKind;

/**
 * By which tick of an operation a window is met. A window is about the work, not about the preparation: it is met by the
 * first step that cannot be undone, and every tick before that one is judged against it. Where the route marks no such
 * step, nobody can tell which of them is the work, and the window is met when all are ticked. What follows the work, a
 * cure or a long run of an oven, is no matter of the window.
 */
@Component
class WindowWork {

    private final FrameClockRepository clocks;
    private final StepRepository steps;
    private final CharacteristicRepository characteristics;
    private final Gate gate;

    WindowWork(FrameClockRepository clocks, StepRepository steps, CharacteristicRepository characteristics, Gate gate) {
        this.clocks = clocks;
        this.steps = steps;
        this.characteristics = characteristics;
        this.gate = gate;
    }

    /** Whether the work of an operation is begun, by its steps. */
    static boolean begun(List<Step> all) {
        boolean marked = all.stream().anyMatch(Step::irreversible);
        return marked
                ? all.stream().anyMatch(s -> s.irreversible() && s.ticked())
                : all.stream().allMatch(Step::ticked);
    }

    /** The same, of what a sheet shows. */
    static boolean begunOn(List<FrameSheet.StepLine> all) {
        boolean marked = all.stream().anyMatch(FrameSheet.StepLine::irreversible);
        return marked
                ? all.stream().anyMatch(s -> s.irreversible() && s.ticked())
                : all.stream().allMatch(FrameSheet.StepLine::ticked);
    }

    /** Whether a window still matters to an operation: it waits, or what was done at it can all be undone. */
    boolean mattersTo(Operation operation) {
        return switch (operation.state()) {
            case WAITING -> true;
            case IN_WORK, STOPPED -> !begun(steps.findByOperationIdOrderByPosition(operation.id()));
            case AWAY, AT_POINT, DONE, REPEATED -> false;
        };
    }

    /**
     * Refuses what is done to an operation in work whose window has closed before the work began.
     *
     * @return the windows that the operation is to meet; empty if its work is begun
     */
    List<FrameClock> toMeet(Traveller traveller, Operation operation, List<Step> all, Instant now) {
        if (!all.isEmpty() && begun(all)) {
            return List.of();
        }
        List<FrameClock> running = clocks.findByTravellerIdOrderById(traveller.id());
        Gate.refuseFirst(gate.closed(traveller, operation, now, running));
        return running.stream()
                .filter(c -> c.kind() == ClockKind.WINDOW && c.running() && c.lastGate(operation.code()))
                .toList();
    }

    /**
     * What was read is not conforming and may still be cold-set: no further step of its operation is done, least of all
     * the one that says the frame was set, before it is set and read again.
     */
    void requireSet(Traveller traveller, Operation operation, String deed, Instant now) {
        List<Characteristic> bent = characteristics.findByOperationIdOrderByPosition(operation.id()).stream()
                .filter(c -> c.state() == CharacteristicState.NOT_CONFORMING && c.coldSetClock() != null)
                .toList();
        if (bent.isEmpty()) {
            return;
        }
        List<String> open = clocks.findByTravellerIdOrderById(traveller.id()).stream()
                .filter(c -> c.running() && !c.closedAt(now))
                .map(FrameClock::code)
                .toList();
        bent.stream().filter(c -> open.contains(c.coldSetClock())).findFirst().ifPresent(c -> {
            throw Refusal.state(
                    deed,
                    c.code() + " " + c.name() + " is not conforming and its cold-set window is open.",
                    "Let an aligner set it, or the QA lead decide; when it is read again, tick.");
        });
    }

    /** After a tick: the windows are met if the work is begun by it. */
    static void meet(List<FrameClock> windows, List<Step> all) {
        if (begun(all)) {
            windows.forEach(FrameClock::meet);
        }
    }

    /** The tick that met a window was taken back before the frame went on: the work is still to be done inside it. */
    void judgeAgain(Traveller traveller, Operation operation, Step takenBack) {
        if (takenBack.irreversible() && !begun(steps.findByOperationIdOrderByPosition(operation.id()))) {
            clocks.findByTravellerIdOrderById(traveller.id()).stream()
                    .filter(c -> c.kind() == ClockKind.WINDOW && c.lastGate(operation.code()))
                    .forEach(FrameClock::judgeAgain);
        }
    }
}
