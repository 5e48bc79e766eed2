package org.trammel.calc.thermal;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * What a run was in truth if one of its thermocouples has drifted since its last good test.
 *
 * <pre>
 * linear       error at the run = found error · (run − last good) / (found − last good)
 * worst case   the whole found error from the day after the last good test on
 * </pre>
 *
 * The stored readings are corrected by that error and judged once more; nothing is scaled. Only runs in which the
 * thermocouple told the temperature of the load are judged otherwise than before: as control it steered the oven and the
 * load thermocouples told what came of it; as over-temperature it only watched.
 *
 * @param linear_K error taken for the run under linear drift
 * @param worst_K error under the worst case
 * @param asRecorded equivalent time of the record as it stands
 * @param linear equivalent time under linear drift
 * @param worst equivalent time in the worst case
 * @param without equivalent time by the other load thermocouples alone, null where there is none
 * @param verdictLinear the run against its programme under linear drift, null where no programme was given
 * @param verdictWorst the same in the worst case
 */
public record DriftTrace(
        double linear_K,
        double worst_K,
        EquivalentTime asRecorded,
        EquivalentTime linear,
        EquivalentTime worst,
        @Nullable EquivalentTime without,
        @Nullable RunVerdict verdictLinear,
        @Nullable RunVerdict verdictWorst) {

    /**
     * A failed accuracy test.
     *
     * @param channel the thermocouple
     * @param lastGood when it was last found right
     * @param found when it was found wrong, later
     * @param error_K how much too high it read then; below 0 too low
     */
    public record FailedTest(String channel, Instant lastGood, Instant found, double error_K) {

        public FailedTest {
            if (!found.isAfter(lastGood)) {
                throw new IllegalArgumentException("A test fails after the last good one: " + lastGood + ", " + found);
            }
        }

        /** Error under linear drift. */
        double linear_K(Instant at) {
            double share = Duration.between(lastGood, at).toMillis()
                    / (double) Duration.between(lastGood, found).toMillis();
            return error_K * Math.max(0, Math.min(1, share));
        }
    }

    /** How a run stands to the failed test. */
    public enum Suspicion {
        /** It ran before the last good test or after the failed one. */
        OUTSIDE,
        /** The thermocouple took no part. */
        NOT_IN_RUN,
        /** It only watched for over-temperature. */
        WATCHED,
        /** It steered the oven; the load thermocouples told the truth. */
        STEERED,
        /** The run was judged by it. */
        JUDGED_BY_IT
    }

    /** Whether a run is to be looked at again. */
    public static Suspicion suspicion(FailedTest test, Instant ranAt, List<Thermocouple> thermocouples) {
        if (!ranAt.isAfter(test.lastGood()) || ranAt.isAfter(test.found())) {
            return Suspicion.OUTSIDE;
        }
        Suspicion worst = Suspicion.NOT_IN_RUN;
        for (Thermocouple thermocouple : thermocouples) {
            if (thermocouple.channel().equals(test.channel())) {
                Suspicion here = switch (thermocouple.role()) {
                    case LOAD -> Suspicion.JUDGED_BY_IT;
                    case CONTROL -> Suspicion.STEERED;
                    case OVER_TEMPERATURE -> Suspicion.WATCHED;
                };
                worst = here.compareTo(worst) > 0 ? here : worst;
            }
        }
        return worst;
    }

    /**
     * Judges a run again that was judged by the thermocouple.
     *
     * @param ranAt the day that the drift is taken for
     * @param programme of the run, or null for the equivalent time alone
     */
    public static Answer<DriftTrace> of(
            FailedTest test,
            Instant ranAt,
            Samples samples,
            List<Thermocouple> thermocouples,
            double reference_degC,
            Activation activation,
            @Nullable OvenProgramme programme,
            RunRules rules) {
        if (suspicion(test, ranAt, thermocouples) != Suspicion.JUDGED_BY_IT) {
            return Answer.none(
                    "thermocouples",
                    "The run was not judged by " + test.channel() + " between its last good test and the failed one.");
        }
        double linear = test.linear_K(ranAt);
        List<Thermocouple> ifLinear = drifted(thermocouples, test.channel(), linear);
        List<Thermocouple> ifWorst = drifted(thermocouples, test.channel(), test.error_K());
        List<Thermocouple> others = thermocouples.stream()
                .filter(thermocouple -> !thermocouple.channel().equals(test.channel()))
                .toList();
        Retold retold = new Retold(samples, reference_degC, activation, rules);
        EquivalentTime without =
                retold.worth(others) instanceof Answer.Determined<EquivalentTime> there ? there.value() : null;
        RunVerdict verdictLinear = programme == null ? null : retold.verdict(ifLinear, programme);
        RunVerdict verdictWorst = programme == null ? null : retold.verdict(ifWorst, programme);
        return retold.worth(thermocouples)
                .then(recorded -> retold.worth(ifLinear)
                        .then(asLinear -> retold.worth(ifWorst)
                                .then(asWorst -> Answer.of(new DriftTrace(
                                        linear,
                                        test.error_K(),
                                        recorded,
                                        asLinear,
                                        asWorst,
                                        without,
                                        verdictLinear,
                                        verdictWorst)))));
    }

    private static List<Thermocouple> drifted(List<Thermocouple> thermocouples, String channel, double error_K) {
        return thermocouples.stream()
                .map(thermocouple ->
                        thermocouple.channel().equals(channel) ? thermocouple.alsoHighBy(error_K) : thermocouple)
                .toList();
    }

    /** What the usual activation energy misses under linear drift against the record as it stands; 0 if it is more. */
    public double missing_h() {
        return Math.max(0, asRecorded.coldest().usual_h() - linear.coldest().usual_h());
    }

    /** The same in the worst case. */
    public double missingWorst_h() {
        return Math.max(0, asRecorded.coldest().usual_h() - worst.coldest().usual_h());
    }

    /** One record, told by thermocouples that are taken to read this or that. */
    private record Retold(Samples samples, double reference_degC, Activation activation, RunRules rules) {

        Answer<EquivalentTime> worth(List<Thermocouple> thermocouples) {
            return LoadTrace.of(samples, thermocouples, rules.longestGap())
                    .then(trace -> EquivalentTime.of(rules.of(trace), reference_degC, activation));
        }

        @Nullable
        RunVerdict verdict(List<Thermocouple> thermocouples, OvenProgramme programme) {
            return RunVerdict.of(samples, thermocouples, programme, rules)
                            instanceof Answer.Determined<RunVerdict> there
                    ? there.value()
                    : null;
        }
    }
}
