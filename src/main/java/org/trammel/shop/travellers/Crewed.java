package org.trammel.shop.travellers;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Standing;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/** Who may do what at a station: the questions every verb on a frame asks about a person. */
@Component
class Crewed {

    private final Crew crew;
    private final ConfirmationOverrideRepository overrides;
    private final Settings settings;

    Crewed(Crew crew, ConfirmationOverrideRepository overrides, Settings settings) {
        this.crew = crew;
        this.overrides = overrides;
        this.settings = settings;
    }

    Person person(long id) {
        return crew.byId(id);
    }

    /** A person who may tick, read, note and stop; a reader may not. */
    Person worker(long id, String deed) {
        Person person = crew.byId(id);
        if (!person.mayWork()) {
            throw Refusal.person(
                    deed + " is not open to " + person.name() + ".",
                    person.active() ? "An auditor reads and changes nothing." : "This person has left the shop.",
                    "Somebody who works here signs on and does it.");
        }
        return person;
    }

    /** A worker who may also sign: an apprentice may not. */
    Person signing(long id, String deed) {
        Person person = worker(id, deed);
        if (!person.maySign()) {
            throw Refusal.person(
                    deed + " is not open to " + person.name() + ".",
                    "An apprentice may tick and read, and may not sign.",
                    "Call a worker who took no part in it.");
        }
        return person;
    }

    /** Somebody who holds the role, or deputises for it today. */
    Person holding(long id, Role role, String deed) {
        Person person = signing(id, deed);
        if (!person.is(role)) {
            throw Refusal.person(
                    deed + " is not open to " + person.name() + ".",
                    "It is for the " + role.word() + " or a named deputy.",
                    "Call the " + role.word() + ".");
        }
        return person;
    }

    /** Whether somebody stands in for the QA lead where the QA lead took part in the matter. */
    boolean standsInForQaLead(Person person, Set<Long> tookPart) {
        return crew.standsInForQaLead(person.id(), tookPart);
    }

    /**
     * Lets somebody through who is qualified for work at an operation, or whose lapsed confirmation the QA lead
     * overrode for it.
     */
    void qualified(Person person, @Nullable String qualification, long operationId, String deed, Instant at) {
        if (qualification == null) {
            return;
        }
        Standing standing = crew.standing(person.id(), qualification, settings.dayOf(at));
        if (standing.valid()) {
            return;
        }
        if (standing.state() == Standing.State.CONFIRMATION_LAPSED) {
            if (overrides.existsByOperationIdAndPersonIdAndQualification(operationId, person.id(), qualification)) {
                return;
            }
            throw Refusal.person(
                    deed,
                    "The six-month confirmation of " + qualification + " held by " + person.initials() + " ran out on "
                            + standing.until() + ".",
                    "Let somebody qualified do it. The QA lead, unless it is their own, may let this operation of this"
                            + " frame be done, with a reason that stays on its record.");
        }
        crew.requireQualified(person.id(), qualification, settings.dayOf(at), deed);
    }

    /** Whoever ticks a step is qualified for it; a second person who looks, only for what the step itself asks for. */
    void mayTick(Person person, Step step, Operation operation, Instant at) {
        qualified(
                person,
                step.qualification() == null && !step.secondPerson() ? operation.qualification() : step.qualification(),
                operation.id(),
                "Step " + step.position() + " of operation " + operation.called() + " was not ticked.",
                at);
    }

    /** Whoever takes work up again must be able to do what comes next in it. */
    void goingOn(Act act, Operation operation, List<Step> all) {
        Person person = worker(act.by(), "Taking work up again");
        Step next = all.stream().filter(s -> !s.ticked()).findFirst().orElse(null);
        String own = next == null ? null : next.qualification();
        if (own == null && next != null && next.secondPerson()) {
            return;
        }
        String deed = "Operation " + operation.called() + " was not taken up again.";
        qualified(person, own == null ? operation.qualification() : own, operation.id(), deed, act.at());
    }
}
