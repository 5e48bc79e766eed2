package org.trammel.shop.ovens;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.thermal.Activation;
import org.trammel.calc.thermal.DriftTrace;
import org.trammel.calc.thermal.Finding;
import org.trammel.calc.thermal.Judged;
import org.trammel.calc.thermal.RunRules;
import org.trammel.calc.thermal.RunVerdict;
import org.trammel.calc.thermal.Samples;
import org.trammel.calc.thermal.Thermocouple;
import org.trammel.calc.units.Answer;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.Formats;

/**
 * Tells what a run was in truth if a thermocouple of it drifted. Its stored record is corrected and judged once more; the
 * drift is taken for the middle of the run.
 */
@Component
class TraceJudge {

    /** An error between none and the one found can spoil a run that both ends leave whole, so that some between are tried. */
    private static final int SHARES = 8;

    private final WiredRepository wired;
    private final LogRepository logs;
    private final RunJudge judge;
    private final Programmes programmes;
    private final Settings settings;
    private final Formats formats;

    TraceJudge(
            WiredRepository wired,
            LogRepository logs,
            RunJudge judge,
            Programmes programmes,
            Settings settings,
            Formats formats) {
        this.wired = wired;
        this.logs = logs;
        this.judge = judge;
        this.programmes = programmes;
        this.settings = settings;
        this.formats = formats;
    }

    /** Equivalent hours of a run at a temperature, by what its thermocouple may have read too high. */
    record Hours(
            double reference_degC,
            double recorded_h,
            double linear_h,
            double worst_h,
            @Nullable Double without_h) {}

    /**
     * What a run was.
     *
     * @param logId the record that was looked at; null where there is none yet
     * @param cleared whether nothing of its verdict hangs on the error
     * @param words why, in a sentence or two
     */
    record Told(
            DriftTrace.Suspicion suspicion,
            @Nullable Long logId,
            double drift_K,
            double worst_K,
            @Nullable Hours hours,
            @Nullable Judged judged,
            @Nullable Judged judgedLinear,
            @Nullable Judged judgedWorst,
            boolean cleared,
            String words) {}

    Told tell(OvenTraceRow trace, RunRow run) {
        WiredRow own = wired.findByRunIdOrderByCode(run.id()).stream()
                .filter(one -> one.code().equals(trace.thermocouple()))
                .findFirst()
                .orElseThrow();
        // What the run was corrected by already is part of what was found.
        double worst = trace.error_K().subtract(own.wired().error_K()).doubleValue();
        DriftTrace.FailedTest test = new DriftTrace.FailedTest(own.logColumn(), trace.since(), trace.foundAt(), worst);
        Instant middle = within(test, middle(run, trace.foundAt()));
        DriftTrace.Suspicion suspicion = DriftTrace.suspicion(test, middle, List.of(own.computed()));
        double drift = worst * share(test, middle);
        Optional<LogRow> log = logs.findFirstByRunIdOrderByIdDesc(run.id());
        if (log.isEmpty()) {
            boolean judgedByIt = suspicion == DriftTrace.Suspicion.JUDGED_BY_IT;
            return new Told(
                    suspicion,
                    null,
                    drift,
                    worst,
                    null,
                    null,
                    null,
                    null,
                    !judgedByIt,
                    role(suspicion, own) + " The" + " run has no record yet; it is told again as one is taken.");
        }
        Samples samples = log.get().kept().read();
        List<Thermocouple> all = judge.thermocouples(run.id());
        Optional<RunVerdict> recorded = verdict(run, samples, all);
        Optional<RunVerdict> ifLinear = verdict(run, samples, drifted(all, own.logColumn(), drift));
        Optional<RunVerdict> ifWorst = verdict(run, samples, drifted(all, own.logColumn(), worst));
        boolean cleared = cleared(run, samples, all, own.logColumn(), worst, recorded);
        return new Told(
                suspicion,
                log.get().id(),
                drift,
                worst,
                hours(test, middle, run, samples, all),
                recorded.map(RunVerdict::judged).orElse(null),
                ifLinear.map(RunVerdict::judged).orElse(null),
                ifWorst.map(RunVerdict::judged).orElse(null),
                cleared,
                role(suspicion, own) + " "
                        + (cleared
                                ? "Its verdict is the same whatever of the error it had."
                                : why(drift, worst, ifLinear, ifWorst)));
    }

    private static Instant middle(RunRow run, Instant found) {
        Instant started = java.util.Objects.requireNonNull(run.startedAt());
        Instant stopped = run.stoppedAt() == null ? found : run.stoppedAt();
        return stopped.isAfter(started)
                ? started.plus(Duration.between(started, stopped).dividedBy(2))
                : started;
    }

    private static Instant within(DriftTrace.FailedTest test, Instant at) {
        if (!at.isAfter(test.lastGood())) {
            return test.lastGood().plusMillis(1);
        }
        return at.isAfter(test.found()) ? test.found() : at;
    }

    private static double share(DriftTrace.FailedTest test, Instant at) {
        return Duration.between(test.lastGood(), at).toMillis()
                / (double) Duration.between(test.lastGood(), test.found()).toMillis();
    }

    private static String role(DriftTrace.Suspicion suspicion, WiredRow own) {
        return switch (suspicion) {
            case JUDGED_BY_IT -> "The run was judged by " + own.code() + ".";
            case STEERED -> own.code() + " steered the oven; the load thermocouples told what came of it.";
            default -> own.code() + " only watched for over-temperature.";
        };
    }

    private Optional<RunVerdict> verdict(RunRow run, Samples samples, List<Thermocouple> thermocouples) {
        return judge.of(run, samples, thermocouples).verdict() instanceof Answer.Determined<RunVerdict> there
                ? Optional.of(there.value())
                : Optional.empty();
    }

    private static List<Thermocouple> drifted(List<Thermocouple> all, String column, double error_K) {
        return all.stream()
                .map(one -> one.channel().equals(column) ? one.alsoHighBy(error_K) : one)
                .toList();
    }

    private boolean cleared(
            RunRow run,
            Samples samples,
            List<Thermocouple> all,
            String column,
            double worst,
            Optional<RunVerdict> recorded) {
        if (recorded.isEmpty()) {
            return false;
        }
        Judged stands = recorded.get().judged();
        for (int part = SHARES; part > 0; part--) {
            Optional<RunVerdict> there = verdict(run, samples, drifted(all, column, worst * part / SHARES));
            if (there.isEmpty() || there.get().judged().compareTo(stands) > 0) {
                return false;
            }
        }
        return true;
    }

    private String why(double drift, double worst, Optional<RunVerdict> ifLinear, Optional<RunVerdict> ifWorst) {
        return ifLinear.flatMap(TraceJudge::worstFinding)
                .map(words -> "By a drift of " + formats.number(drift, 1) + " K: " + words)
                .or(() -> ifWorst.flatMap(TraceJudge::worstFinding)
                        .map(words -> "By the whole error of " + formats.number(worst, 1) + " K: " + words))
                .orElse("By part of the error it does not conform.");
    }

    private static Optional<String> worstFinding(RunVerdict verdict) {
        return Stream.concat(
                        verdict.steps().stream().flatMap(step -> step.findings().stream()), verdict.findings().stream())
                .filter(finding -> finding.judged() != Judged.CONFORMING)
                .max(java.util.Comparator.comparing(Finding::judged))
                .map(Finding::words);
    }

    /** Hours are told of ages alone: what a solution treatment or a bake is worth at a temperature of ageing says nothing. */
    private @Nullable Hours hours(
            DriftTrace.FailedTest test, Instant middle, RunRow run, Samples samples, List<Thermocouple> all) {
        Programme programme = programmes.revision(run.revisionId());
        Optional<MetalHeat> heat = programme.purpose() == Purpose.AGEING
                ? MetalHeat.of(programme.content().metals().get(0), settings)
                : Optional.empty();
        if (heat.isEmpty()) {
            return null;
        }
        double reference = programme.content().reference_degC() == null
                ? heat.get().reference_degC()
                : programme.content().reference_degC().doubleValue();
        Activation activation = run.activation() == null ? heat.get().activation() : run.activation();
        RunRules rules = RunJudge.rules(run);
        return DriftTrace.of(test, middle, samples, all, reference, activation, null, rules)
                        instanceof Answer.Determined<DriftTrace> there
                ? hours(reference, there.value())
                : null;
    }

    private static Hours hours(double reference, DriftTrace told) {
        return new Hours(
                reference,
                told.asRecorded().coldest().usual_h(),
                told.linear().coldest().usual_h(),
                told.worst().coldest().usual_h(),
                told.without() == null ? null : told.without().coldest().usual_h());
    }
}
