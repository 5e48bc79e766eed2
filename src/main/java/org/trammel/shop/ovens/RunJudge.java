package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.thermal.OvenProgramme;
import org.trammel.calc.thermal.RunRules;
import org.trammel.calc.thermal.RunVerdict;
import org.trammel.calc.thermal.Samples;
import org.trammel.calc.thermal.Thermocouple;
import org.trammel.calc.thermal.ThermocoupleCheck;
import org.trammel.calc.thermal.TopUp;
import org.trammel.calc.units.Answer;

/** Judges the record of a run against its programme, by what was settled as it started. */
@Component
class RunJudge {

    private static final Duration STILL = Duration.ofHours(1);

    private final WiredRepository wired;
    private final Programmes programmes;

    RunJudge(WiredRepository wired, Programmes programmes) {
        this.wired = wired;
        this.programmes = programmes;
    }

    /**
     * What a record says of its run.
     *
     * @param verdict without a value where the load has no record
     * @param signs thermocouples to look at; places to look, no verdicts
     * @param topUp what is missing, where equivalent hours are asked for and not reached
     */
    record Said(
            Answer<RunVerdict> verdict,
            List<ThermocoupleCheck.Sign> signs,
            @Nullable TopUp topUp) {}

    Said of(RunRow run, Samples samples) {
        return of(run, samples, thermocouples(run.id()));
    }

    /** The same by thermocouples that are taken to read otherwise. */
    Said of(RunRow run, Samples samples, List<Thermocouple> thermocouples) {
        Programme programme = programmes.revision(run.revisionId());
        Answer<RunVerdict> verdict = ProgrammeCheck.computed(programme.content(), run.activation())
                .then(asked -> RunVerdict.of(samples, thermocouples, asked, rules(run)));
        return new Said(
                verdict,
                ThermocoupleCheck.of(samples, gap(run), STILL),
                verdict instanceof Answer.Determined<RunVerdict> there ? topUp(run, programme, there.value()) : null);
    }

    List<Thermocouple> thermocouples(long runId) {
        return wired.findByRunIdOrderByCode(runId).stream()
                .map(WiredRow::computed)
                .toList();
    }

    OvenProgramme asked(RunRow run) {
        Answer<OvenProgramme> asked =
                ProgrammeCheck.computed(programmes.revision(run.revisionId()).content(), run.activation());
        if (asked instanceof Answer.Determined<OvenProgramme> there) {
            return there.value();
        }
        throw new IllegalStateException("An approved programme does not hold together: run " + run.code());
    }

    static Duration gap(RunRow run) {
        return Duration.ofMillis(Math.round(run.gapOrUsual_min() * 60_000));
    }

    static RunRules rules(RunRow run) {
        RunRules rules = RunRules.usual().withGap(gap(run)).surveyed(run.lowest_K(), run.highest_K());
        return run.startedAt() == null || run.stoppedAt() == null
                ? rules
                : rules.between(run.startedAt(), run.stoppedAt());
    }

    private static @Nullable TopUp topUp(RunRow run, Programme programme, RunVerdict verdict) {
        BigDecimal least = programme.content().least_h();
        if (least == null || verdict.worth() == null || run.activation() == null) {
            return null;
        }
        List<ProgrammeStep> steps = programme.content().steps();
        Answer<TopUp> answer = TopUp.of(
                least.doubleValue(),
                verdict.worth().coldest(),
                verdict.worth().reference_degC(),
                steps.get(steps.size() - 1).set_degC().doubleValue(),
                run.activation());
        return answer instanceof Answer.Determined<TopUp> there && there.value().missing_h() > 0 ? there.value() : null;
    }
}
