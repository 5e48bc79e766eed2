package org.trammel.shop.backtraces;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.thermal.DriftTrace;
import org.trammel.calc.thermal.Finding;
import org.trammel.calc.thermal.Judged;
import org.trammel.calc.thermal.RunVerdict;
import org.trammel.calc.thermal.Samples;
import org.trammel.calc.thermal.Thermocouple;
import org.trammel.calc.units.Answer;
import org.trammel.shop.ovens.Run;
import org.trammel.shop.ovens.RunHead;
import org.trammel.shop.ovens.RunsRetold;
import org.trammel.shop.web.Formats;

/**
 * Tells what a run was in truth if a thermocouple of it drifted. Its stored record is corrected and judged once more; the
 * drift is taken for the middle of the run.
 */
@Component
class TraceJudge {

    /** An error between none and the one found can spoil a run that both ends leave whole, so that some between are tried. */
    private static final int SHARES = 8;

    private final RunsRetold runs;
    private final Formats formats;

    TraceJudge(RunsRetold runs, Formats formats) {
        this.runs = runs;
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

    Told tell(OvenTraceRow trace, RunHead run) {
        Run.Wired own = runs.wired(run.id(), trace.thermocouple());
        // What the run was corrected by already is part of what was found.
        double worst = trace.error_K().subtract(own.error_K()).doubleValue();
        DriftTrace.FailedTest test = new DriftTrace.FailedTest(own.logColumn(), trace.since(), trace.foundAt(), worst);
        Instant middle = within(test, middle(run, trace.foundAt()));
        DriftTrace.Suspicion suspicion =
                DriftTrace.suspicion(test, middle, List.of(Thermocouple.of(own.logColumn(), own.role())));
        double drift = worst * share(test, middle);
        Optional<RunsRetold.Recorded> kept = runs.recorded(run.id());
        if (kept.isEmpty()) {
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
        Samples samples = kept.get().samples();
        List<Thermocouple> all = kept.get().thermocouples();
        Optional<RunVerdict> recorded = runs.verdict(run.id(), samples, all);
        Optional<RunVerdict> ifLinear = runs.verdict(run.id(), samples, drifted(all, own.logColumn(), drift));
        Optional<RunVerdict> ifWorst = runs.verdict(run.id(), samples, drifted(all, own.logColumn(), worst));
        boolean cleared = cleared(run, samples, all, own.logColumn(), worst, recorded);
        return new Told(
                suspicion,
                kept.get().logId(),
                drift,
                worst,
                hours(test, middle, run, kept.get()),
                recorded.map(RunVerdict::judged).orElse(null),
                ifLinear.map(RunVerdict::judged).orElse(null),
                ifWorst.map(RunVerdict::judged).orElse(null),
                cleared,
                role(suspicion, own) + " "
                        + (cleared
                                ? "Its verdict is the same whatever of the error it had."
                                : why(drift, worst, ifLinear, ifWorst)));
    }

    private static Instant middle(RunHead run, Instant found) {
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

    private static String role(DriftTrace.Suspicion suspicion, Run.Wired own) {
        return switch (suspicion) {
            case JUDGED_BY_IT -> "The run was judged by " + own.code() + ".";
            case STEERED -> own.code() + " steered the oven; the load thermocouples told what came of it.";
            default -> own.code() + " only watched for over-temperature.";
        };
    }

    private static List<Thermocouple> drifted(List<Thermocouple> all, String column, double error_K) {
        return all.stream()
                .map(one -> one.channel().equals(column) ? one.alsoHighBy(error_K) : one)
                .toList();
    }

    private boolean cleared(
            RunHead run,
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
            Optional<RunVerdict> there = runs.verdict(run.id(), samples, drifted(all, column, worst * part / SHARES));
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

    private @Nullable Hours hours(DriftTrace.FailedTest test, Instant middle, RunHead run, RunsRetold.Recorded kept) {
        return runs.counting(run.id())
                .map(by -> DriftTrace.of(
                                        test,
                                        middle,
                                        kept.samples(),
                                        kept.thermocouples(),
                                        by.reference_degC(),
                                        by.activation(),
                                        null,
                                        kept.rules())
                                instanceof Answer.Determined<DriftTrace> there
                        ? hours(by.reference_degC(), there.value())
                        : null)
                .orElse(null);
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
