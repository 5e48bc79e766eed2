package org.trammel.calc.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.calc.thermal.OvenRuns.value;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A load thermocouple that reads 7 K high on 16 March and was right on 20 February: six runs told again. */
class DriftTraceTest {

    private static final DriftTrace.FailedTest TEST =
            new DriftTrace.FailedTest("TC-07", noon(LocalDate.of(2026, 2, 20)), noon(LocalDate.of(2026, 3, 16)), 7);

    /** Linear and worst equivalent hours as the invented workshop's story has them, rounded; met within 2 %. */
    private static final Map<String, double[]> STORY = Map.of(
            "HT-0223", new double[] {1.8, 7.74, 5.37},
            "HT-0224", new double[] {3.2, 7.00, 5.37},
            "HT-0225", new double[] {3.8, 12.04, 9.32},
            "HT-0226", new double[] {5.2, 6.07, 5.37},
            "HT-0227", new double[] {6.1, 10.00, 9.32},
            "HT-0228", new double[] {7.0, 5.37, 5.37});

    private static Instant noon(LocalDate day) {
        return day.atTime(12, 0).atZone(OvenRuns.ZONE).toInstant();
    }

    private static DriftTrace traced(OvenRuns.Row row, OvenProgramme programme) {
        return value(DriftTrace.of(
                TEST,
                noon(row.day()),
                row.samples(),
                OvenRuns.thermocouples(),
                row.value("reference_degC"),
                OvenRuns.activation(),
                programme,
                RunRules.usual()));
    }

    @ParameterizedTest
    @MethodSource("org.trammel.calc.thermal.OvenRuns#all")
    void everyRunComesToWhatTheScriptAndTheStorySay(OvenRuns.Row row) {
        DriftTrace trace = traced(row, null);
        assertThat(trace.linear_K()).isCloseTo(row.value("drift_K"), within(1e-5));
        assertThat(trace.asRecorded().coldest().usual_h()).isCloseTo(row.value("zero_h"), within(2e-3));
        assertThat(trace.linear().coldest().usual_h()).isCloseTo(row.value("linear_h"), within(2e-3));
        assertThat(trace.worst().coldest().usual_h()).isCloseTo(row.value("worst_h"), within(2e-3));
        assertThat(trace.without().coldest().usual_h()).isCloseTo(row.value("without_h"), within(2e-3));
        double[] story = STORY.get(row.run());
        assertThat(trace.linear_K()).isCloseTo(story[0], within(0.051));
        assertThat(trace.linear().coldest().usual_h()).isCloseTo(story[1], Percentage.withPercentage(2));
        assertThat(trace.worst().coldest().usual_h()).isCloseTo(story[2], Percentage.withPercentage(2));
        assertThat(trace.missing_h()).isCloseTo(row.value("zero_h") - row.value("linear_h"), within(4e-3));
        assertThat(trace.missingWorst_h()).isGreaterThanOrEqualTo(trace.missing_h());
    }

    /** 8 h within 5 K of 177 °C: with 5.25 K off the record the load never lay in the band for long. */
    @Test
    void theRunIsJudgedOnceMore() {
        OvenRuns.Row row = OvenRuns.all().get(3);
        OvenProgramme programme = value(OvenProgramme.of(List.of(OvenStep.of(177, 5, 8)), null, null));
        DriftTrace trace = traced(row, programme);
        assertThat(value(RunVerdict.of(row.samples(), OvenRuns.thermocouples(), programme, RunRules.usual()))
                        .judged())
                .isEqualTo(Judged.CONFORMING);
        assertThat(trace.verdictLinear().judged()).isEqualTo(Judged.NOT_CONFORMING);
        assertThat(trace.verdictWorst().judged()).isEqualTo(Judged.NOT_CONFORMING);
    }

    @Test
    void whoIsSuspectHangsOnTheDayAndTheRole() {
        List<Thermocouple> load = OvenRuns.thermocouples();
        assertThat(DriftTrace.suspicion(TEST, noon(LocalDate.of(2026, 2, 19)), load))
                .isEqualTo(DriftTrace.Suspicion.OUTSIDE);
        assertThat(DriftTrace.suspicion(TEST, noon(LocalDate.of(2026, 2, 20)), load))
                .isEqualTo(DriftTrace.Suspicion.OUTSIDE);
        assertThat(DriftTrace.suspicion(TEST, noon(LocalDate.of(2026, 2, 26)), load))
                .isEqualTo(DriftTrace.Suspicion.JUDGED_BY_IT);
        for (Map.Entry<ThermocoupleRole, DriftTrace.Suspicion> role : Map.of(
                        ThermocoupleRole.CONTROL, DriftTrace.Suspicion.STEERED,
                        ThermocoupleRole.OVER_TEMPERATURE, DriftTrace.Suspicion.WATCHED)
                .entrySet()) {
            assertThat(DriftTrace.suspicion(
                            TEST,
                            noon(LocalDate.of(2026, 3, 10)),
                            List.of(
                                    Thermocouple.of("TC-07", role.getKey()),
                                    Thermocouple.of("TC-08", ThermocoupleRole.LOAD))))
                    .isEqualTo(role.getValue());
        }
        assertThat(DriftTrace.suspicion(TEST, noon(LocalDate.of(2026, 3, 10)), List.of()))
                .isEqualTo(DriftTrace.Suspicion.NOT_IN_RUN);
        assertThat(EquivalentTimeTest.refusal(DriftTrace.of(
                        TEST,
                        noon(LocalDate.of(2026, 2, 19)),
                        OvenRuns.all().get(0).samples(),
                        load,
                        177,
                        OvenRuns.activation(),
                        null,
                        RunRules.usual())))
                .contains("was not judged by TC-07");
    }

    /** One that reads too low made the load hotter than recorded: more hours, nothing missing. */
    @Test
    void aThermocoupleThatReadsLowMadeTheLoadHotter() {
        OvenRuns.Row row = OvenRuns.all().get(0);
        DriftTrace trace = value(DriftTrace.of(
                new DriftTrace.FailedTest("TC-07", TEST.lastGood(), TEST.found(), -7),
                noon(row.day()),
                row.samples(),
                OvenRuns.thermocouples(),
                177,
                OvenRuns.activation(),
                null,
                RunRules.usual()));
        assertThat(trace.worst().hottest().usual_h())
                .isGreaterThan(trace.asRecorded().hottest().usual_h());
        assertThat(trace.missing_h()).isZero();
    }
}
