package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.thermal.Activation;
import org.trammel.calc.thermal.EquivalentTime;
import org.trammel.calc.thermal.Finding;
import org.trammel.calc.thermal.Judged;
import org.trammel.calc.thermal.LoadTrace;
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

    private static final Duration STILL = Duration.ofMinutes(10);

    private final WiredRepository wired;
    private final QuenchRepository quenches;
    private final Programmes programmes;
    private final CureJudge cures;

    RunJudge(WiredRepository wired, QuenchRepository quenches, Programmes programmes, CureJudge cures) {
        this.wired = wired;
        this.quenches = quenches;
        this.programmes = programmes;
        this.cures = cures;
    }

    /**
     * What a record says of its run.
     *
     * @param verdict without a value where the load has no record
     * @param signs thermocouples to look at; places to look, no verdicts
     * @param worth equivalent hours of a run that ages or adds to what a frame has seen; null of another
     * @param topUp what is missing, where equivalent hours are asked for and not reached
     * @param noSheet lots of powder whose sheet was not entered, so that the run is not compared with them
     */
    record Said(
            Answer<RunVerdict> verdict,
            List<ThermocoupleCheck.Sign> signs,
            @Nullable EquivalentTime worth,
            @Nullable TopUp topUp,
            List<String> noSheet) {}

    Said of(RunRow run, Samples samples) {
        return of(run, samples, thermocouples(run.id()));
    }

    /** The same by thermocouples that are taken to read otherwise. */
    Said of(RunRow run, Samples samples, List<Thermocouple> thermocouples) {
        Programme programme = programmes.revision(run.revisionId());
        Answer<RunVerdict> verdict = ProgrammeCheck.computed(programme.content(), run.activation())
                .then(asked -> RunVerdict.of(samples, thermocouples, asked, rules(run)))
                .then(told -> Answer.of(quench(run, programme).map(told::with).orElse(told)))
                .then(told -> Answer.of(cured(run, programme, samples, thermocouples, told)));
        EquivalentTime worth = worth(run, programme, samples, thermocouples);
        return new Said(
                verdict,
                ThermocoupleCheck.of(samples, gap(run), STILL),
                worth,
                topUp(run, programme, worth),
                cures.unknown(run, programme));
    }

    /** With what it did to each powder in it. */
    private RunVerdict cured(
            RunRow run, Programme programme, Samples samples, List<Thermocouple> thermocouples, RunVerdict told) {
        RunVerdict all = told;
        if (LoadTrace.of(samples, thermocouples, gap(run)) instanceof Answer.Determined<LoadTrace> trace) {
            for (Finding finding : cures.of(run, programme, rules(run).of(trace.value()))) {
                all = all.with(finding);
            }
        }
        return all;
    }

    /** Its verdict as it is now: the sheet of a powder may have been entered since the record was taken. */
    @Nullable
    Judged judged(RunRow run, Samples samples) {
        return of(run, samples).verdict() instanceof Answer.Determined<RunVerdict> there
                ? there.value().judged()
                : null;
    }

    /** The time from door to water, which no logger records: without it a run that asks for it is undecided. */
    private Optional<Finding> quench(RunRow run, Programme programme) {
        BigDecimal most = programme.content().quenchDelay_s();
        if (most == null) {
            return Optional.empty();
        }
        String allowed = "; at most " + most.toPlainString() + " s are allowed.";
        return Optional.of(quenches.findFirstByRunIdOrderByIdDesc(run.id())
                .map(row -> row.quench(""))
                .map(noted -> new Finding(
                        noted.delay_s().compareTo(most) <= 0
                                ? Judged.CONFORMING
                                : noted.least_s().compareTo(most) > 0 ? Judged.NOT_CONFORMING : Judged.UNDECIDED,
                        "From the door to the water it took "
                                + (noted.sharp() ? "" : noted.least_s().toPlainString() + " to ")
                                + noted.delay_s().toPlainString() + " s"
                                + (noted.late() ? ", a late entry" : ", by two taps") + allowed))
                .orElseGet(() ->
                        new Finding(Judged.UNDECIDED, "Nobody noted the time from the door to the water" + allowed)));
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

    /** At which equivalent hours are counted: the programme's own, or the temperature of its last step. */
    static double reference_degC(Programme programme) {
        BigDecimal asked_degC = programme.content().reference_degC();
        return asked_degC == null ? last_degC(programme) : asked_degC.doubleValue();
    }

    private static double last_degC(Programme programme) {
        List<ProgrammeStep> steps = programme.content().steps();
        return steps.get(steps.size() - 1).set_degC().doubleValue();
    }

    private static @Nullable EquivalentTime worth(
            RunRow run, Programme programme, Samples samples, List<Thermocouple> thermocouples) {
        Activation activation = run.activation();
        if (activation == null || programme.purpose() == Purpose.SOLUTION) {
            return null;
        }
        Answer<EquivalentTime> answer = LoadTrace.of(samples, thermocouples, gap(run))
                .then(trace -> EquivalentTime.of(rules(run).of(trace), reference_degC(programme), activation));
        return answer instanceof Answer.Determined<EquivalentTime> there ? there.value() : null;
    }

    /** What an age fell short of, and what that takes at the temperature of its last step; null where nothing is missing. */
    private static @Nullable TopUp topUp(RunRow run, Programme programme, @Nullable EquivalentTime worth) {
        Activation activation = run.activation();
        if (activation == null || worth == null || !programme.purpose().ages()) {
            return null;
        }
        double last_degC = last_degC(programme);
        double reference_degC = reference_degC(programme);
        BigDecimal least = programme.content().least_h();
        double wanted_h = least == null
                ? programme.soaks().stream()
                        .mapToDouble(soak -> activation
                                .equivalent(soak.hours(), soak.degC(), reference_degC)
                                .usual_h())
                        .sum()
                : least.doubleValue();
        Answer<TopUp> answer = TopUp.of(wanted_h, worth.coldest(), reference_degC, last_degC, activation);
        return answer instanceof Answer.Determined<TopUp> there && there.value().missing_h() > 0 ? there.value() : null;
    }
}
