package org.trammel.shop.ovens;

import java.time.Instant;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.travellers.Holds;

/** What came of frames whose run is in doubt; the QA lead closes a trace once every frame has its result. */
@Service
public class TraceResults {

    private final OvenTraceRepository traces;
    private final TracedFrameRepository frames;
    private final LoadedRepository loaded;
    private final RunRepository runs;
    private final Programmes programmes;
    private final OvenTraces reads;
    private final Tracing tracing;
    private final HardnessOfRuns hardness;
    private final Holds holds;
    private final Crew crew;
    private final ActLog log;

    TraceResults(
            OvenTraceRepository traces,
            TracedFrameRepository frames,
            LoadedRepository loaded,
            RunRepository runs,
            Programmes programmes,
            OvenTraces reads,
            Tracing tracing,
            HardnessOfRuns hardness,
            Holds holds,
            Crew crew,
            ActLog log) {
        this.traces = traces;
        this.frames = frames;
        this.loaded = loaded;
        this.runs = runs;
        this.programmes = programmes;
        this.reads = reads;
        this.tracing = tracing;
        this.hardness = hardness;
        this.holds = holds;
        this.crew = crew;
        this.log = log;
    }

    /**
     * Says what came of a frame. The hold is lifted with the last result of its serial.
     *
     * @param words what was found, done or told; needed
     */
    @Transactional
    public OvenTrace settle(Act act, long id, long frameId, @Nullable TraceResult result, @Nullable String words) {
        String deed = "The frame was not given its result.";
        TracedFrameRow named = required(id, frameId, deed);
        if (!log.opens(
                act,
                "settle frame of oven trace",
                "oven-trace:" + id + " frame:" + frameId,
                Chains.bearing(named.serial()),
                Chains.SHOP)) {
            return reads.one(id);
        }
        OvenTraceRow trace = reads.required(id);
        trace.requireOpen(deed);
        crew.require(act.by(), deed, Role.QA_LEAD);
        TracedFrameRow frame = required(id, frameId, deed);
        if (result == null) {
            throw Refusal.input("result", deed, "No result was chosen.", "Choose one of the list.");
        }
        boolean outside = frame.outcome() == TraceOutcome.CONTACT_OWNER;
        if (outside != (result == TraceResult.OWNER_CONTACTED) && result != TraceResult.DECIDED) {
            throw Refusal.input(
                    "result",
                    deed,
                    outside ? "The frame has left the shop." : "The frame is in the shop.",
                    outside
                            ? "Contact its owner, or say how it was decided."
                            : "Measure its hardness, age it further, or say how it was decided.");
        }
        if (result == TraceResult.AGED_FURTHER) {
            requireAgedFurther(frame, deed);
        }
        String said = TypedText.words("words", "What was found, done or told", deed, words, 4000);
        if (result == TraceResult.HARDNESS) {
            requireHardness(frame, deed);
        }
        frame.settle(act, result, said);
        frames.saveAndFlush(frame);
        boolean last = frames.findByTraceIdOrderByPlaceAscIdAsc(id).stream()
                .noneMatch(other -> other.serial().equals(frame.serial()) && other.waits());
        if (last) {
            holds.liftFor(act, frame.serial(), trace.number(), result.word() + ": " + said);
        }
        log.event(
                Chains.bearing(frame.serial()),
                "frame of oven trace settled",
                Map.of("trace", id, "run", frame.runId(), "result", result.name()));
        return reads.one(id);
    }

    private TracedFrameRow required(long id, long frameId, String deed) {
        return frames.findById(frameId)
                .filter(frame -> frame.traceId() == id)
                .orElseThrow(() ->
                        Refusal.missing(deed, "It is not in " + OvenTrace.number(id) + ".", "Choose one of its list."));
    }

    private void requireHardness(TracedFrameRow frame, String deed) {
        String run = runs.findById(frame.runId()).orElseThrow().code();
        if (!hardness.shows(run, frame.travellerId())) {
            throw Refusal.state(
                    deed,
                    "No hardness that decides is entered of it, or of the coupon of run " + run
                            + ", within its limit. A screening by hand, rebound or conductivity never releases.",
                    "Measure the coupon on a bench tester and enter it on the sheet of " + run + ".");
        }
    }

    /** A released run after the doubtful one, of a programme that ages. */
    private void requireAgedFurther(TracedFrameRow frame, String deed) {
        Instant doubtful = runs.findById(frame.runId()).orElseThrow().startedAt();
        boolean since = loaded.findBySerialOrderById(frame.serial()).stream()
                .filter(one -> one.state() == FrameState.RELEASED && one.runId() != frame.runId())
                .filter(one -> one.loaded().travellerId() == frame.travellerId())
                .map(one -> runs.findById(one.runId()).orElseThrow())
                .anyMatch(run -> run.startedAt() != null
                        && doubtful != null
                        && run.startedAt().isAfter(doubtful)
                        && programmes.revision(run.revisionId()).purpose().ages());
        if (!since) {
            throw Refusal.state(
                    deed,
                    "No released run has aged it since.",
                    "Load it for a top-up or an age, and have that run released on its record first.");
        }
    }

    /** Doubts the last good test too, and tells what ran since the one before it. */
    @Transactional
    public OvenTrace widen(Act act, long id, @Nullable String reason) {
        String deed = OvenTrace.number(id) + " was not widened.";
        OvenTraceRow named = reads.required(id);
        java.util.List<String> chains = new java.util.ArrayList<>(tracing.chains(named.thermocouple(), act.at()));
        chains.add(Chains.SHOP);
        if (!log.opens(act, "widen oven trace", "oven-trace:" + id, chains.toArray(String[]::new))) {
            return reads.one(id);
        }
        crew.require(act.by(), deed, Role.QA_LEAD);
        OvenTraceRow trace = reads.required(id);
        trace.requireOpen(deed);
        Instant last = trace.lastGoodAt();
        if (last == null) {
            throw Refusal.state(
                    deed, "It reaches back to the first use of " + trace.thermocouple() + " already.", "Leave it.");
        }
        String words = TypedText.words("reason", "Why the last good test is doubted", deed, reason, 4000);
        trace.widen(
                tracing.goodBefore(trace.thermocouple(), last)
                        .map(OvenTest::testedAt)
                        .orElse(null),
                words);
        traces.saveAndFlush(trace);
        log.event(Chains.SHOP, "oven-trace-widened", Map.of("trace", id));
        tracing.tellAll(act, trace);
        return reads.one(id);
    }

    @Transactional
    public OvenTrace close(Act act, long id, @Nullable String words) {
        String deed = OvenTrace.number(id) + " was not closed.";
        if (!log.opens(act, "close oven trace", "oven-trace:" + id, Chains.SHOP)) {
            return reads.one(id);
        }
        crew.require(act.by(), deed, Role.QA_LEAD);
        OvenTraceRow trace = reads.required(id);
        trace.requireOpen(deed);
        int waiting = reads.one(id).waiting();
        if (waiting > 0) {
            throw Refusal.state(
                    deed,
                    waiting + (waiting == 1 ? " frame has" : " frames have") + " no result yet.",
                    "Give each frame its result first.");
        }
        trace.close(act, TypedText.words("words", "What was learnt of the thermocouple", deed, words, 4000));
        traces.saveAndFlush(trace);
        log.event(Chains.SHOP, "oven-trace-closed", Map.of("trace", id));
        return reads.one(id);
    }
}
