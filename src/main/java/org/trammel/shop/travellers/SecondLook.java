package org.trammel.shop.travellers;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Person;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Signer;

/** Steps that a second person ticks: whoever looks did none of the work, and does none of it afterwards. */
@Component
class SecondLook {

    private final StepRepository steps;
    private final Doers doers;
    private final Crewed crewed;

    SecondLook(StepRepository steps, Doers doers, Crewed crewed) {
        this.steps = steps;
        this.doers = doers;
        this.crewed = crewed;
    }

    /** Refuses whoever worked where a second person is to look, and whoever looked where they would work. */
    void requireApart(Operation operation, Step step, List<Step> all, Person person) {
        String what = "Step " + step.position() + ", " + step.text() + ", was not ticked.";
        if (step.secondPerson()) {
            if (doers.barredFrom(operation.id(), Signer.SECOND).contains(person.id())) {
                throw Refusal.person(
                        what,
                        "A second person looks here, and " + person.name() + " did work of operation "
                                + operation.called() + ".",
                        "Call somebody who did none of it; they sign on and tick.");
            }
            return;
        }
        all.stream()
                .filter(other -> other.secondPerson() && Objects.equals(other.tickedBy(), person.id()))
                .findFirst()
                .ifPresent(looked -> {
                    throw Refusal.person(
                            what,
                            person.name() + " ticked step " + looked.position() + ", " + looked.text()
                                    + ", as the second person, who does none of the work.",
                            "Let somebody else do it, or have step " + looked.position()
                                    + " taken back and looked at by another.");
                });
    }

    /** Refuses while a step stands that was looked at by somebody who measured or recorded work there since. */
    void requireStands(Operation operation, String deed) {
        List<Step> looked = steps.findByOperationIdOrderByPosition(operation.id()).stream()
                .filter(step -> step.secondPerson() && step.ticked())
                .toList();
        if (looked.isEmpty()) {
            return;
        }
        Set<Long> worked = doers.barredFrom(operation.id(), Signer.SECOND);
        looked.stream()
                .filter(step -> worked.contains(step.tickedBy()))
                .findFirst()
                .ifPresent(step -> {
                    throw Refusal.state(
                            deed + " is not done.",
                            "Step " + step.position() + ", " + step.text() + ", was looked at by "
                                    + crewed.person(step.tickedBy()).name() + ", who did work of it.",
                            "Have the tick taken back, and let a second person look.");
                });
    }
}
