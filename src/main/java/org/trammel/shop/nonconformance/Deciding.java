package org.trammel.shop.nonconformance;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.orders.CostKind;
import org.trammel.shop.orders.Orders;
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
    private final Evidence evidence;
    private final Rework rework;
    private final DoneSince doneSince;
    private final Holds holds;
    private final Travellers travellers;
    private final Orders orders;
    private final Settings settings;
    private final Voices voices;
    private final LooksAgain looks;
    private final ObjectProvider<RecordedFaults> records;
    private final ActLog log;

    Deciding(
            NonconformanceRepository all,
            AgreementRepository agreements,
            Wordings wordings,
            Lines lines,
            Evidence evidence,
            Rework rework,
            DoneSince doneSince,
            Holds holds,
            Travellers travellers,
            Orders orders,
            Settings settings,
            Voices voices,
            LooksAgain looks,
            ObjectProvider<RecordedFaults> records,
            ActLog log) {
        this.all = all;
        this.agreements = agreements;
        this.wordings = wordings;
        this.lines = lines;
        this.evidence = evidence;
        this.rework = rework;
        this.doneSince = doneSince;
        this.holds = holds;
        this.travellers = travellers;
        this.orders = orders;
        this.settings = settings;
        this.voices = voices;
        this.looks = looks;
        this.records = records;
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
        voices.mayDecide(act, n, "The operation at fault was not changed.");
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
        return propose(act, id, proposal, true);
    }

    /** The same, but scrap, which nothing takes back, is asked about with its cost until it is confirmed. */
    @Transactional
    public boolean propose(Act act, long id, Proposal proposal, boolean confirmed) {
        if (!opens(act, "propose decision", id)) {
            return find(id).state() == NonconformanceState.DECIDED;
        }
        Nonconformance n = find(id);
        n.requireUndecided("decided as " + proposal.decision().word());
        Person person = voices.mayDecide(act, n, "The decision was not put forward.");
        ProposalCheck.requireComplete(n, proposal, settings.today());
        ProposalCheck.requireDoneSince(n, proposal, doneSince.since(n.operationId()));
        if (proposal.decision() == Decision.CLEARED) {
            requireConforming(n, "The decision was not put forward.");
        }
        if (proposal.decision() == Decision.CONCESSION) {
            requireMayStay(n, "The decision was not put forward.");
        }
        if (proposal.decision() == Decision.SCRAP && !confirmed) {
            throw Refusal.ask(
                    "decision",
                    "The decision was not put forward yet.",
                    travellers.head(n.travellerId()).mark() + " would be scrapped, which nothing takes back; "
                            + voices.costWords(proposal) + ".",
                    "Confirm it if it is meant.");
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
        Person person = voices.mayDecide(act, n, "The decision was not agreed to.");
        if (voices.rolesOf(person, n).isEmpty()) {
            throw Refusal.person(
                    "The decision was not agreed to.",
                    "It wants no agreement that " + person.name() + " could still give.",
                    "Call whoever must still agree.");
        }
        return agreeAs(act, n, person);
    }

    private boolean agreeAs(Act act, Nonconformance n, Person person) {
        Set<Role> mine = voices.rolesOf(person, n);
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
        Set<Role> agreed = voices.given(n).stream().map(Agreement::agreedAs).collect(Collectors.toSet());
        if (!agreed.containsAll(voices.required(n))) {
            return false;
        }
        carryOut(act, n);
        return true;
    }

    /** Roles that must agree to the decision put forward. */
    @Transactional(readOnly = true)
    public Set<Role> mustAgree(long id) {
        Nonconformance n = find(id);
        return n.decision() == null ? Set.of() : voices.required(n);
    }

    /** Whether somebody may decide it now; for what a page offers. The verbs check again. */
    @Transactional(readOnly = true)
    public boolean allows(long id, Person person) {
        Nonconformance n = find(id);
        return voices.allows(person, n);
    }

    /** Whether somebody could still agree to the decision put forward; for what a page offers. */
    @Transactional(readOnly = true)
    public boolean agrees(long id, Person person) {
        Nonconformance n = find(id);
        return n.state() == NonconformanceState.PROPOSED
                && voices.allows(person, n)
                && !voices.rolesOf(person, n).isEmpty();
    }

    /** Whether somebody who decides it agrees as QA lead and as owner, because nobody else may; for what a page says. */
    @Transactional(readOnly = true)
    public boolean alone(long id, Person person) {
        return voices.alone(person, find(id));
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

    /** What conforms to nothing, such as a crack, stays by nobody's concession. */
    private void requireMayStay(Nonconformance n, String what) {
        records.stream()
                .flatMap(one -> one.neverStays(n.serial(), n.number()).stream())
                .findFirst()
                .ifPresent(why -> {
                    throw Refusal.state(what, why, "Decide on rework, repair or scrap.");
                });
    }

    /** A word alone clears no reading and no record: a newer one has to say that it conforms. */
    private void requireConforming(Nonconformance n, String what) {
        records.stream()
                .flatMap(one -> one.notCleared(n.serial(), n.number()).stream())
                .findFirst()
                .ifPresent(why -> {
                    throw Refusal.state(
                            what,
                            why,
                            "Have it recorded again; it is cleared once the newest record conforms, or decide otherwise.");
                });
        if (n.characteristicId() == null) {
            looks.requireLooked(n, what);
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
                requireMayStay(n, n.number() + " was not conceded.");
                if (n.characteristicId() != null) {
                    evidence.concede(act, n.characteristicId(), n.number(), n.expiresOn());
                }
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
        Person person = voices.mayDecide(act, n, n.number() + " was not closed.");
        String found = TypedText.words("words", "What was found", n.number() + " was not closed.", words, 1000);
        doneSince.outstanding(n.serial(), n.number()).ifPresent(why -> {
            throw Refusal.state(n.number() + " was not closed.", why, "Close it once what was decided is carried out.");
        });
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
