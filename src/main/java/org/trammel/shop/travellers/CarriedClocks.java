package org.trammel.shop.travellers;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** The clocks of a frame when a newer revision takes its traveller's place. */
@Component
class CarriedClocks {

    private final OperationRepository operations;
    private final FrameClockRepository clocks;

    CarriedClocks(OperationRepository operations, FrameClockRepository clocks) {
        this.operations = operations;
        this.clocks = clocks;
    }

    /**
     * Goes on with every clock whose start is kept; one whose start is done anew, or is to be, starts anew with it. What
     * is still to be done meets its windows itself.
     *
     * @param said verdict by id of the finished operation of the old traveller
     */
    void goOn(Traveller from, Traveller to, Map<Long, Revising.Said> said) {
        Set<String> kept = operations.findByTravellerIdOrderByPosition(from.id()).stream()
                .filter(o -> o.state() == OperationState.DONE
                        && said.get(o.id()).verdict().keeps())
                .map(Operation::code)
                .collect(Collectors.toSet());
        Map<String, FrameClock> old = new HashMap<>();
        clocks.findByTravellerIdOrderById(from.id()).forEach(c -> old.put(c.code(), c));
        List<String> toDo = operations.findByTravellerIdOrderByPosition(to.id()).stream()
                .filter(o -> !o.state().past())
                .map(Operation::code)
                .toList();
        for (FrameClock clock : clocks.findByTravellerIdOrderById(to.id())) {
            FrameClock was = old.get(clock.code());
            if (was != null && was.state() != ClockState.PLANNED && kept.contains(was.startedBy())) {
                clock.goOnFrom(was);
            }
            if (toDo.stream().anyMatch(clock::gates)) {
                clock.judgeAgain();
            }
        }
    }
}
