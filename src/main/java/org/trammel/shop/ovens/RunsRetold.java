package org.trammel.shop.ovens;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.thermal.Activation;
import org.trammel.calc.thermal.RunRules;
import org.trammel.calc.thermal.RunVerdict;
import org.trammel.calc.thermal.Samples;
import org.trammel.calc.thermal.Thermocouple;
import org.trammel.calc.units.Answer;
import org.trammel.shop.settings.Settings;

/** Judges a run once more from its stored record, by thermocouples that are taken to have read otherwise. */
@Component
@Transactional(readOnly = true)
public class RunsRetold {

    private final RunRepository runs;
    private final WiredRepository wired;
    private final LogRepository logs;
    private final RunJudge judge;
    private final Programmes programmes;
    private final Settings settings;

    RunsRetold(
            RunRepository runs,
            WiredRepository wired,
            LogRepository logs,
            RunJudge judge,
            Programmes programmes,
            Settings settings) {
        this.runs = runs;
        this.wired = wired;
        this.logs = logs;
        this.judge = judge;
        this.programmes = programmes;
        this.settings = settings;
    }

    /** The record that a run is judged by, and by which thermocouples and rules. */
    public record Recorded(long logId, Samples samples, List<Thermocouple> thermocouples, RunRules rules) {}

    /** By which equivalent hours are counted. */
    public record Counting(double reference_degC, Activation activation) {}

    /** What a thermocouple was in a run. */
    public Run.Wired wired(long runId, String thermocouple) {
        return wired.findByRunIdOrderByCode(runId).stream()
                .filter(one -> one.code().equals(thermocouple))
                .findFirst()
                .orElseThrow()
                .wired();
    }

    /** Empty where none was taken yet. */
    public Optional<Recorded> recorded(long runId) {
        return logs.findFirstByRunIdOrderByIdDesc(runId)
                .map(log -> new Recorded(
                        log.id(), log.kept().read(), judge.thermocouples(runId), RunJudge.rules(required(runId))));
    }

    /** Empty where the record does not tell the temperature of the load. */
    public Optional<RunVerdict> verdict(long runId, Samples samples, List<Thermocouple> thermocouples) {
        return judge.of(required(runId), samples, thermocouples).verdict()
                        instanceof Answer.Determined<RunVerdict> there
                ? Optional.of(there.value())
                : Optional.empty();
    }

    /** Hours are told of ages alone: what a solution treatment or a bake is worth at a temperature of ageing says nothing. */
    public Optional<Counting> counting(long runId) {
        RunRow run = required(runId);
        Programme programme = programmes.revision(run.revisionId());
        return programme.purpose() == Purpose.AGEING
                ? MetalHeat.of(programme.content().metals().get(0), settings)
                        .map(heat -> counting(run.activation(), programme, heat))
                : Optional.empty();
    }

    private static Counting counting(@Nullable Activation settled, Programme programme, MetalHeat heat) {
        double reference = programme.content().reference_degC() == null
                ? heat.reference_degC()
                : programme.content().reference_degC().doubleValue();
        return new Counting(reference, settled == null ? heat.activation() : settled);
    }

    private RunRow required(long runId) {
        return runs.findById(runId).orElseThrow();
    }
}
