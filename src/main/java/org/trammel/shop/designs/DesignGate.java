package org.trammel.shop.designs;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signatures;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.settings.Settings;

/** The gate before the shop: the customer's approval, one answer a check, and two signatures. */
@Service
@Transactional
public class DesignGate {

    private static final int NAME = 200;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.UK);

    private final GateEntryRepository entries;
    private final GateSignatureRepository signed;
    private final GateStand stand;
    private final RevisionAct opening;
    private final RouteBook routes;
    private final Crew crew;
    private final Signatures signatures;
    private final Settings settings;
    private final ApplicationEventPublisher events;

    DesignGate(
            GateEntryRepository entries,
            GateSignatureRepository signed,
            GateStand stand,
            RevisionAct opening,
            RouteBook routes,
            Crew crew,
            Signatures signatures,
            Settings settings,
            ApplicationEventPublisher events) {
        this.entries = entries;
        this.signed = signed;
        this.stand = stand;
        this.opening = opening;
        this.routes = routes;
        this.crew = crew;
        this.signatures = signatures;
        this.settings = settings;
        this.events = events;
    }

    /** Enters the customer's approval of the revision that was sent last, for the very file that was sent. */
    public RevisionSummary approve(Act act, long revisionId, Approval approval) {
        Optional<DesignRevision> opened = opening.open(act, DesignVerb.APPROVE, revisionId);
        if (opened.isEmpty()) {
            return opening.load(revisionId).summary();
        }
        DesignRevision revision = opened.get();
        String deed = DesignVerb.APPROVE.undone(revision.letter());
        if (!approval.letter().strip().equalsIgnoreCase(revision.letter())) {
            throw Refusal.input(
                    "letter",
                    deed,
                    "The approval names revision " + approval.letter().strip() + "; the one that was sent is "
                            + revision.letter() + ".",
                    "Ask the customer to approve revision " + revision.letter() + ".");
        }
        String approver = TypedText.line("approver", "Who approved", deed, approval.approver(), NAME);
        day(act, deed, revision, approval.on());
        long name = opening.keep(revision, "approver-named", approver);
        revision.approve(act, approval.file(), approval.on(), name);
        opening.event(
                revision,
                "design-approved",
                Map.of("file", approval.file(), "on", approval.on().toString()));
        events.publishEvent(new DesignEvent.Approved(act, revision.design().id(), revision.id()));
        return revision.summary();
    }

    private void day(Act act, String deed, DesignRevision revision, LocalDate on) {
        LocalDate sent =
                settings.dayOf(Optional.ofNullable(revision.summary().sentAt()).orElseThrow());
        LocalDate today = settings.dayOf(act.at());
        if (on.isAfter(today) || on.isBefore(sent)) {
            throw Refusal.input(
                    "on",
                    deed,
                    "The approval is dated " + day(on) + "; the drawing was sent on " + day(sent) + " and today is "
                            + day(today) + ".",
                    "Enter the day the customer approved.");
        }
    }

    private static String day(LocalDate day) {
        return DAY.format(day);
    }

    /** The checks whose computed figures are not met: only a decision in writing lets the frame pass them. */
    @Transactional(readOnly = true)
    public Set<GateCheck> notMet(long revisionId) {
        return stand.figures(opening.load(revisionId).sheet()).entrySet().stream()
                .filter(one -> one.getValue().red())
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(GateCheck.class)));
    }

    /** The checks that nobody says are met, since something is missing for a figure. */
    @Transactional(readOnly = true)
    public Set<GateCheck> notComputed(long revisionId) {
        return stand.figures(opening.load(revisionId).sheet()).entrySet().stream()
                .filter(one -> one.getKey().isUncomputed(one.getValue()))
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(GateCheck.class)));
    }

    /** The checks that the gate asks of a revision. */
    @Transactional(readOnly = true)
    public Set<GateCheck> asked(long revisionId) {
        DesignSheet sheet = opening.load(revisionId).sheet();
        return EnumSet.allOf(GateCheck.class).stream()
                .filter(check -> check.concerns(sheet))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(GateCheck.class)));
    }

    /**
     * Answers one check of the gate, for its inputs as they are now. An answer that changes after somebody signed takes
     * the signatures back: they were given for the answers before.
     *
     * @param typed the decision in words; needed where the frame does not simply meet the rule
     * @return how many signatures it took back
     */
    public int answer(Act act, long revisionId, GateCheck check, GateAnswer answer, @Nullable String typed) {
        Optional<DesignRevision> opened = opening.open(act, DesignVerb.ANSWER, revisionId);
        if (opened.isEmpty()) {
            return 0;
        }
        DesignRevision revision = opened.get();
        String field = "check." + check.name();
        String deed = check.label() + " of revision " + revision.letter() + " was not answered.";
        String decision = answer == GateAnswer.MEETS
                ? TypedText.wordsOrNone(field, "The remark", deed, typed)
                : TypedText.words(
                        field,
                        answer == GateAnswer.DECIDED ? "The decision" : "Why it does not concern the frame",
                        deed,
                        typed);
        if (check == GateCheck.TEST_FAMILY && answer == GateAnswer.MEETS && revision.testFamily() == null) {
            throw Refusal.input(
                    field,
                    deed,
                    "The revision names no test family that covers the frame.",
                    "Name the family in the draft, or write the decision for a frame outside all families.");
        }
        if (!check.concerns(revision.sheet())) {
            throw Refusal.input(
                    "check",
                    deed,
                    "Revision " + revision.letter() + " has no swing arm, so the gate does not ask for it.",
                    "Answer the checks that the design sheet shows.");
        }
        CheckFigures now = stand.figures(revision.sheet(), check);
        if (now.red() && answer != GateAnswer.DECIDED) {
            throw Refusal.input(
                    field,
                    deed,
                    "Not met: " + now.whyRed() + ".",
                    "Change the inputs in a draft, or decide it in writing for this frame.");
        }
        if (check.isUncomputed(now) && answer != GateAnswer.DECIDED) {
            throw Refusal.input(
                    field,
                    deed,
                    "It was not computed: " + String.join(" ", now.lacking()),
                    "Enter that in a draft, or decide it in writing for this frame.");
        }
        if (!check.takes(now).contains(answer)) {
            throw Refusal.input(
                    field,
                    deed,
                    check.label() + " concerns every frame; what is computed of this one stands beside it.",
                    "Say that it is met, or decide it in writing for this frame.");
        }
        GateEntry entry =
                entries.findByRevisionIdAndCheck(revisionId, check).orElseGet(() -> new GateEntry(revisionId, check));
        entry.answer(answer, decision == null ? null : opening.keep(revision, "check-reasoned", decision), now, act);
        entries.save(entry);
        List<GateSignature> lapsed = signed.findByRevisionIdOrderById(revisionId);
        signed.deleteAll(lapsed);
        revision.unchecked();
        opening.event(
                revision,
                "check-answered",
                Map.of(
                        "check",
                        check.name(),
                        "answer",
                        answer.name(),
                        "inputs",
                        now.givenOn(),
                        "figures",
                        now.figures().stream()
                                .map(CheckFigure::withoutTheRider)
                                .map(CheckFigure::words)
                                .toList(),
                        "signaturesLapsed",
                        lapsed.size()));
        return lapsed.size();
    }

    /**
     * Signs the gate with the signer's own PIN. The second of the two signatures makes the revision checked.
     *
     * @param capacity owner or QA lead; a person who is both signs once, for one of them
     */
    public RevisionSummary sign(Act act, long revisionId, long signerId, Role capacity, String pin) {
        return sign(act, revisionId, signerId, capacity, () -> signatures.sign(signerId, pin, act.device()));
    }

    /** Signs the gate for a signer whose presence the caller has checked at this moment. */
    public RevisionSummary sign(Act act, long revisionId, long signerId, Role capacity) {
        return sign(act, revisionId, signerId, capacity, () -> {});
    }

    private RevisionSummary sign(Act act, long revisionId, long signerId, Role capacity, Runnable presence) {
        Optional<DesignRevision> opened = opening.open(act, DesignVerb.SIGN, revisionId);
        if (opened.isEmpty()) {
            return opening.load(revisionId).summary();
        }
        DesignRevision revision = opened.get();
        String deed = DesignVerb.SIGN.undone(revision.letter());
        if (capacity != Role.OWNER && capacity != Role.QA_LEAD) {
            throw Refusal.input(
                    "capacity", deed, "The gate is signed by the owner and the QA lead.", "Choose one of the two.");
        }
        Person signer = crew.require(signerId, deed, capacity);
        List<GateSignature> before = signed.findByRevisionIdOrderById(revisionId);
        refuseSecondTime(deed, before, signer, capacity);
        stand.refuseUnlessAnswered(deed, revision);
        refuseLacking(deed, revision);
        presence.run();
        signed.save(new GateSignature(revisionId, capacity, signerId, act.at()));
        opening.event(revision, "gate-signed", Map.of("signer", signerId, "capacity", capacity.name()));
        if (!before.isEmpty()) {
            revision.checked(act);
            opening.event(revision, "design-checked", Map.of());
        }
        return revision.summary();
    }

    private static void refuseSecondTime(String deed, List<GateSignature> before, Person signer, Role capacity) {
        for (GateSignature one : before) {
            if (one.personId() == signer.id()) {
                throw Refusal.person(
                        deed,
                        signer.initials() + " signed it already; the gate wants two different people.",
                        "Let the other one sign.");
            }
            if (one.capacity() == capacity) {
                throw Refusal.state(
                        deed,
                        "It is signed already as " + word(capacity) + ".",
                        "Let the " + word(capacity == Role.OWNER ? Role.QA_LEAD : Role.OWNER) + " sign.");
            }
        }
    }

    private static String word(Role capacity) {
        return capacity == Role.OWNER ? "owner" : "QA lead";
    }

    private void refuseLacking(String deed, DesignRevision revision) {
        Long route = revision.routeRevisionId();
        if (route == null) {
            throw Refusal.state(
                    deed,
                    "The revision names no route, so it has no characteristic list.",
                    "Begin the next revision and choose the route.");
        }
        CharacteristicList list = CharacteristicList.of(routes.revision(route), revision.nominals());
        list.refuseIfLacking(deed);
        list.refuseIfMoved(deed);
    }
}
