package org.trammel.shop.backtraces;

import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.ovens.OvenTest;
import org.trammel.shop.ovens.Run;
import org.trammel.shop.ovens.RunHead;
import org.trammel.shop.ovens.RunsSince;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Traces;
import org.trammel.shop.travellers.TravellerState;

/**
 * Tells again every run that a thermocouple was in since it was last found right, in the act that records that it is wrong.
 * What does not conform whatever the error was is held in that act too, and what the run gave of it is undecided, so that
 * nothing in doubt goes on unseen.
 */
@Component
class Tracing {

    private final OvenTraceRepository traces;
    private final TracedRunRepository tracedRuns;
    private final TracedFrameRepository tracedFrames;
    private final RunsSince runs;
    private final TraceJudge judge;
    private final Traces travellers;
    private final Holds holds;
    private final ActLog log;

    Tracing(
            OvenTraceRepository traces,
            TracedRunRepository tracedRuns,
            TracedFrameRepository tracedFrames,
            RunsSince runs,
            TraceJudge judge,
            Traces travellers,
            Holds holds,
            ActLog log) {
        this.traces = traces;
        this.tracedRuns = tracedRuns;
        this.tracedFrames = tracedFrames;
        this.runs = runs;
        this.judge = judge;
        this.travellers = travellers;
        this.holds = holds;
        this.log = log;
    }

    /** Chains of every frame that a trace of a thermocouple may hold; read before the act is opened, to lock them in it. */
    Collection<String> chains(String thermocouple, Instant until) {
        return runs.with(thermocouple, Instant.EPOCH, until).stream()
                .flatMap(run -> runs.serials(run.id()).stream())
                .map(Chains::bearing)
                .collect(Collectors.toSet());
    }

    /** Opens the trace of an accuracy test that is not good; one about nothing is closed as it is opened. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void open(Act act, long ovenId, OvenTest failed) {
        Instant lastGood = goodBefore(String.valueOf(failed.thermocouple()), failed.testedAt())
                .map(OvenTest::testedAt)
                .orElse(null);
        OvenTraceRow trace = traces.saveAndFlush(new OvenTraceRow(ovenId, failed, lastGood, act));
        log.event(Chains.SHOP, "oven-trace-opened", Map.of("trace", trace.id(), "test", failed.id()));
        if (!tellAll(act, trace)) {
            trace.close(act, null);
            traces.saveAndFlush(trace);
        }
    }

    /** The last good test before an instant. */
    Optional<OvenTest> goodBefore(String thermocouple, Instant at) {
        return runs.tests(thermocouple).stream()
                .filter(test -> test.good() && test.testedAt().isBefore(at))
                .findFirst();
    }

    /** Until when its readings are in doubt: the next good test, else now. */
    private Instant until(OvenTraceRow trace, Instant now) {
        return runs.tests(trace.thermocouple()).stream()
                .filter(test -> test.good() && test.testedAt().isAfter(trace.foundAt()))
                .map(OvenTest::testedAt)
                .min(Comparator.naturalOrder())
                .orElse(now);
    }

    /** Tells every run of the span; false if there is none. */
    boolean tellAll(Act act, OvenTraceRow trace) {
        List<RunHead> doubtful = runs.with(trace.thermocouple(), trace.since(), until(trace, act.at()));
        Set<String> held = new HashSet<>();
        doubtful.forEach(run -> tell(act, trace, run, held));
        return !doubtful.isEmpty();
    }

    /** A record that is taken later is told again in every trace its run is in. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void tellAnew(Act act, long runId) {
        RunHead run = runs.head(runId);
        tracedRuns.findByRunIdOrderById(runId).stream()
                .map(TracedRunRow::traceId)
                .distinct()
                .map(id -> traces.findById(id).orElseThrow())
                .forEach(trace -> tell(act, trace, run, new HashSet<>()));
    }

    private void tell(Act act, OvenTraceRow trace, RunHead run, Set<String> held) {
        TracedRunRow told = tracedRuns.save(new TracedRunRow(trace.id(), run.id(), judge.tell(trace, run), act.at()));
        List<Run.Loaded> in = runs.releasable(run.id());
        Doubt doubt = new Doubt(trace, run, in, held);
        in.forEach(frame -> list(act, doubt, frame, told.cleared()));
    }

    /** A run in doubt, and what was held for it and the runs before it. */
    private record Doubt(OvenTraceRow trace, RunHead run, List<Run.Loaded> in, Set<String> held) {

        boolean alone(Run.Loaded frame) {
            return in.stream()
                            .filter(other -> other.serial().equals(frame.serial()))
                            .count()
                    == 1;
        }
    }

    private void list(Act act, Doubt doubt, Run.Loaded frame, boolean cleared) {
        OvenTraceRow trace = doubt.trace();
        RunHead run = doubt.run();
        List<FrameSheet.Head> heads = travellers.heads(Set.of(frame.serial())).getOrDefault(frame.serial(), List.of());
        TraceOutcome outcome = cleared ? TraceOutcome.CLEARED : outcome(heads);
        Optional<TracedFrameRow> before =
                tracedFrames.findByTraceIdAndRunIdAndTravellerId(trace.id(), run.id(), frame.travellerId());
        boolean news = before.isEmpty();
        TracedFrameRow row = before.orElseGet(() -> new TracedFrameRow(trace.id(), frame, run.id(), outcome));
        boolean worse = row.worsen(outcome);
        tracedFrames.saveAndFlush(row);
        if (news || worse) {
            log.event(
                    Chains.bearing(frame.serial()),
                    "oven-trace-listed",
                    Map.of("trace", trace.id(), "run", run.id(), "outcome", outcome.name()));
        }
        if ((news || worse) && outcome == TraceOutcome.HOLD) {
            Long operation = frame.operationId();
            if (operation != null) {
                runs.doubt(act, run.id(), operation, trace.number());
            }
            hold(act, doubt, frame, heads);
        }
    }

    private static TraceOutcome outcome(List<FrameSheet.Head> heads) {
        if (heads.stream().anyMatch(head -> head.state().open())) {
            return TraceOutcome.HOLD;
        }
        return heads.stream().anyMatch(head -> head.state() == TravellerState.SHIPPED)
                ? TraceOutcome.CONTACT_OWNER
                : TraceOutcome.GONE;
    }

    /** A part that was in the run without others is held by itself while it is on its way; else the frame is, once. */
    private void hold(Act act, Doubt doubt, Run.Loaded frame, List<FrameSheet.Head> heads) {
        OvenTraceRow trace = doubt.trace();
        FrameSheet.Head part = newestOpen(heads, frame.part());
        boolean alone = doubt.alone(frame)
                && part != null
                && !frame.part().isEmpty()
                && part.state() != TravellerState.FINISHED;
        FrameSheet.Head whole = newestOpen(heads, "");
        FrameSheet.Head of = alone || whole == null ? part : whole;
        if (of == null || !doubt.held().add(frame.serial() + (alone ? " " + frame.part() : ""))) {
            return;
        }
        holds.placeWithin(
                act,
                new Holds.Request(
                        of.travellerId(),
                        alone ? HoldScope.PART : HoldScope.FRAME,
                        null,
                        HoldReason.OVEN_TRACE,
                        trace.thermocouple() + " read "
                                + trace.error_K().abs().stripTrailingZeros().toPlainString()
                                + " K too " + (trace.error_K().signum() < 0 ? "low" : "high") + "; run "
                                + doubt.run().code()
                                + " is in doubt",
                        trace.number(),
                        runs.tookPart(doubt.run().id())));
    }

    private static FrameSheet.@Nullable Head newestOpen(List<FrameSheet.Head> heads, String part) {
        return heads.stream()
                .filter(head -> head.part().equals(part) && head.state().open())
                .reduce((a, b) -> b)
                .orElse(null);
    }

    /** The trace that keeps a run from being released, if there is one. */
    Optional<OvenTraceRow> against(long runId) {
        return tracedFrames.findByRunIdOrderById(runId).stream()
                .filter(TracedFrameRow::waits)
                .findFirst()
                .map(frame -> traces.findById(frame.traceId()).orElseThrow());
    }
}
