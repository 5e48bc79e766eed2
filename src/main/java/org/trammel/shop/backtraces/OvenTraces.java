package org.trammel.shop.backtraces;

import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.ovens.Oven;
import org.trammel.shop.ovens.Ovens;
import org.trammel.shop.ovens.Programmes;
import org.trammel.shop.ovens.RunDoubts;
import org.trammel.shop.ovens.RunHead;
import org.trammel.shop.ovens.RunsSince;
import org.trammel.shop.records.KeptWords;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.Words;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Traces;
import org.trammel.shop.travellers.TravellerState;

/** Reads what was told again after a thermocouple was found wrong. */
@Service
@Transactional(readOnly = true)
public class OvenTraces {

    private static final int MOST = 200;

    private final OvenTraceRepository traces;
    private final TracedRunRepository tracedRuns;
    private final TracedFrameRepository tracedFrames;
    private final RunsSince runs;
    private final Programmes programmes;
    private final Ovens ovens;
    private final Traces travellers;
    private final TraceDecisions decisions;
    private final Words words;

    OvenTraces(
            OvenTraceRepository traces,
            TracedRunRepository tracedRuns,
            TracedFrameRepository tracedFrames,
            RunsSince runs,
            Programmes programmes,
            Ovens ovens,
            Traces travellers,
            TraceDecisions decisions,
            Words words) {
        this.traces = traces;
        this.tracedRuns = tracedRuns;
        this.tracedFrames = tracedFrames;
        this.runs = runs;
        this.programmes = programmes;
        this.ovens = ovens;
        this.travellers = travellers;
        this.decisions = decisions;
        this.words = words;
    }

    /** Those that are not closed, oldest first. */
    public List<OvenTrace> open() {
        return lines(traces.findByStateOrderById(OvenTraceState.OPEN));
    }

    /** A page of all, newest first. */
    public List<OvenTrace> page(long before, int size) {
        return lines(traces.findByIdLessThanOrderByIdDesc(before, Limit.of(Math.min(Math.max(size, 1), MOST))));
    }

    public OvenTrace one(long id) {
        return lines(List.of(required(id))).get(0);
    }

    private List<OvenTrace> lines(List<OvenTraceRow> rows) {
        Map<Long, OvenTraceRepository.Counted> counts = rows.isEmpty()
                ? Map.of()
                : traces.framesOf(rows.stream().map(OvenTraceRow::id).toList()).stream()
                        .collect(Collectors.toMap(OvenTraceRepository.Counted::getId, Function.identity()));
        Map<Long, String> codes =
                rows.isEmpty() ? Map.of() : ovens.all().stream().collect(Collectors.toMap(Oven::id, Oven::code));
        Map<Long, KeptWords> texts = words.findAll(
                rows.stream().flatMap(row -> row.wordsIds().stream()).toList());
        return rows.stream()
                .map(row -> {
                    OvenTraceRepository.Counted count = counts.get(row.id());
                    return row.line(
                            Objects.requireNonNull(codes.get(row.ovenId())),
                            count == null ? 0 : (int) count.getFrames(),
                            count == null ? 0 : (int) count.getWaiting(),
                            texts);
                })
                .toList();
    }

    /** What was found since of the thermocouples of runs, by the ids of the runs; none of a run that no trace is about. */
    Map<Long, List<RunDoubts.Doubt>> doubts(Collection<Long> runIds) {
        if (runIds.isEmpty()) {
            return Map.of();
        }
        Map<Long, Map<Long, TracedRunRow>> told = new LinkedHashMap<>();
        tracedRuns
                .findByRunIdInOrderById(runIds)
                .forEach(row -> told.computeIfAbsent(row.runId(), id -> new LinkedHashMap<>())
                        .put(row.traceId(), row));
        Map<Long, List<RunDoubts.Doubt>> doubts = new LinkedHashMap<>();
        told.forEach((run, byTrace) -> doubts.put(
                run,
                byTrace.values().stream()
                        .map(row -> required(row.traceId()).doubt(row.cleared()))
                        .toList()));
        return doubts;
    }

    OvenTraceRow required(long id) {
        return traces.findById(id)
                .orElseThrow(() -> Refusal.missing(
                        "The trace was not found.",
                        "There is none with the number " + OvenTrace.number(id) + ".",
                        "Choose one from the list."));
    }

    /** Its runs as they were told last, in the order they began. */
    public List<OvenTrace.TracedRun> runs(long id) {
        required(id);
        Map<Long, TracedRunRow> newest = new LinkedHashMap<>();
        tracedRuns.findByTraceIdOrderById(id).forEach(row -> newest.put(row.runId(), row));
        Map<Long, RunHead> rows = runs.heads(newest.keySet());
        return newest.values().stream()
                .map(told -> {
                    RunHead run = Objects.requireNonNull(rows.get(told.runId()));
                    return told.run(
                            run.code(),
                            programmes.revision(run.revisionId()).called(),
                            Objects.requireNonNull(run.startedAt()));
                })
                .sorted(Comparator.comparing(OvenTrace.TracedRun::startedAt))
                .toList();
    }

    /** Its frames, the worst first. */
    public List<OvenTrace.TracedFrame> frames(long id) {
        required(id);
        List<TracedFrameRow> rows = tracedFrames.findByTraceIdOrderByPlaceAscIdAsc(id);
        Map<Long, TraceDecisions.Told> told = decisions.of(rows);
        Map<Long, RunHead> ofRuns =
                runs.heads(rows.stream().map(TracedFrameRow::runId).distinct().toList());
        Map<String, List<FrameSheet.Head>> heads = travellers.heads(
                rows.stream().map(TracedFrameRow::serial).distinct().toList());
        return rows.stream()
                .map(row -> {
                    List<FrameSheet.Head> own = heads.getOrDefault(row.serial(), List.of());
                    return row.frame(
                            Objects.requireNonNull(ofRuns.get(row.runId())).code(),
                            shippedAt(own),
                            standing(row, own),
                            Objects.requireNonNull(told.get(row.id())));
                })
                .toList();
    }

    private static @org.jspecify.annotations.Nullable Instant shippedAt(List<FrameSheet.Head> heads) {
        return heads.stream()
                .filter(head -> head.state() == TravellerState.SHIPPED)
                .map(FrameSheet.Head::shippedAt)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    private static String standing(TracedFrameRow row, List<FrameSheet.Head> heads) {
        return heads.stream()
                .filter(head -> head.travellerId() == row.travellerId())
                .findFirst()
                .map(head -> head.state().open() && head.currentCode() != null
                        ? "at " + head.currentCode()
                        : head.state().word())
                .orElse("");
    }

    /** What the worst case of open traces leaves missing of a run; 0 where none is in doubt. */
    double missing_h(long runId) {
        Map<Long, TracedRunRow> newest = new LinkedHashMap<>();
        tracedRuns.findByRunIdOrderById(runId).forEach(row -> newest.put(row.traceId(), row));
        return newest.values().stream()
                .filter(row -> !row.cleared())
                .map(TracedRunRow::missingWorst_h)
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder())
                .orElse(0.0);
    }
}
