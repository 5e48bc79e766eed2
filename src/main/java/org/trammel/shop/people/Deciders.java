package org.trammel.shop.people;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Refusal;

/**
 * Who decides a matter and in which roles. Never who took part in it: a named deputy of the QA lead stands in, else the
 * owner.
 */
@Component
public class Deciders {

    /** Whose agreement it takes that something stays as it is although it is not known to conform. */
    public static final List<Role> OF_WHAT_STAYS_AS_IT_IS = List.of(Role.QA_LEAD, Role.OWNER);

    private final Crew crew;

    Deciders(Crew crew) {
        this.crew = crew;
    }

    /** Somebody agreed in a role. */
    public record Said(long personId, Role as) {}

    /**
     * What is to be decided.
     *
     * @param tookPart ids of those who took part in it
     * @param wanted roles whose agreement it wants; empty while no decision is put forward
     * @param given agreements given so far
     */
    public record Matter(Set<Long> tookPart, Set<Role> wanted, List<Said> given) {

        public Matter {
            tookPart = Set.copyOf(tookPart);
            given = List.copyOf(given);
        }

        /** True once everybody agreed whose agreement it wants. */
        public boolean agreed() {
            return given.stream().map(Said::as).toList().containsAll(wanted);
        }

        /** The same matter once somebody agreed in some roles. */
        public Matter with(long personId, Set<Role> roles) {
            return new Matter(
                    tookPart,
                    wanted,
                    Stream.concat(given.stream(), roles.stream().map(role -> new Said(personId, role)))
                            .toList());
        }
    }

    /**
     * The roles still wanted that somebody agrees in. Where two roles must agree, one person speaks for both only if
     * nobody else is here who could speak for either.
     */
    public Set<Role> rolesOf(Person person, Matter matter) {
        if (matter.given().stream().anyMatch(said -> said.personId() == person.id())) {
            return Set.of();
        }
        Set<Role> mine = new LinkedHashSet<>();
        Stream.of(Role.values())
                .filter(role -> matter.wanted().contains(role) && holds(person, role, matter))
                .forEach(mine::add);
        matter.given().forEach(said -> mine.remove(said.as()));
        if (mine.size() > 1) {
            mine.stream()
                    .filter(role -> another(person, role, matter))
                    .findFirst()
                    .ifPresent(mine::remove);
        }
        return mine;
    }

    /** Whether somebody else is here who took no part and could speak in this role. */
    private boolean another(Person person, Role role, Matter matter) {
        Set<Long> standIns = role == Role.QA_LEAD ? crew.standInsForQaLead(matter.tookPart()) : Set.of();
        return crew.here().stream()
                .filter(p -> p.id() != person.id()
                        && p.maySign()
                        && !matter.tookPart().contains(p.id()))
                .anyMatch(p -> p.is(role) || standIns.contains(p.id()));
    }

    /** Whether somebody may decide and would speak for QA lead and owner, because nobody else may speak for either. */
    public boolean alone(Person person, Matter matter) {
        return allows(person, matter)
                && OF_WHAT_STAYS_AS_IT_IS.stream()
                        .allMatch(role -> holds(person, role, matter) && !another(person, role, matter));
    }

    /** Whether somebody may decide; for what a page offers. */
    public boolean allows(Person person, Matter matter) {
        return person.maySign()
                && !matter.tookPart().contains(person.id())
                && (person.is(Role.OWNER) || holds(person, Role.QA_LEAD, matter));
    }

    /** Whether somebody holds a role in a matter, or stands in for the QA lead. */
    public boolean holds(Person person, Role role, Matter matter) {
        return person.is(role) || role == Role.QA_LEAD && crew.standsInForQaLead(person.id(), matter.tookPart());
    }

    /**
     * Lets the QA lead through, the owner, or who stands in for the QA lead; nobody who took part.
     *
     * @param deed what is not done otherwise, as a sentence
     * @param partIn what they took part in, as a sentence goes on with it
     */
    public Person require(long personId, Matter matter, String deed, String partIn) {
        Person person = crew.byId(personId);
        if (matter.tookPart().contains(personId)) {
            throw Refusal.person(
                    deed,
                    person.name() + " took part in " + partIn + ".",
                    "The QA lead's named deputy, or else the owner, who took no part, decides.");
        }
        if (!allows(person, matter)) {
            throw Refusal.person(
                    deed, "It is for the QA lead and the owner.", "Call them; the hold stays until they decide.");
        }
        return person;
    }

    /**
     * The roles somebody agrees in now, once they are let through.
     *
     * @throws Refusal if it wants no agreement that they could still give
     */
    public Set<Role> requireRoles(long personId, Matter matter, String deed, String partIn) {
        Person person = require(personId, matter, deed, partIn);
        Set<Role> mine = rolesOf(person, matter);
        if (mine.isEmpty()) {
            throw Refusal.person(
                    deed,
                    "It wants no agreement that " + person.name() + " could still give.",
                    "Call whoever must still agree.");
        }
        return mine;
    }
}
