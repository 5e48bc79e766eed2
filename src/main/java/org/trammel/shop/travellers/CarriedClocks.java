package org.trammel.shop.travellers;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** The clocks of a frame when a newer revision takes its traveller's place. */
@Component
class CarriedClocks {

    private final OperationRepository operations;
    private final StepRepository steps;
    private final FrameClockRepository clocks;
    private final Progress progress;

    CarriedClocks(
            OperationRepository operations, StepRepository steps, FrameClockRepository clocks, Progress progress) {
        this.operations = operations;
        this.steps = steps;
        this.clocks = clocks;
        this.progress = progress;
    }

    /**
     * Goes on with every clock whose start is kept; one whose start is done anew, or is to be, starts anew with it, and
     * one that the older revision did not have starts at the time its start was done. What is still to be done meets its
     * windows itself.
     */
    void goOn(Traveller from, Traveller to) {
        Map<String, FrameClock> old = new HashMap<>();
        clocks.findByTravellerIdOrderById(from.id()).forEach(c -> old.put(c.code(), c));
        List<Operation> fresh = operations.findByTravellerIdOrderByPosition(to.id());
        Map<String, Operation> kept = fresh.stream()
                .filter(o -> o.state() == OperationState.DONE && o.carried())
                .collect(Collectors.toMap(Operation::code, Function.identity()));
        List<String> toDo = fresh.stream()
                .filter(o -> !o.state().past())
                .map(Operation::code)
                .toList();
        for (FrameClock clock : clocks.findByTravellerIdOrderById(to.id())) {
            FrameClock was = old.get(clock.code());
            Operation start = kept.get(clock.startedBy());
            if (start != null && was != null && ran(was) && was.startedBy().equals(clock.startedBy())) {
                clock.goOnFrom(was);
            } else if (start != null && start.finishedAt() != null) {
                progress.startSince(doneAt(start, clock), to, clock);
            }
            if (toDo.stream().anyMatch(clock::gates)) {
                clock.judgeAgain();
            }
        }
        fresh.stream().filter(o -> !o.state().past()).forEach(o -> progress.coldSetAgain(to, o));
    }

    private static boolean ran(FrameClock clock) {
        return clock.state() != ClockState.PLANNED;
    }

    /** When the step that starts the clock was ticked, or the operation was done if no step starts it. */
    private Instant doneAt(Operation start, FrameClock clock) {
        return steps.findByOperationIdOrderByPosition(start.id()).stream()
                .filter(step -> clock.code().equals(step.startsClock()) && step.ticked())
                .findFirst()
                .map(Step::tickedAt)
                .orElse(start.finishedAt());
    }
}
