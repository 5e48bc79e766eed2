package org.trammel.calc.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.calc.thermal.OvenRuns.value;

import java.util.List;
import org.junit.jupiter.api.Test;

class HeatLedgerTest {

    private static EquivalentHours bake(double degC, double minutes, double reference) {
        return OvenRuns.activation().equivalent(minutes / 60, degC, reference);
    }

    /** Worked by hand: three bakes of 20 min at 160 °C are 2.3 h at 149, 14 % of 16 h; one at 200 °C adds 11.4 h, 71 %. */
    @Test
    void theNextBakeIsSummedBeforeItIsDone() {
        List<EquivalentHours> three = List.of(bake(160, 20, 149), bake(160, 20, 149), bake(160, 20, 149));
        HeatLedger ledger = value(HeatLedger.of(16, 0.25, three, null));
        assertThat(ledger.used().usual_h()).isCloseTo(2.3, within(0.02));
        assertThat(ledger.share()).isCloseTo(0.14, within(0.005));
        assertThat(ledger.left_h()).isCloseTo(4 - 2.3, within(0.02));
        assertThat(ledger.holds()).isTrue();
        assertThat(ledger.words(true))
                .isEqualTo("The frame has seen 2.3 h since its age of 16 h, 14.4 % of it; 25 % are"
                        + " allowed, 1.7 h are left.");
        HeatLedger hot = value(HeatLedger.of(16, 0.25, List.of(), bake(200, 20, 149)));
        assertThat(hot.next().usual_h()).isCloseTo(11.4, within(0.05));
        assertThat(hot.shareAfter()).isCloseTo(0.71, within(0.005));
        assertThat(hot.holds()).isFalse();
        HeatLedger both = value(HeatLedger.of(16, 0.25, three, bake(200, 20, 149)));
        assertThat(ledger.words(false))
                .isEqualTo("The frame has seen 2.3 h in ovens, 14.4 % of a usual age of 16 h; no age of it is recorded"
                        + " here; 25 % are allowed, 1.7 h are left.");
        assertThat(both.words(true))
                .isEqualTo("The frame has seen 2.3 h since its age of 16 h, 14.4 % of it; the next bake adds"
                        + " 11.39 h and makes 85.6 %, of 25 % allowed.");
    }

    /** Worked by hand: 20 min at 190 °C are 0.79 h at 177, 10 % of 8 h. */
    @Test
    void aBakeOnTheOtherAlloyTakesATenth() {
        HeatLedger ledger = value(HeatLedger.of(8, 0.25, List.of(bake(190, 20, 177)), null));
        assertThat(ledger.used().usual_h()).isCloseTo(0.79, within(0.005));
        assertThat(ledger.share()).isCloseTo(0.10, within(0.005));
    }

    @Test
    void theLimitItselfIsAllowed() {
        EquivalentHours two = new EquivalentHours(2, 2, 2);
        assertThat(value(HeatLedger.of(16, 0.25, List.of(two), two)).holds()).isTrue();
        assertThat(value(HeatLedger.of(16, 0.25, List.of(two), new EquivalentHours(2.0001, 2, 2)))
                        .holds())
                .isFalse();
        assertThat(EquivalentTimeTest.refusal(HeatLedger.of(0, 0.25, List.of(), null)))
                .isEqualTo("The age, 0 h, is not above 0.");
        assertThat(EquivalentTimeTest.refusal(HeatLedger.of(8, 0.25, List.of(new EquivalentHours(1, -1, 1)), null)))
                .contains("is not 0 or above");
    }

    /** 5.37 of 8 h at 177 °C: 2.63 h more there; at 170 °C by 0.6154 an hour of 115 kJ/mol 4.2 h. */
    @Test
    void aTopUpMakesUpWhatIsMissing() {
        EquivalentHours got = new EquivalentHours(5.37, 5.8, 5.2);
        TopUp same = value(TopUp.of(8, got, 177, 177, OvenRuns.activation()));
        assertThat(same.missing_h()).isCloseTo(2.63, within(1e-9));
        assertThat(same.soak_h()).isCloseTo(2.63, within(1e-9));
        assertThat(same.longestSoak_h()).isCloseTo(2.8, within(1e-9));
        assertThat(same.shortestSoak_h()).isCloseTo(2.2, within(1e-9));
        TopUp cooler = value(TopUp.of(8, got, 177, 170, OvenRuns.activation()));
        assertThat(cooler.soak_h()).isCloseTo(2.63 / 0.6154, within(0.01));
        assertThat(value(TopUp.of(8, new EquivalentHours(9, 9, 9), 177, 177, OvenRuns.activation()))
                        .soak_h())
                .isZero();
    }

    private static ProgrammeWorth worth(String alloy, double degC, double hours, double reference) {
        return value(ProgrammeWorth.of(
                List.of(new AgeingSchedule.Soak(degC, hours)),
                reference,
                OvenRuns.activation(),
                AgeingSchedule.known().stream()
                        .filter(schedule -> schedule.alloy().equals(alloy))
                        .toList()));
    }

    /** A day at 180 °C, computed apart: 29.4 h at 177 °C, 3.3 to 3.7 times eight hours there; 226 h at 149 °C for the other. */
    @Test
    void aDayAt180IsSetBesideWhatIsPublished() {
        ProgrammeWorth day = worth("6061", 180, 24, 177);
        assertThat(day.hours().usual_h()).isCloseTo(29.4, within(0.05));
        assertThat(day.words()).endsWith("published ages: over-aged against them, hardness required.");
        ProgrammeWorth.Beside table = day.beside().get(1);
        assertThat(table.schedule().soaks()).containsExactly(new AgeingSchedule.Soak(176.7, 8));
        assertThat(table.least_times()).isGreaterThan(3.3);
        assertThat(table.greatest_times()).isLessThan(3.9);
        assertThat(worth("7005", 180, 24, 149).hours().usual_h()).isCloseTo(226, within(0.5));
        assertThat(worth("6061", 176.7, 8, 177).words()).contains("times");
        assertThat(worth("6061", 120, 1, 177).words()).contains("under-aged");
        assertThat(worth("unknown", 177, 8, 177).words()).startsWith("No published age of this alloy is known");
    }

    @Test
    void everyScheduleNamesItsSource() {
        assertThat(AgeingSchedule.known()).hasSizeGreaterThan(15).allSatisfy(schedule -> {
            assertThat(schedule.source()).isNotBlank();
            assertThat(schedule.soaks()).isNotEmpty();
        });
    }

    @Test
    void aScreeningNeverReleases() {
        for (HardnessMethod method : HardnessMethod.values()) {
            assertThat(method.words().contains("screens only"))
                    .as(method.name())
                    .isNotEqualTo(method.decides());
        }
    }
}
