package org.trammel.shop.travellers;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Person;
import org.trammel.shop.records.Refusal;

/** What a tick would be refused for, so that a sheet says it before anybody tries. */
@Service
public class Beforehand {

    private final StepRepository steps;
    private final Crewed crewed;
    private final SecondLook secondLook;
    private final Gate gate;
    private final Clock clock;

    Beforehand(StepRepository steps, Crewed crewed, SecondLook secondLook, Gate gate, Clock clock) {
        this.steps = steps;
        this.crewed = crewed;
        this.secondLook = secondLook;
        this.gate = gate;
        this.clock = clock;
    }

    /**
     * Why somebody may not tick a step, whatever else is recorded of it; empty if they may. Outside any transaction, which
     * a refusal inside it would end.
     */
    public Optional<Refusal> bars(long stepId, long personId) {
        Place place = place(stepId);
        Person person = crewed.person(personId);
        try {
            crewed.mayTick(person, place.step(), place.operation(), clock.instant());
            secondLook.requireApart(place.operation(), place.step(), place.all(), person);
            return Optional.empty();
        } catch (Refusal refused) {
            return Optional.of(refused);
        }
    }

    /** What the tick of a step rests on and is not recorded yet; empty if nothing. */
    @Transactional(readOnly = true)
    public Optional<Refusal> unproven(long stepId) {
        Place place = place(stepId);
        return gate.unproven(place.traveller(), place.operation(), place.step()).stream()
                .findFirst();
    }

    private record Place(Step step, Operation operation, Traveller traveller, List<Step> all) {}

    private Place place(long stepId) {
        List<StepRepository.InItsPlace> all = steps.besides(stepId);
        return all.stream()
                .filter(one -> one.step().id() == stepId)
                .findFirst()
                .map(one -> new Place(
                        one.step(),
                        one.operation(),
                        one.traveller(),
                        all.stream().map(StepRepository.InItsPlace::step).toList()))
                .orElseThrow(() -> Bench.noSuch("step"));
    }
}
