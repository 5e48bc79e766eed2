package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.trammel.calc.thermal.Activation;
import org.trammel.calc.thermal.EquivalentTime;
import org.trammel.calc.thermal.LoadTrace;
import org.trammel.calc.thermal.MetalExtremes;
import org.trammel.calc.thermal.RunVerdict;
import org.trammel.calc.thermal.Samples;
import org.trammel.calc.thermal.ThermocoupleRole;
import org.trammel.calc.units.Answer;
import org.trammel.shop.inspection.GivenByRecord;
import org.trammel.shop.inspection.RecordedReadings;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/**
 * Gives the characteristics that a programme names what the record of a run says of them, as the run is decided. Until then
 * they wait for it and are not keyed; what a record could not tell is keyed after.
 */
@Component
class RunGives implements GivenByRecord {

    private final GuardedOperations guarded;
    private final LoadedRepository frames;
    private final WiredRepository wired;
    private final RunRepository rows;
    private final Runs runs;
    private final RunJudge judge;
    private final Programmes programmes;
    private final RecordedReadings readings;
    private final Travellers travellers;

    RunGives(
            GuardedOperations guarded,
            LoadedRepository frames,
            WiredRepository wired,
            RunRepository rows,
            Runs runs,
            RunJudge judge,
            Programmes programmes,
            RecordedReadings readings,
            Travellers travellers) {
        this.guarded = guarded;
        this.frames = frames;
        this.wired = wired;
        this.rows = rows;
        this.runs = runs;
        this.judge = judge;
        this.programmes = programmes;
        this.readings = readings;
        this.travellers = travellers;
    }

    @Override
    public Map<String, Source> at(long operationId, String operationCode) {
        if (!guarded.gives(operationCode)) {
            return Map.of();
        }
        FrameSheet.OperationSheetOfFrame at = travellers.operation(operationId);
        List<ProgrammeRevisionRow> guarding = at.outside()
                ? List.of()
                : guarded.inForce(
                        operationCode,
                        travellers.headOf(operationId).metal(),
                        at.line().startedAt());
        List<LoadedRow> loaded = frames.findByOperationIdOrderById(operationId).stream()
                .filter(frame -> frame.state() != FrameState.TAKEN_OUT)
                .toList();
        if (loaded.stream().anyMatch(frame -> frame.state() != FrameState.LOADED)) {
            return Map.of();
        }
        Optional<RunRow> run = loaded.stream().findFirst().flatMap(frame -> rows.findById(frame.runId()));
        Map<String, Source> sources = new HashMap<>();
        guarding.stream()
                .filter(row -> run.map(one -> one.revisionId() == row.id()).orElse(true))
                .forEach(row -> row.gives().values().stream()
                        .flatMap(List::stream)
                        .forEach(code -> sources.putIfAbsent(code, source(code, row, run))));
        return sources;
    }

    private static Source source(String code, ProgrammeRevisionRow row, Optional<RunRow> run) {
        String what = code + " is not keyed.";
        return run.map(one -> new Source(
                        Refusal.state(
                                what,
                                "Run " + one.code() + " gives it from its record as it is released; the run is "
                                        + one.state().word() + ".",
                                "Have the run released."),
                        "/loads/" + one.code(),
                        "Run " + one.code()))
                .orElseGet(() -> new Source(
                        Refusal.state(
                                what,
                                "The record of its oven run gives it: programme "
                                        + row.programme().called() + ".",
                                "Load the frame, and have the run released."),
                        "/loads",
                        "Loads"));
    }

    /** What the record of a run says, as its programme names it; empty where the programme names nothing. */
    List<RecordedReadings.Value> values(RunRow run) {
        Programme programme = programmes.revision(run.revisionId());
        if (programme.content().gives().isEmpty()) {
            return List.of();
        }
        Samples samples = runs.log(run.id()).map(KeptLog::read).orElse(null);
        if (samples == null
                || !(judge.of(run, samples).verdict() instanceof Answer.Determined<RunVerdict> verdict)
                || !(LoadTrace.of(samples, judge.thermocouples(run.id()), RunJudge.gap(run))
                        instanceof Answer.Determined<LoadTrace> trace)) {
            return List.of();
        }
        LoadTrace heat = RunJudge.rules(run).of(trace.value());
        String readWith = wired.findByRunIdOrderByCode(run.id()).stream()
                .filter(one -> one.role() == ThermocoupleRole.LOAD)
                .map(one -> one.wired().code())
                .collect(Collectors.joining(", "));
        List<RecordedReadings.Value> values = new ArrayList<>();
        programme.content().gives().forEach((figure, codes) -> {
            for (int i = 0; i < codes.size(); i++) {
                String with = figure == RunFigure.QUENCH ? quenchWith(run) : readWith;
                List<BigDecimal> raw = raw(figure, i, run, programme, verdict.value(), heat);
                if (!raw.isEmpty()) {
                    values.add(RecordedReadings.Value.by(with, codes.get(i), raw, figure.unit()));
                }
                if (figure == RunFigure.IN_BAND) {
                    double hours = soak_h(verdict.value(), i);
                    values.add(RecordedReadings.Value.by(with, codes.get(i), figures(hours * 60), "min"));
                }
            }
        });
        return values;
    }

    /** Codes stand in the order of the steps, over and over where several operations have them. */
    private static double soak_h(RunVerdict verdict, int place) {
        return verdict.steps().get(place % verdict.steps().size()).soak().total_h();
    }

    private String quenchWith(RunRow run) {
        return runs.quench(run.id()).filter(Quench::late).isPresent() ? "late entry" : "two taps";
    }

    private List<BigDecimal> raw(
            RunFigure figure, int place, RunRow run, Programme programme, RunVerdict verdict, LoadTrace trace) {
        return switch (figure) {
            case IN_BAND -> figures(soak_h(verdict, place));
            case EQUIVALENT -> equivalent(run, programme, trace);
            case HIGHEST -> figures(MetalExtremes.of(trace).highest_degC());
            case SOAK -> soak(verdict, trace);
            case QUENCH ->
                runs.quench(run.id()).map(quench -> List.of(quench.delay_s())).orElse(List.of());
        };
    }

    private static List<BigDecimal> equivalent(RunRow run, Programme programme, LoadTrace trace) {
        Activation activation = run.activation();
        return activation != null
                        && EquivalentTime.of(trace, RunJudge.reference_degC(programme), activation)
                                instanceof Answer.Determined<EquivalentTime> there
                ? figures(there.value().coldest().usual_h())
                : List.of();
    }

    /** Of all soaks, each from where its band was first reached to where it was left for good. */
    private static List<BigDecimal> soak(RunVerdict verdict, LoadTrace trace) {
        List<MetalExtremes> soaks = verdict.steps().stream()
                .map(step -> step.soak())
                .flatMap(soak -> soak.first() == null || soak.last() == null
                        ? Stream.empty()
                        : MetalExtremes.of(
                                trace,
                                new LoadTrace.Stretch(
                                        soak.first().from(), soak.last().until()))
                                .stream())
                .toList();
        return soaks.isEmpty()
                ? List.of()
                : figures(
                        soaks.stream()
                                .mapToDouble(MetalExtremes::lowest_degC)
                                .min()
                                .orElseThrow(),
                        soaks.stream()
                                .mapToDouble(MetalExtremes::highest_degC)
                                .max()
                                .orElseThrow());
    }

    private static List<BigDecimal> figures(double... figures) {
        return java.util.Arrays.stream(figures)
                .mapToObj(figure -> BigDecimal.valueOf(figure).setScale(6, RoundingMode.HALF_EVEN))
                .toList();
    }

    /** What thermocouples told of a run is in doubt on a frame of it; the taps of a quench are not. */
    void doubt(Act act, RunRow run, long operationId, String trace) {
        readings.doubt(act, record(run), operationId, told(run), trace);
    }

    /** The frame has its result for the run. */
    void doubtOver(RunRow run, long operationId, String trace) {
        readings.doubtOver(record(run), operationId, told(run), trace);
    }

    private List<String> told(RunRow run) {
        return programmes.revision(run.revisionId()).content().gives().entrySet().stream()
                .filter(entry -> entry.getKey() != RunFigure.QUENCH)
                .flatMap(entry -> entry.getValue().stream())
                .toList();
    }

    private static String record(RunRow run) {
        return "run " + run.code();
    }

    /** Gives a frame of the run what its record says. */
    void give(Act act, long releasedBy, RunRow run, LoadedRow frame, List<RecordedReadings.Value> values) {
        Long operationId = frame.operationId();
        if (operationId != null && !values.isEmpty()) {
            readings.give(act, releasedBy, record(run), operationId, values);
        }
    }
}
