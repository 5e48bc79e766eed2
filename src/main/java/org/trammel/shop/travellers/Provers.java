package org.trammel.shop.travellers;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Person;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Proof;

/** Who may record what the tick of a step rests on: nobody who may not tick that step, and no apprentice. */
@Component
@Transactional(readOnly = true)
public class Provers {

    private final OperationRepository operations;
    private final StepRepository steps;
    private final Crewed crewed;

    Provers(OperationRepository operations, StepRepository steps, Crewed crewed) {
        this.operations = operations;
        this.steps = steps;
        this.crewed = crewed;
    }

    /**
     * Refuses an apprentice, and whoever does not hold what the steps of the operation ask for that rest on this; where none
     * of them asks for more, what the operation asks for.
     */
    public void require(Act act, long operationId, Proof proof, String deed) {
        Operation operation = operations.findById(operationId).orElseThrow(() -> Bench.noSuch("operation"));
        Person person = crewed.person(act.by());
        if (!person.maySign()) {
            throw Refusal.person(
                    deed,
                    "A step rests on it, and an apprentice ticks and reads, and proves nothing.",
                    "Call a worker who may sign; look together.");
        }
        steps.findByOperationIdOrderByPosition(operationId).stream()
                .filter(step -> step.proof() == proof && step.qualification() != null)
                .map(Step::qualification)
                .findFirst()
                .ifPresentOrElse(
                        own -> crewed.qualified(person, own, operationId, deed, act.at()),
                        () -> crewed.qualified(person, operation.qualification(), operationId, deed, act.at()));
    }
}
