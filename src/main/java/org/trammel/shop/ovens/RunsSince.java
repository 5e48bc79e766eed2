package org.trammel.shop.ovens;

import java.time.Instant;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;

/** What whoever traces a thermocouple back needs of runs: which it was in, who and what was in them, what followed. */
@Component
@Transactional(readOnly = true)
public class RunsSince {

    private final RunRepository rows;
    private final LoadedRepository loaded;
    private final OvenTestRepository tests;
    private final Runs runs;
    private final Programmes programmes;
    private final HardnessOfRuns hardness;
    private final RunGives gives;

    RunsSince(
            RunRepository rows,
            LoadedRepository loaded,
            OvenTestRepository tests,
            Runs runs,
            Programmes programmes,
            HardnessOfRuns hardness,
            RunGives gives) {
        this.rows = rows;
        this.loaded = loaded;
        this.tests = tests;
        this.runs = runs;
        this.programmes = programmes;
        this.hardness = hardness;
        this.gives = gives;
    }

    /** Tests of a thermocouple, newest first. */
    public List<OvenTest> tests(String thermocouple) {
        return tests.findByThermocoupleOrderByTestedAtDescIdDesc(thermocouple).stream()
                .map(OvenTestRow::test)
                .toList();
    }

    /** Runs that a thermocouple was in, in the order they began. */
    public List<RunHead> with(String thermocouple, Instant since, Instant until) {
        return rows.withThermocouple(thermocouple, since, until).stream()
                .map(RunRow::head)
                .toList();
    }

    public RunHead head(long runId) {
        return required(runId).head();
    }

    public Map<Long, RunHead> heads(Collection<Long> runIds) {
        return runIds.isEmpty()
                ? Map.of()
                : rows.findByIdIn(runIds).stream()
                        .map(RunRow::head)
                        .collect(Collectors.toMap(RunHead::id, Function.identity()));
    }

    /** Serials of all that was ever put into a run, taken out again or not. */
    public List<String> serials(long runId) {
        return loaded.findByRunIdOrderById(runId).stream()
                .map(LoadedRow::serial)
                .toList();
    }

    /** What a run released or may still release. */
    public List<Run.Loaded> releasable(long runId) {
        return loaded.findByRunIdOrderById(runId).stream()
                .filter(frame -> frame.state() == FrameState.LOADED || frame.state() == FrameState.RELEASED)
                .map(frame -> frame.loaded(""))
                .toList();
    }

    /** Everybody who opened, loaded, signed as heat treater or started it. */
    public Set<Long> tookPart(long runId) {
        return runs.run(required(runId)).tookPart();
    }

    /** Those, and everybody who signed, stopped or released it. */
    public Set<Long> hadAHand(long runId) {
        RunRow row = required(runId);
        Set<Long> hands = new HashSet<>(runs.run(row).hadAHand());
        if (row.stoppedBy() != null) {
            hands.add(row.stoppedBy());
        }
        return hands;
    }

    /** Whether a reading that decides shows the hardness of a frame, or of the coupon of its run. */
    public boolean hardnessShown(long runId, long travellerId) {
        return hardness.shows(required(runId).code(), travellerId);
    }

    /** Whether a released run that began after another one, of a programme that ages, was in a frame's life. */
    public boolean agedSince(long runId, String serial, long travellerId) {
        Instant doubtful = required(runId).startedAt();
        return loaded.findBySerialOrderById(serial).stream()
                .filter(one -> one.state() == FrameState.RELEASED && one.runId() != runId)
                .filter(one -> one.travellerId() == travellerId)
                .map(one -> required(one.runId()))
                .anyMatch(run -> run.startedAt() != null
                        && doubtful != null
                        && run.startedAt().isAfter(doubtful)
                        && programmes.revision(run.revisionId()).purpose().ages());
    }

    /** What thermocouples told of a run is in doubt on a frame of it, within an act that is open. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void doubt(Act act, long runId, long operationId, String trace) {
        gives.doubt(act, required(runId), operationId, trace);
    }

    /** The frame has its result for the run, within an act that is open. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void doubtOver(long runId, long travellerId, String trace) {
        Optional<Long> operation = loaded.findByRunIdAndTravellerId(runId, travellerId)
                .map(LoadedRow::operationId)
                .filter(Objects::nonNull);
        operation.ifPresent(id -> gives.doubtOver(required(runId), id, trace));
    }

    private RunRow required(long runId) {
        return rows.findById(runId).orElseThrow();
    }
}
