package org.trammel.shop.travellers;

import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.routes.Proof;

/** Steps that are done again because what was found after them shows that they did not do what they are for. */
@Service
public class DoneAgain {

    private final OperationRepository operations;
    private final TravellerRepository travellers;
    private final StepRepository steps;
    private final TickRepository ticks;
    private final FrameClockRepository clocks;
    private final ActLog log;

    DoneAgain(
            OperationRepository operations,
            TravellerRepository travellers,
            StepRepository steps,
            TickRepository ticks,
            FrameClockRepository clocks,
            ActLog log) {
        this.operations = operations;
        this.travellers = travellers;
        this.steps = steps;
        this.ticks = ticks;
        this.clocks = clocks;
        this.log = log;
    }

    /**
     * Takes the ticks back of the steps of the operation at hand that rest on these, with the clocks they started. The act
     * is open already, on the chain of the frame.
     *
     * @param why kept with each tick that is taken back
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void stepsOn(Act act, long operationId, Set<Proof> proofs, String why) {
        Operation operation = operations.findById(operationId).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller traveller = travellers.findById(operation.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        for (Step step : steps.findByOperationIdOrderByPosition(operationId)) {
            if (step.ticked() && step.proof() != null && proofs.contains(step.proof())) {
                step.untick();
                ticks.save(new Tick(step, true, act, null, why));
                log.event(traveller.chain(), "unticked", Map.of("step", step.id(), "operation", operationId));
                clocks.findByTravellerIdOrderById(traveller.id()).stream()
                        .filter(clock -> clock.running() && Objects.equals(clock.startedByStepId(), step.id()))
                        .forEach(FrameClock::takeBack);
            }
        }
    }
}
