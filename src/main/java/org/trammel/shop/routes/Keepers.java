package org.trammel.shop.routes;

import org.springframework.stereotype.Component;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/** Who keeps the routes: the QA lead, or the named deputy (without one the owner) while no QA lead is here. */
@Component
class Keepers {

    private final Crew crew;
    private final Settings settings;

    Keepers(Crew crew, Settings settings) {
        this.crew = crew;
        this.settings = settings;
    }

    /**
     * Lets a keeper through.
     *
     * @param deed what is not done otherwise, as a sentence
     */
    void require(long personId, String deed) {
        Person person = crew.byId(personId);
        if (!person.active()) {
            throw Refusal.person(deed, person.initials() + " does not work here any more.", "Let the QA lead do it.");
        }
        if (person.is(Role.QA_LEAD)) {
            return;
        }
        if (qaLeadIsHere()) {
            throw Refusal.person(
                    deed,
                    "Routes are kept by the QA lead; " + person.initials() + " is not, and a QA lead is here.",
                    "Call the QA lead.");
        }
        boolean standsIn = crew.deputyOf(Role.QA_LEAD)
                .filter(deputy -> deputy.id() == personId)
                .isPresent();
        if (!standsIn) {
            throw Refusal.person(
                    deed,
                    "No QA lead is here, and " + person.initials() + " is not the one who stands in.",
                    "Call the named deputy of the QA lead, or without one the owner.");
        }
    }

    /** Whether somebody may edit and release, for what a page offers; the verbs check again. */
    boolean allows(long personId) {
        try {
            require(personId, "");
            return true;
        } catch (Refusal notAllowed) {
            return false;
        }
    }

    private boolean qaLeadIsHere() {
        return crew.active().stream()
                .anyMatch(person -> person.is(Role.QA_LEAD) && !crew.away(person.id(), settings.today()));
    }
}
