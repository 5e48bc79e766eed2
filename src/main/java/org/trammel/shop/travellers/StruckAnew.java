package org.trammel.shop.travellers;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.routes.Proof;

/** A serial that is struck anew is read back anew, wherever it was read: what was read is not there any more. */
@Component
class StruckAnew {

    private final TravellerRepository travellers;
    private final OperationRepository operations;
    private final StepRepository steps;
    private final TickRepository ticks;
    private final OpenAgain openAgain;
    private final ActLog log;

    StruckAnew(
            TravellerRepository travellers,
            OperationRepository operations,
            StepRepository steps,
            TickRepository ticks,
            OpenAgain openAgain,
            ActLog log) {
        this.travellers = travellers;
        this.operations = operations;
        this.steps = steps;
        this.ticks = ticks;
        this.openAgain = openAgain;
        this.log = log;
    }

    /** Takes back every tick that rests on reading the blow before this one; a piece with a mark of its own keeps its own. */
    void readAgain(Act act, Traveller struck) {
        travellers.findBySerialOrderById(struck.serial()).stream()
                .filter(each -> each.state().open())
                .forEach(each -> readAgain(act, struck, each));
    }

    private void readAgain(Act act, Traveller struck, Traveller read) {
        Map<Long, Operation> inForce = operations.findByTravellerIdOrderByPosition(read.id()).stream()
                .filter(operation -> operation.state() != OperationState.REPEATED)
                .collect(Collectors.toMap(Operation::id, operation -> operation));
        List<Step> all = steps.findByOperationIdInOrderByOperationIdAscPositionAsc(inForce.keySet());
        if (read.id() != struck.id() && all.stream().anyMatch(step -> step.proof() == Proof.SERIAL_STRUCK)) {
            return;
        }
        for (Step step : all) {
            if (step.ticked() && step.proof() == Proof.SERIAL_READ) {
                step.untick();
                ticks.save(new Tick(step, true, act, null, "the serial was struck anew since"));
                log.event(read.chain(), "unticked", Map.of("step", step.id(), "operation", step.operationId()));
                Operation operation = inForce.get(step.operationId());
                if (Set.of(OperationState.AT_POINT, OperationState.DONE).contains(operation.state())) {
                    openAgain.open(act, read, operation);
                }
            }
        }
    }
}
