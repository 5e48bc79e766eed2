package org.trammel.shop.inspection;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Deciders;
import org.trammel.shop.people.DecisionPutForward;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.travellers.Holds;

/**
 * What comes of the frames of a re-judgement that were not cleared. One that is not measured again stays as it is only
 * where as many agree as to a concession, and never by the word of who took the readings.
 */
@Service
public class FrameResults {

    private static final String NOT = "The frame was not given its result.";
    private static final int LONGEST = 1000;

    private final RejudgementRepository rejudgements;
    private final RejudgedFrameRepository frames;
    private final FrameDecisionRepository decisions;
    private final FrameAgreementRepository agreements;
    private final InDoubt inDoubt;
    private final RejudgedWords words;
    private final Deciders deciders;
    private final Holds holds;
    private final Crew crew;
    private final ActLog log;

    FrameResults(
            RejudgementRepository rejudgements,
            RejudgedFrameRepository frames,
            FrameDecisionRepository decisions,
            FrameAgreementRepository agreements,
            InDoubt inDoubt,
            RejudgedWords words,
            Deciders deciders,
            Holds holds,
            Crew crew,
            ActLog log) {
        this.rejudgements = rejudgements;
        this.frames = frames;
        this.decisions = decisions;
        this.agreements = agreements;
        this.inDoubt = inDoubt;
        this.words = words;
        this.deciders = deciders;
        this.holds = holds;
        this.crew = crew;
        this.log = log;
    }

    /** A frame whose result is asked for, and who took the readings of it that were in doubt. */
    private record Case(Rejudgement rejudgement, RejudgedFrame frame, List<Reading> doubtful) {

        String chain() {
            return Chains.bearing(frame.serial());
        }

        Deciders.Matter matter(Set<Role> wanted, List<Deciders.Said> given) {
            return new Deciders.Matter(InDoubt.readers(doubtful), wanted, given);
        }

        /** What the readers took part in. */
        String partIn() {
            return "what " + rejudgement.gaugeCode() + " read of it";
        }

        boolean outside() {
            return frame.outcome() == FrameOutcome.CONTACT_OWNER;
        }
    }

    /**
     * Says what came of a frame that was not cleared; its hold is lifted with it. That it is decided without measuring
     * is put forward by this, and comes to be the result once all have agreed who must.
     *
     * @return false if somebody must still agree
     * @throws Refusal while readings of it wait to be measured again, if that is the result
     */
    @Transactional
    public boolean settle(Act act, long id, String serial, FrameSettling said) {
        if (!opens(act, "settle frame of re-judgement", id, serial)) {
            return hasResult(id, serial);
        }
        Case found = find(id, serial, NOT);
        String told = TypedText.words("words", "What was found", NOT, said.words(), LONGEST);
        return switch (said.result()) {
            case MEASURED_AGAIN -> {
                requireMeasured(found);
                requireQaLead(act, found);
                yield settled(act, found, said.result(), keep(found, told));
            }
            case OWNER_CONTACTED -> {
                requireOutside(found);
                requireQaLead(act, found);
                yield settled(act, found, said.result(), keep(found, told));
            }
            case DECIDED -> putForward(act, found, said, told);
        };
    }

    /**
     * Agrees to what was put forward for a frame.
     *
     * @param number which of those ever put forward was read: nobody agrees to another that took its place
     * @return true if the frame has its result now
     */
    @Transactional
    public boolean agree(Act act, long id, String serial, int number) {
        if (!opens(act, "agree to decision on frame of re-judgement", id, serial)) {
            return hasResult(id, serial);
        }
        String not = "The decision was not agreed to.";
        Case found = find(id, serial, not);
        FrameDecision decision = decisions
                .findFirstByRejudgementIdAndSerialOrderByNumberDesc(id, serial)
                .orElseThrow(() -> Refusal.state(
                        "There is nothing to agree to.",
                        "No decision was put forward for " + serial + ".",
                        "Put one forward, or have it measured again."));
        decision.requireNumber(number, not, found.rejudgement().number());
        return agreeTo(act, found, decision, not);
    }

    private boolean opens(Act act, String kind, long id, String serial) {
        return log.opens(act, kind, "rejudgement:" + id + " frame:" + serial, Chains.bearing(serial), Chains.SHOP);
    }

    private boolean hasResult(long id, String serial) {
        return frames.findByRejudgementIdAndSerial(id, serial)
                .filter(frame -> frame.result() != null)
                .isPresent();
    }

    private Case find(long id, String serial, String not) {
        Rejudgement rejudgement = Rejudgement.in(rejudgements, id);
        rejudgement.requireState(RejudgementState.OPEN, "settled");
        RejudgedFrame frame = frames.findByRejudgementIdAndSerial(id, serial)
                .orElseThrow(() -> Refusal.missing(
                        not,
                        serial + " was not measured with " + rejudgement.gaugeCode() + ".",
                        "Choose one of the list."));
        frame.requireWaits(not);
        return new Case(rejudgement, frame, inDoubt.of(id, serial));
    }

    private void requireMeasured(Case found) {
        if (found.outside()) {
            throw Refusal.input(
                    "result",
                    NOT,
                    "The frame has left the shop, so nothing can be read on it here.",
                    "Contact its owner, or say how it was decided.");
        }
        Set<Long> left = inDoubt.left(found.doubtful());
        if (!left.isEmpty()) {
            String codes = found.doubtful().stream()
                    .filter(reading -> left.contains(reading.id()))
                    .map(Reading::characteristicCode)
                    .sorted()
                    .distinct()
                    .collect(Collectors.joining(", "));
            throw Refusal.state(
                    NOT,
                    "Nothing was read yet in the place of " + codes + ".",
                    "Read them again with another gauge: correct the reading on the frame's sheet.");
        }
    }

    private static void requireOutside(Case found) {
        if (!found.outside()) {
            throw Refusal.input(
                    "result",
                    NOT,
                    "The frame was in the shop when it was judged again.",
                    "Measure it again, or say how it was decided.");
        }
    }

    private void requireQaLead(Act act, Case found) {
        Deciders.Matter matter = found.matter(Set.of(Role.QA_LEAD), List.of());
        Person person = deciders.require(act.by(), matter, NOT, found.partIn());
        if (!deciders.holds(person, Role.QA_LEAD, matter)) {
            throw Refusal.person(NOT, "It is for the QA lead.", "Call the QA lead; the hold stays until then.");
        }
    }

    private boolean putForward(Act act, Case found, FrameSettling said, String told) {
        deciders.require(act.by(), found.matter(Set.of(), List.of()), NOT, found.partIn());
        String customer = DecisionPutForward.customer(said.changesWhatWasOrdered(), said.customer(), NOT, LONGEST);
        RejudgedFrame frame = found.frame();
        int number = decisions
                .findFirstByRejudgementIdAndSerialOrderByNumberDesc(frame.rejudgementId(), frame.serial())
                .map(before -> before.number() + 1)
                .orElse(1);
        FrameDecision decision = decisions.saveAndFlush(new FrameDecision(
                frame,
                number,
                words.keep(found.chain(), frame.rejudgementId(), "DECISION", told),
                said.changesWhatWasOrdered(),
                customer == null ? null : words.keep(found.chain(), frame.rejudgementId(), "CUSTOMER", customer),
                act));
        log.event(
                found.chain(), "decision put forward", Map.of("rejudgement", frame.rejudgementId(), "number", number));
        return agreeTo(act, found, decision, NOT);
    }

    private boolean agreeTo(Act act, Case found, FrameDecision decision, String not) {
        Deciders.Matter matter = found.matter(
                Set.copyOf(Deciders.OF_WHAT_STAYS_AS_IT_IS),
                agreements.findByDecisionIdInOrderById(List.of(decision.id())).stream()
                        .map(FrameAgreement::said)
                        .toList());
        Set<Role> mine = deciders.requireRoles(act.by(), matter, not, found.partIn());
        mine.forEach(role -> agreements.save(new FrameAgreement(decision, role, act)));
        agreements.flush();
        log.event(
                found.chain(),
                "agreed",
                Map.of(
                        "rejudgement",
                        found.frame().rejudgementId(),
                        "number",
                        decision.number(),
                        "as",
                        mine.stream().map(Enum::name).toList()));
        return matter.with(act.by(), mine).agreed() && settled(act, found, FrameResult.DECIDED, decision.wordsId());
    }

    private long keep(Case found, String told) {
        return words.keep(found.chain(), found.frame().rejudgementId(), "RESULT", told)
                .id();
    }

    /** The hold says which result lifted it and not in whose words: those are kept once, where they can be erased. */
    private boolean settled(Act act, Case found, FrameResult result, long wordsId) {
        RejudgedFrame frame = found.frame();
        String number = found.rejudgement().number();
        frame.settle(act, result, wordsId);
        holds.liftOf(act, frame.serial(), number, number + ": " + result.word());
        log.event(
                found.chain(),
                "frame of re-judgement settled",
                Map.of("rejudgement", frame.rejudgementId(), "result", result.name()));
        return true;
    }
}
