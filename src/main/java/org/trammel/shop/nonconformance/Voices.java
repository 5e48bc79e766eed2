package org.trammel.shop.nonconformance;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Deciders;
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
    private final Deciders deciders;
    private final Settings settings;

    Voices(AgreementRepository agreements, Opening opening, Evidence evidence, Deciders deciders, Settings settings) {
        this.agreements = agreements;
        this.opening = opening;
        this.evidence = evidence;
        this.deciders = deciders;
        this.settings = settings;
    }

    /** Agreements given to the decision that is put forward now. */
    List<Agreement> given(Nonconformance n) {
        return agreements.findByNonconformanceIdOrderById(n.id()).stream()
                .filter(a -> a.decisionNumber() == n.decisionNumber())
                .toList();
    }

    /** The roles still wanted that somebody agrees in. */
    Set<Role> rolesOf(Person person, Nonconformance n) {
        return deciders.rolesOf(person, matter(n));
    }

    /** Whether somebody may decide and would speak for both roles, because nobody else may speak for either. */
    boolean alone(Person person, Nonconformance n) {
        return deciders.alone(person, matter(n));
    }

    boolean allows(Person person, Nonconformance n) {
        return deciders.allows(person, matter(n));
    }

    private Deciders.Matter matter(Nonconformance n) {
        return new Deciders.Matter(
                opening.causers(n),
                n.decision() == null ? Set.of() : required(n),
                given(n).stream()
                        .map(a -> new Deciders.Said(a.personId(), a.agreedAs()))
                        .toList());
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
        Person person =
                deciders.require(act.by(), matter(n), deed, "operation " + n.faultCode() + ", the one at fault");
        if (person.id() == n.openedBy() && evidence.tookPart(n.operationId()).contains(person.id())) {
            throw Refusal.person(
                    deed,
                    person.name() + " opened " + n.number() + " and took part in operation " + n.operationCode()
                            + ", where it was found.",
                    "Somebody who took no part in it decides.");
        }
        return person;
    }
}
