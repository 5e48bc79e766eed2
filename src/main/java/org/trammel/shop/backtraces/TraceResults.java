package org.trammel.shop.backtraces;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.ovens.RunsSince;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Deciders;
import org.trammel.shop.people.DecisionPutForward;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.travellers.Holds;

/**
 * What came of frames whose run is in doubt. One that is neither measured nor aged further nor told of to its owner stays
 * as it is only where as many agree as to a concession, and never by the word of who had a hand in the run.
 */
@Service
public class TraceResults {

    private static final String NOT = "The frame was not given its result.";
    private static final int LONGEST = 4000;

    private final TracedFrameRepository frames;
    private final TraceDecisionRepository decisions;
    private final TraceAgreementRepository agreements;
    private final RunsSince runs;
    private final OvenTraces reads;
    private final TraceEvidence evidence;
    private final TraceWords words;
    private final Deciders deciders;
    private final Holds holds;
    private final Crew crew;
    private final ActLog log;

    TraceResults(
            TracedFrameRepository frames,
            TraceDecisionRepository decisions,
            TraceAgreementRepository agreements,
            RunsSince runs,
            OvenTraces reads,
            TraceEvidence evidence,
            TraceWords words,
            Deciders deciders,
            Holds holds,
            Crew crew,
            ActLog log) {
        this.frames = frames;
        this.decisions = decisions;
        this.agreements = agreements;
        this.runs = runs;
        this.reads = reads;
        this.evidence = evidence;
        this.words = words;
        this.deciders = deciders;
        this.holds = holds;
        this.crew = crew;
        this.log = log;
    }

    /** A frame whose result is asked for, and who had a hand in the run that is in doubt. */
    private record Case(OvenTraceRow trace, TracedFrameRow frame, String run, Set<Long> hands) {

        String chain() {
            return Chains.bearing(frame.serial());
        }

        Deciders.Matter matter(Set<Role> wanted, List<Deciders.Said> given) {
            return new Deciders.Matter(hands, wanted, given);
        }

        /** What those with a hand in it took part in. */
        String partIn() {
            return "run " + run;
        }
    }

    /**
     * Says what came of a frame. The hold is lifted with the last result of its serial. That it stays as it is is put
     * forward by this, and comes to be the result once all have agreed who must.
     *
     * @return false if somebody must still agree
     */
    @Transactional
    public boolean settle(Act act, long id, long frameId, TraceSettling said) {
        if (!opens(act, "settle frame of oven trace", id, frameId, NOT)) {
            return hasResult(id, frameId);
        }
        Case found = find(id, frameId, NOT);
        TraceResult result = said.result();
        if (result == null) {
            throw Refusal.input("result", NOT, "No result was chosen.", "Choose one of the list.");
        }
        if (result != TraceResult.DECIDED) {
            crew.require(act.by(), NOT, Role.QA_LEAD);
        }
        String told = TypedText.words("words", "What was found, done or told", NOT, said.words(), LONGEST);
        evidence.require(result, found.frame(), NOT);
        return result == TraceResult.DECIDED
                ? putForward(act, found, said, told)
                : settled(
                        act,
                        found,
                        result,
                        words.keep(found.chain(), id, "RESULT", told).id());
    }

    /**
     * Agrees to what was put forward for a frame.
     *
     * @param number which of those ever put forward was read: nobody agrees to another that took its place
     * @return true if the frame has its result now
     */
    @Transactional
    public boolean agree(Act act, long id, long frameId, int number) {
        String not = "The decision was not agreed to.";
        if (!opens(act, "agree to decision on frame of oven trace", id, frameId, not)) {
            return hasResult(id, frameId);
        }
        Case found = find(id, frameId, not);
        TraceDecisionRow decision = decisions
                .findFirstByFrameIdOrderByNumberDesc(frameId)
                .orElseThrow(() -> Refusal.state(
                        "There is nothing to agree to.",
                        "No decision was put forward for " + found.frame().serial() + ".",
                        "Put one forward, or have its hardness measured."));
        decision.requireNumber(number, not, found.trace().number());
        return agreeTo(act, found, decision, not);
    }

    private boolean opens(Act act, String kind, long id, long frameId, String deed) {
        return log.opens(
                act,
                kind,
                "oven-trace:" + id + " frame:" + frameId,
                Chains.bearing(required(id, frameId, deed).serial()),
                Chains.SHOP);
    }

    private boolean hasResult(long id, long frameId) {
        return !required(id, frameId, NOT).waits();
    }

    private Case find(long id, long frameId, String deed) {
        OvenTraceRow trace = reads.required(id);
        trace.requireOpen(deed);
        TracedFrameRow frame = required(id, frameId, deed);
        frame.requireWaits(deed);
        return new Case(trace, frame, runs.head(frame.runId()).code(), runs.hadAHand(frame.runId()));
    }

    private TracedFrameRow required(long id, long frameId, String deed) {
        return frames.findById(frameId)
                .filter(frame -> frame.traceId() == id)
                .orElseThrow(() ->
                        Refusal.missing(deed, "It is not in " + OvenTrace.number(id) + ".", "Choose one of its list."));
    }

    private boolean putForward(Act act, Case found, TraceSettling said, String told) {
        deciders.require(act.by(), found.matter(Set.of(), List.of()), NOT, found.partIn());
        String customer = DecisionPutForward.customer(said.changesWhatWasOrdered(), said.customer(), NOT, LONGEST);
        TracedFrameRow frame = found.frame();
        int number = decisions
                .findFirstByFrameIdOrderByNumberDesc(frame.id())
                .map(before -> before.number() + 1)
                .orElse(1);
        TraceDecisionRow decision = decisions.saveAndFlush(new TraceDecisionRow(
                frame,
                number,
                words.keep(found.chain(), frame.traceId(), "DECISION", told),
                said.changesWhatWasOrdered(),
                customer == null ? null : words.keep(found.chain(), frame.traceId(), "CUSTOMER", customer),
                act));
        log.event(
                found.chain(),
                "decision put forward",
                Map.of("trace", frame.traceId(), "frame", frame.id(), "number", number));
        return agreeTo(act, found, decision, NOT);
    }

    private boolean agreeTo(Act act, Case found, TraceDecisionRow decision, String not) {
        Deciders.Matter matter = found.matter(
                Set.copyOf(Deciders.OF_WHAT_STAYS_AS_IT_IS),
                agreements.findByDecisionIdInOrderById(List.of(decision.id())).stream()
                        .map(TraceAgreementRow::said)
                        .toList());
        Set<Role> mine = deciders.requireRoles(act.by(), matter, not, found.partIn());
        mine.forEach(role -> agreements.saveAndFlush(new TraceAgreementRow(decision, role, act)));
        log.event(
                found.chain(),
                "agreed",
                Map.of(
                        "trace",
                        found.frame().traceId(),
                        "frame",
                        found.frame().id(),
                        "number",
                        decision.number(),
                        "as",
                        mine.stream().map(Enum::name).toList()));
        return matter.with(act.by(), mine).agreed() && settled(act, found, TraceResult.DECIDED, decision.wordsId());
    }

    private boolean settled(Act act, Case found, TraceResult result, long wordsId) {
        TracedFrameRow frame = found.frame();
        frame.settle(act, result, wordsId);
        frames.saveAndFlush(frame);
        outOfDoubt(found);
        boolean last = frames.findByTraceIdOrderByPlaceAscIdAsc(frame.traceId()).stream()
                .noneMatch(other -> other.serial().equals(frame.serial()) && other.waits());
        if (last) {
            lift(act, found, result);
        }
        log.event(
                found.chain(),
                "frame of oven trace settled",
                Map.of("trace", frame.traceId(), "run", frame.runId(), "result", result.name()));
        return true;
    }

    /** What the run gave stands again, unless another trace still waits for the same frame of it. */
    private void outOfDoubt(Case found) {
        TracedFrameRow frame = found.frame();
        boolean waits = frames.findByRunIdOrderById(frame.runId()).stream()
                .anyMatch(other -> other.travellerId() == frame.travellerId() && other.waits());
        if (!waits) {
            runs.doubtOver(frame.runId(), frame.travellerId(), found.trace().number());
        }
    }

    /**
     * The hold says which result lifted it and not in whose words: those are kept once, where they can be erased. Whoever
     * agreed last to a decision lifts it, owner or QA lead; any other result is the QA lead's, as the hold is.
     */
    private void lift(Act act, Case found, TraceResult result) {
        String number = found.trace().number();
        String lifted = number + ": " + result.word();
        if (result == TraceResult.DECIDED) {
            holds.liftOf(act, found.frame().serial(), number, lifted);
        } else {
            holds.liftFor(act, found.frame().serial(), number, lifted);
        }
    }
}
