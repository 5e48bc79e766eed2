package org.trammel.calc.thermal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * A run against its programme, from what the thermocouples recorded.
 *
 * <p>What is recorded before the run began and after it ended counts for nothing but what must never be reached.
 * A step's time runs from where the coldest load thermocouple first enters its band until it first enters the next step's.
 * A figure that meets its limit only by the lines over gaps of the record, or only by one of the activation energies held
 * possible, is undecided; so is a limit upward where a gap is long enough to hide that it was passed. Limits belong to what they allow.
 *
 * @param judged the worst of all findings
 * @param steps in the order of the programme
 * @param findings on the run as a whole
 * @param worth equivalent time, where the programme asks for it
 * @param gaps of the record, the first hundred
 */
public record RunVerdict(
        Judged judged,
        List<StepResult> steps,
        List<Finding> findings,
        @Nullable EquivalentTime worth,
        List<LoadTrace.Stretch> gaps) {

    private static final int MOST_GAPS = 100;

    /** Told and recorded times may differ by so much before a run counts as recorded in part. */
    private static final double ENDS_MIN = 5;

    public RunVerdict {
        steps = List.copyOf(steps);
        findings = List.copyOf(findings);
        gaps = List.copyOf(gaps);
    }

    /** The same with one finding more, on what the record does not show. */
    public RunVerdict with(Finding finding) {
        List<Finding> more = new ArrayList<>(findings);
        more.add(finding);
        return new RunVerdict(judged.worse(finding.judged()), steps, more, worth, gaps);
    }

    /** Judges; without an answer where the load has no record. */
    public static Answer<RunVerdict> of(
            Samples samples, List<Thermocouple> thermocouples, OvenProgramme programme, RunRules rules) {
        Answer<OvenProgramme> checked = OvenProgramme.of(programme.steps(), programme.never_degC(), programme.worth());
        return checked.then(sound -> LoadTrace.of(samples, thermocouples, rules.longestGap()))
                .then(trace -> worth(rules.of(trace), programme)
                        .then(worth -> Answer.of(
                                judged(samples, thermocouples, trace, programme, rules, worth.orElse(null)))));
    }

    private static Answer<Optional<EquivalentTime>> worth(LoadTrace trace, OvenProgramme programme) {
        OvenProgramme.Worth asked = programme.worth();
        return asked == null
                ? Answer.of(Optional.empty())
                : EquivalentTime.of(trace, asked.reference_degC(), asked.activation())
                        .then(time -> Answer.of(Optional.of(time)));
    }

    private static RunVerdict judged(
            Samples samples,
            List<Thermocouple> thermocouples,
            LoadTrace whole,
            OvenProgramme programme,
            RunRules rules,
            @Nullable EquivalentTime worth) {
        LoadTrace trace = rules.of(whole);
        List<StepResult> steps = new StepSearch(trace, rules).results(programme.steps());
        List<Finding> findings = new ArrayList<>();
        covered(findings, whole, rules);
        if (programme.never_degC() != null) {
            findings.add(never(samples, thermocouples, programme.never_degC(), trace.hidden_h()));
        }
        if (programme.worth() != null && worth != null) {
            worth(findings, programme.worth(), worth, trace.hidden_h());
        }
        Judged judged = Judged.CONFORMING;
        for (StepResult step : steps) {
            judged = judged.worse(step.judged());
        }
        for (Finding finding : findings) {
            judged = judged.worse(finding.judged());
        }
        return new RunVerdict(judged, steps, findings, worth, trace.gaps(MOST_GAPS));
    }

    /** Whether the record is that of the run. */
    private static void covered(List<Finding> findings, LoadTrace trace, RunRules rules) {
        if (rules.began() == null || rules.ended() == null) {
            return;
        }
        if (!trace.until().isAfter(rules.began()) || !trace.from().isBefore(rules.ended())) {
            findings.add(new Finding(
                    Judged.NOT_CONFORMING, "The record lies outside the time of the run: it is that of another run."));
            return;
        }
        double late_min = new LoadTrace.Stretch(rules.began(), trace.from()).hours() * 60;
        double early_min = new LoadTrace.Stretch(trace.until(), rules.ended()).hours() * 60;
        if (late_min > ENDS_MIN || early_min > ENDS_MIN) {
            findings.add(new Finding(
                    Judged.CONFORMING,
                    "The record begins " + Said.figure(Math.max(0, late_min), 0)
                            + " min behind the begin of the run and"
                            + " ends " + Said.figure(Math.max(0, early_min), 0) + " min before its end; what is not"
                            + " recorded does not count."));
        }
    }

    private static Finding never(
            Samples samples, List<Thermocouple> thermocouples, double never_degC, double hidden_h) {
        String hottest = "";
        double greatest = Double.NEGATIVE_INFINITY;
        for (Thermocouple thermocouple : thermocouples) {
            int channel = samples.channel(thermocouple.channel());
            for (int row = 0; channel >= 0 && row < samples.rows(); row++) {
                if (samples.has(channel, row)) {
                    double degC = thermocouple.corrected_degC(samples.degC(channel, row));
                    if (degC > greatest) {
                        greatest = degC;
                        hottest = thermocouple.channel();
                    }
                }
            }
        }
        return Finding.upTo(
                greatest < never_degC,
                hidden_h,
                hottest + " came to " + Said.degC(greatest) + ", and " + Said.degC(never_degC)
                        + " must not be reached.");
    }

    private static void worth(List<Finding> findings, OvenProgramme.Worth asked, EquivalentTime time, double hidden_h) {
        Double least = asked.least_h();
        if (least != null) {
            EquivalentHours got = time.coldest();
            double recorded = got.usual_h() - time.inGaps().usual_h();
            Judged judged = !reaches(got.usual_h(), least)
                    ? Judged.NOT_CONFORMING
                    : reaches(recorded, least) && reaches(got.least_h(), least) ? Judged.CONFORMING : Judged.UNDECIDED;
            findings.add(new Finding(
                    judged, said("coldest", got, asked) + "; at least " + Said.hours(least) + " are asked for."));
        }
        Double most = asked.most_h();
        if (most != null) {
            EquivalentHours got = time.hottest();
            String words = said("hottest", got, asked) + "; at most " + Said.hours(most) + " are allowed.";
            boolean met = reaches(most, got.usual_h());
            findings.add(
                    met && !reaches(most, got.greatest_h())
                            ? new Finding(Judged.UNDECIDED, words)
                            : Finding.upTo(met, hidden_h, words));
        }
    }

    private static String said(String which, EquivalentHours got, OvenProgramme.Worth asked) {
        return "By the " + which + " load thermocouple the run is worth " + Said.hours(got.usual_h()) + " at "
                + Said.degC(asked.reference_degC()) + " (" + Said.hours(got.least_h()) + " to "
                + Said.hours(got.greatest_h()) + " by the activation energies held possible)";
    }

    /** Whether hours come to a limit; what a sum loses in its last digits is forgiven. */
    static boolean reaches(double hours, double limit) {
        return hours >= limit - 1e-7;
    }
}
