package org.trammel.shop.nonconformance;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Evidence;

/** Who may speak on a nonconformance, in which roles, and whose agreement its decision wants. */
@Component
class Voices {

    private final AgreementRepository agreements;
    private final Opening opening;
    private final Evidence evidence;
    private final Crew crew;
    private final Settings settings;

    Voices(AgreementRepository agreements, Opening opening, Evidence evidence, Crew crew, Settings settings) {
        this.agreements = agreements;
        this.opening = opening;
        this.evidence = evidence;
        this.crew = crew;
        this.settings = settings;
    }

    /** Agreements given to the decision that is put forward now. */
    List<Agreement> given(Nonconformance n) {
        return agreements.findByNonconformanceIdOrderById(n.id()).stream()
                .filter(a -> a.decisionNumber() == n.decisionNumber())
                .toList();
    }

    /**
     * The roles still wanted that somebody agrees in. Where two roles must agree, one person speaks for both only if
     * nobody else is here who could speak for either.
     */
    Set<Role> rolesOf(Person person, Nonconformance n) {
        List<Agreement> given = given(n);
        if (given.stream().anyMatch(a -> a.personId() == person.id())) {
            return Set.of();
        }
        Set<Role> mine = EnumSet.noneOf(Role.class);
        required(n).stream().filter(role -> holds(person, role, n)).forEach(mine::add);
        given.forEach(a -> mine.remove(a.agreedAs()));
        if (mine.size() > 1) {
            mine.stream().filter(role -> another(person, role, n)).findFirst().ifPresent(mine::remove);
        }
        return mine;
    }

    /** Whether somebody else is here who took no part and could speak in this role. */
    private boolean another(Person person, Role role, Nonconformance n) {
        Set<Long> causers = opening.causers(n);
        Set<Long> standIns = role == Role.QA_LEAD ? crew.standInsForQaLead(causers) : Set.of();
        return crew.here().stream()
                .filter(p -> p.id() != person.id() && p.maySign() && !causers.contains(p.id()))
                .anyMatch(p -> p.is(role) || standIns.contains(p.id()));
    }

    /** Whether somebody may decide and would speak for both roles, because nobody else may speak for either. */
    boolean alone(Person person, Nonconformance n) {
        return allows(person, n)
                && Stream.of(Role.QA_LEAD, Role.OWNER)
                        .allMatch(role -> holds(person, role, n) && !another(person, role, n));
    }

    boolean allows(Person person, Nonconformance n) {
        return person.maySign()
                && !opening.causers(n).contains(person.id())
                && (person.is(Role.OWNER) || holds(person, Role.QA_LEAD, n));
    }

    /** Roles that must agree to the decision put forward. */
    Set<Role> required(Nonconformance n) {
        Decision decision = n.decision();
        Set<Role> roles = new LinkedHashSet<>(decision.agree());
        if (decision == Decision.SCRAP
                        && cost(n.hours(), n.materialCost()).compareTo(settings.number("scrap.owner.cost")) > 0
                || n.beyondLimit()) {
            roles.add(Role.OWNER);
        }
        return roles;
    }

    private BigDecimal cost(@Nullable BigDecimal hours, @Nullable BigDecimal material) {
        BigDecimal work = hours == null ? BigDecimal.ZERO : hours.multiply(settings.number("cost.hour"));
        return work.add(material == null ? BigDecimal.ZERO : material);
    }

    /** What a decision costs, as a sentence goes on with it. */
    String costWords(Proposal proposal) {
        if (proposal.hours() == null && proposal.materialCost() == null) {
            return "no cost is entered with it";
        }
        return "it costs "
                + cost(proposal.hours(), proposal.materialCost())
                        .stripTrailingZeros()
                        .toPlainString()
                + " " + settings.currency().getCurrencyCode();
    }

    /** The QA lead, the owner, or who stands in for the QA lead; never who took part in the operation at fault. */
    Person mayDecide(Act act, Nonconformance n, String deed) {
        Person person = crew.byId(act.by());
        Set<Long> causers = opening.causers(n);
        if (causers.contains(person.id())) {
            throw Refusal.person(
                    deed,
                    person.name() + " took part in operation " + n.faultCode() + ", the one at fault.",
                    "The QA lead's named deputy, or else the owner, who took no part, decides.");
        }
        if (person.id() == n.openedBy() && evidence.tookPart(n.operationId()).contains(person.id())) {
            throw Refusal.person(
                    deed,
                    person.name() + " opened " + n.number() + " and took part in operation " + n.operationCode()
                            + ", where it was found.",
                    "Somebody who took no part in it decides.");
        }
        if (!person.maySign() || !holds(person, Role.QA_LEAD, n) && !person.is(Role.OWNER)) {
            throw Refusal.person(
                    deed, "It is for the QA lead and the owner.", "Call them; the hold stays until they decide.");
        }
        return person;
    }

    private boolean holds(Person person, Role role, Nonconformance n) {
        return person.is(role) || role == Role.QA_LEAD && crew.standsInForQaLead(person.id(), opening.causers(n));
    }
}
