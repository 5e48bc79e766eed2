package org.trammel.shop.backtraces;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.ovens.OvenTest;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** How far a trace reaches back, and its end: the QA lead closes it once every frame has its result. */
@Service
public class TraceClosing {

    private static final int LONGEST = 4000;

    private final OvenTraceRepository traces;
    private final OvenTraces reads;
    private final Tracing tracing;
    private final TraceWords words;
    private final Crew crew;
    private final ActLog log;

    TraceClosing(
            OvenTraceRepository traces, OvenTraces reads, Tracing tracing, TraceWords words, Crew crew, ActLog log) {
        this.traces = traces;
        this.reads = reads;
        this.tracing = tracing;
        this.words = words;
        this.crew = crew;
        this.log = log;
    }

    /** Doubts the last good test too, and tells what ran since the one before it. */
    @Transactional
    public OvenTrace widen(Act act, long id, @Nullable String reason) {
        String deed = OvenTrace.number(id) + " was not widened.";
        OvenTraceRow named = reads.required(id);
        List<String> chains = new ArrayList<>(tracing.chains(named.thermocouple(), act.at()));
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
        String said = TypedText.words("reason", "Why the last good test is doubted", deed, reason, LONGEST);
        trace.widen(
                tracing.goodBefore(trace.thermocouple(), last)
                        .map(OvenTest::testedAt)
                        .orElse(null),
                words.keep(Chains.SHOP, id, "WIDENING", said).id());
        traces.saveAndFlush(trace);
        log.event(Chains.SHOP, "oven-trace-widened", Map.of("trace", id));
        tracing.tellAll(act, trace);
        return reads.one(id);
    }

    @Transactional
    public OvenTrace close(Act act, long id, @Nullable String typed) {
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
        String said = TypedText.words("words", "What was learnt of the thermocouple", deed, typed, LONGEST);
        trace.close(act, words.keep(Chains.SHOP, id, "CLOSING", said).id());
        traces.saveAndFlush(trace);
        log.event(Chains.SHOP, "oven-trace-closed", Map.of("trace", id));
        return reads.one(id);
    }
}
