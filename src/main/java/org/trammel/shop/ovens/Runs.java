package org.trammel.shop.ovens;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.KeptWords;
import org.trammel.shop.records.Refusal;

/** Reads loads and runs. */
@Service
@Transactional(readOnly = true)
public class Runs {

    private final RunRepository rows;
    private final LoadedRepository frames;
    private final WiredRepository wired;
    private final DoorRepository doors;
    private final RunSignatureRepository signatures;
    private final LogRepository logs;
    private final QuenchRepository quenches;
    private final LogDraftRepository drafts;
    private final Ovens ovens;
    private final Programmes programmes;
    private final RunWords words;

    Runs(
            RunRepository rows,
            LoadedRepository frames,
            WiredRepository wired,
            DoorRepository doors,
            RunSignatureRepository signatures,
            LogRepository logs,
            QuenchRepository quenches,
            LogDraftRepository drafts,
            Ovens ovens,
            Programmes programmes,
            RunWords words) {
        this.rows = rows;
        this.frames = frames;
        this.wired = wired;
        this.doors = doors;
        this.signatures = signatures;
        this.logs = logs;
        this.quenches = quenches;
        this.drafts = drafts;
        this.ovens = ovens;
        this.programmes = programmes;
        this.words = words;
    }

    /**
     * A page of them, those opened last first.
     *
     * @param before id of the run to go on below; {@link Long#MAX_VALUE} for the first page
     */
    public List<Run> page(long before, int size) {
        return rows.page(before, Limit.of(size)).stream().map(this::run).toList();
    }

    /** @throws Refusal if there is none of that number */
    public Run byCode(String code) {
        return run(row(code));
    }

    RunRow row(String code) {
        return rows.findByCode(Ovens.label(code))
                .orElseThrow(() -> Refusal.missing(
                        "The load was not found.",
                        "No load carries the number " + code + ".",
                        "Choose it from the list of loads."));
    }

    Run run(RunRow row) {
        List<LoadedRow> loaded = frames.findByRunIdOrderById(row.id());
        List<DoorRow> moved = doors.findByRunIdOrderByIdAsc(row.id());
        Map<Long, KeptWords> texts = words.all(Stream.concat(
                        loaded.stream().map(LoadedRow::wordsId), moved.stream().map(DoorRow::wordsId))
                .toList());
        return row.run(
                ovens.byId(row.ovenId()).code(),
                programmes.revision(row.revisionId()),
                loaded.stream()
                        .map(frame -> frame.loaded(RunWords.shown(texts, frame.wordsId())))
                        .toList(),
                wired.findByRunIdOrderByCode(row.id()).stream()
                        .map(WiredRow::wired)
                        .toList(),
                moved.stream()
                        .map(door -> door.door(RunWords.shown(texts, door.wordsId())))
                        .toList(),
                signatures.findByRunIdOrderById(row.id()).stream()
                        .map(signature -> signature.signed(row))
                        .toList());
    }

    /** The record a run is judged by. */
    Optional<KeptLog> log(long runId) {
        return logs.findFirstByRunIdOrderByIdDesc(runId).map(LogRow::kept);
    }

    /** How long the load took from door to water. */
    Optional<Quench> quench(long runId) {
        return quenches.findFirstByRunIdOrderByIdDesc(runId)
                .map(row -> row.quench(RunWords.shown(words.all(Collections.singleton(row.wordsId())), row.wordsId())));
    }

    /** Id by which the record that was read last is taken; empty if there is none to take. */
    public Optional<Long> draftId(String code) {
        return draft(row(code).id()).map(LogDraftRow::id);
    }

    /** The record that was read and is not taken yet. */
    Optional<LogDraftRow> draft(long runId) {
        return drafts.findByRunId(runId);
    }

    /** The number the next load gets where nobody names another. */
    public String nextCode() {
        long next = rows.all() + 1;
        while (rows.existsByCode(numbered(next))) {
            next++;
        }
        return numbered(next);
    }

    private static String numbered(long number) {
        return "RUN-" + String.format(java.util.Locale.ROOT, "%04d", number);
    }

    /** Runs that a frame, or a part of one, was in, oldest first. */
    public List<Run> of(String serial, @Nullable String part) {
        return frames.findBySerialOrderById(serial).stream()
                .filter(frame -> part == null || frame.part().equals(part))
                .map(LoadedRow::runId)
                .distinct()
                .map(id -> run(rows.findById(id).orElseThrow()))
                .toList();
    }
}
