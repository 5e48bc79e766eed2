package org.trammel.shop.nonconformance;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.orders.CostKind;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.DoneSince;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Rework;
import org.trammel.shop.travellers.Travellers;

/** Decides nonconformances: who may, who must agree, and what follows. Never who took part in the operation at fault. */
@Service
public class Deciding {

    private final NonconformanceRepository all;
    private final AgreementRepository agreements;
    private final Wordings wordings;
    private final Lines lines;
    private final Opening opening;
    private final Evidence evidence;
    private final Rework rework;
    private final DoneSince doneSince;
    private final Holds holds;
    private final Travellers travellers;
    private final Orders orders;
    private final Crew crew;
    private final Settings settings;
    private final ActLog log;

    Deciding(
            NonconformanceRepository all,
            AgreementRepository agreements,
            Wordings wordings,
            Lines lines,
            Opening opening,
            Evidence evidence,
            Rework rework,
            DoneSince doneSince,
            Holds holds,
            Travellers travellers,
            Orders orders,
            Crew crew,
            Settings settings,
            ActLog log) {
        this.all = all;
        this.agreements = agreements;
        this.wordings = wordings;
        this.lines = lines;
        this.opening = opening;
        this.evidence = evidence;
        this.rework = rework;
        this.doneSince = doneSince;
        this.holds = holds;
        this.travellers = travellers;
        this.orders = orders;
        this.crew = crew;
        this.settings = settings;
        this.log = log;
    }

    /**
     * Names the operation at fault, once it is known better. By those who may decide: whoever took part in the one named
     * so far does not turn the fault to another.
     */
    @Transactional
    public void blame(Act act, long id, String faultCode) {
        if (!opens(act, "name operation at fault", id)) {
            return;
        }
        Nonconformance n = find(id);
        mayDecide(act, n, "The operation at fault was not changed.");
        if (evidence.operationsOf(n.travellerId(), faultCode).isEmpty()) {
            throw Refusal.input(
                    "fault",
                    "The operation at fault was not changed.",
                    "The traveller has no operation " + faultCode + ".",
                    "Choose one of its operations.");
        }
        n.blame(faultCode);
        log.event(chain(n), "operation at fault named", Map.of("nonconformance", id, "fault", faultCode));
    }

    /**
     * Puts a decision forward and agrees to it. It is carried out at once if nobody else must agree.
     *
     * @return true if it is decided now
     */
    @Transactional
    public boolean propose(Act act, long id, Proposal proposal) {
        if (!opens(act, "propose decision", id)) {
            return find(id).state() == NonconformanceState.DECIDED;
        }
        Nonconformance n = find(id);
        n.requireUndecided("decided as " + proposal.decision().word());
        Person person = mayDecide(act, n, "The decision was not put forward.");
        ProposalCheck.requireComplete(n, proposal, settings.today());
        ProposalCheck.requireDoneSince(n, proposal, doneSince.since(n.operationId()));
        if (proposal.decision() == Decision.CLEARED) {
            requireConforming(n, "The decision was not put forward.");
        }
        n.propose(proposal);
        wordings.keep(n, Wording.About.DECISION, proposal.words());
        wordings.keep(n, Wording.About.LIMITS, proposal.limits());
        wordings.keep(n, Wording.About.CUSTOMER, proposal.customerAgreement());
        log.event(
                chain(n),
                "decision put forward",
                Map.of("nonconformance", id, "decision", proposal.decision().name()));
        return agreeAs(act, n, person);
    }

    /**
     * Agrees to the decision put forward.
     *
     * @param decisionNumber which of those ever put forward was read: nobody agrees to another that took its place
     */
    @Transactional
    public boolean agree(Act act, long id, int decisionNumber) {
        if (!opens(act, "agree to decision", id)) {
            return find(id).state() == NonconformanceState.DECIDED;
        }
        Nonconformance n = find(id);
        if (n.state() != NonconformanceState.PROPOSED) {
            throw Refusal.state(
                    "There is nothing to agree to.",
                    n.number() + " is " + n.state().word() + ".",
                    "Open it again to see where it stands.");
        }
        if (decisionNumber != n.decisionNumber()) {
            throw Refusal.stale(
                    "The decision was not agreed to.",
                    "Another was put forward since: " + n.decision().word() + ".",
                    "Open " + n.number() + " again and read it.");
        }
        Person person = mayDecide(act, n, "The decision was not agreed to.");
        if (rolesOf(person, n).isEmpty()) {
            throw Refusal.person(
                    "The decision was not agreed to.",
                    "It wants no agreement that " + person.name() + " could still give.",
                    "Call whoever must still agree.");
        }
        return agreeAs(act, n, person);
    }

    private boolean agreeAs(Act act, Nonconformance n, Person person) {
        Set<Role> mine = rolesOf(person, n);
        mine.forEach(role -> agreements.save(new Agreement(n, person, role, act)));
        agreements.flush();
        log.event(
                chain(n),
                "agreed",
                Map.of(
                        "nonconformance",
                        n.id(),
                        "as",
                        mine.stream().map(Enum::name).toList()));
        Set<Role> agreed = given(n).stream().map(Agreement::agreedAs).collect(Collectors.toSet());
        if (!agreed.containsAll(required(n))) {
            return false;
        }
        carryOut(act, n);
        return true;
    }

    /** Agreements given to the decision that is put forward now. */
    private List<Agreement> given(Nonconformance n) {
        return agreements.findByNonconformanceIdOrderById(n.id()).stream()
                .filter(a -> a.decisionNumber() == n.decisionNumber())
                .toList();
    }

    /**
     * The roles still wanted that somebody agrees in. Where two roles must agree, one person speaks for both only if
     * nobody else is here who could speak for either.
     */
    private Set<Role> rolesOf(Person person, Nonconformance n) {
        List<Agreement> given = given(n);
        if (given.stream().anyMatch(a -> a.personId() == person.id())) {
            return Set.of();
        }
        Set<Role> mine = EnumSet.noneOf(Role.class);
        required(n).stream().filter(role -> holds(person, role, n)).forEach(mine::add);
        given.forEach(a -> mine.remove(a.agreedAs()));
        if (mine.size() > 1) {
            Set<Long> causers = opening.causers(n);
            List<Person> others = crew.here().stream()
                    .filter(p -> p.id() != person.id() && p.maySign() && !causers.contains(p.id()))
                    .toList();
            Set<Long> standIns = crew.standInsForQaLead(causers);
            for (Role role : mine) {
                if (others.stream().anyMatch(p -> p.is(role) || role == Role.QA_LEAD && standIns.contains(p.id()))) {
                    mine.remove(role);
                    break;
                }
            }
        }
        return mine;
    }

    /** Roles that must agree to the decision put forward. */
    @Transactional(readOnly = true)
    public Set<Role> mustAgree(long id) {
        Nonconformance n = find(id);
        return n.decision() == null ? Set.of() : required(n);
    }

    private Set<Role> required(Nonconformance n) {
        Decision decision = n.decision();
        Set<Role> roles = new LinkedHashSet<>(decision.agree());
        BigDecimal cost = cost(n);
        if (decision == Decision.SCRAP && cost.compareTo(settings.number("scrap.owner.cost")) > 0 || n.beyondLimit()) {
            roles.add(Role.OWNER);
        }
        return roles;
    }

    private BigDecimal cost(Nonconformance n) {
        BigDecimal hours = n.hours() == null ? BigDecimal.ZERO : n.hours();
        BigDecimal material = n.materialCost() == null ? BigDecimal.ZERO : n.materialCost();
        return hours.multiply(settings.number("cost.hour")).add(material);
    }

    /** Whether somebody may decide it now; for what a page offers. The verbs check again. */
    @Transactional(readOnly = true)
    public boolean allows(long id, Person person) {
        Nonconformance n = find(id);
        return person.maySign()
                && !opening.causers(n).contains(person.id())
                && (person.is(Role.OWNER) || holds(person, Role.QA_LEAD, n));
    }

    /** The QA lead, the owner, or who stands in for the QA lead; never who took part in the operation at fault. */
    private Person mayDecide(Act act, Nonconformance n, String deed) {
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

    /** What was put forward may have waited for an agreement longer than it may be used. */
    private void requireInTime(Act act, Nonconformance n) {
        LocalDate last = n.expiresOn();
        if (n.decision() == Decision.CONCESSION && last != null && last.isBefore(settings.dayOf(act.at()))) {
            throw Refusal.state(
                    "The concession was not agreed to.",
                    "Its last day, " + last + ", is past.",
                    "Put the decision forward again with a later day.");
        }
    }

    /** A word alone clears no reading: a newer one has to say that it conforms. */
    private void requireConforming(Nonconformance n, String what) {
        if (n.characteristicId() == null) {
            return;
        }
        Evidence.Wanted wanted = evidence.wanted(n.characteristicId());
        if (!wanted.state().settled()) {
            throw Refusal.state(
                    what,
                    wanted.code() + ", " + wanted.name() + ", is "
                            + wanted.state().word() + ".",
                    "Have it read again; it is cleared once the newest reading conforms, or decide otherwise.");
        }
    }

    private void carryOut(Act act, Nonconformance n) {
        requireInTime(act, n);
        n.decided(act.at());
        String words = n.number() + " decided: " + n.decision().word();
        switch (n.decision()) {
            case REWORK, REPAIR, RETURN -> {
                rework.repeat(
                        act,
                        new Rework.Loop(n.fromCode(), n.operationId(), n.number(), n.beyondLimit(), n.stillValid()));
                holds.liftOf(act, n.serial(), n.number(), words);
            }
            case CONCESSION -> {
                evidence.concede(act, n.characteristicId(), n.number(), n.expiresOn());
                holds.liftOf(act, n.serial(), n.number(), words);
            }
            case CLEARED -> {
                requireConforming(n, n.number() + " was not cleared.");
                holds.liftOf(act, n.serial(), n.number(), words);
            }
            case SCRAP -> {
                rework.scrap(act, n.travellerId(), n.number(), n.beyondLimit(), n.stillValid());
                holds.liftOf(act, n.serial(), n.number(), words);
            }
        }
        FrameSheet.Head head = travellers.head(n.travellerId());
        if (head.orderId() != null && (n.hours() != null || n.materialCost() != null)) {
            orders.addCost(act, head.orderId(), CostKind.REWORK, n.hours(), n.materialCost(), words);
        }
        log.event(
                chain(n),
                "decided",
                Map.of("nonconformance", n.id(), "decision", n.decision().name()));
    }

    /** Closes one whose decision was carried out. By the QA lead or owner, who took no part in the fault. */
    @Transactional
    public void close(Act act, long id, String words) {
        if (!opens(act, "close nonconformance", id)) {
            return;
        }
        Nonconformance n = find(id);
        Person person = mayDecide(act, n, n.number() + " was not closed.");
        String found = TypedText.words("words", "What was found", n.number() + " was not closed.", words, 1000);
        n.close(person.id(), act.at());
        wordings.keep(n, Wording.About.CLOSING, found);
        log.event(chain(n), "nonconformance closed", Map.of("nonconformance", id));
    }

    private boolean opens(Act act, String kind, long id) {
        String serial = all.serialOf(id)
                .orElseThrow(() -> Refusal.missing(
                        "Nothing was done.", "There is no such nonconformance.", "Choose one from the list."));
        return log.opens(act, kind, "nonconformance:" + id, Chains.bearing(serial));
    }

    private Nonconformance find(long id) {
        return all.findById(id).orElseThrow();
    }

    private static String chain(Nonconformance n) {
        return Chains.bearing(n.serial());
    }

    /** Every one of a frame. */
    @Transactional(readOnly = true)
    public List<NonconformanceLine> of(String serial) {
        return lines.of(all.findBySerialOrderById(serial));
    }

    @Transactional(readOnly = true)
    public NonconformanceLine byId(long id) {
        return all.findById(id)
                .map(lines::of)
                .orElseThrow(() -> Refusal.missing(
                        "Nothing was opened.", "There is no such nonconformance.", "Choose one from the list."));
    }

    /** What was begun after the operation it was found at; a decision for a loop says which of it stays valid. */
    @Transactional(readOnly = true)
    public List<DoneSince.Done> doneSince(long id) {
        return doneSince.since(byId(id).operationId());
    }
}
