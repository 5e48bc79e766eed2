package org.trammel.calc.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.calc.thermal.OvenRuns.value;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CureWindowTest {

    private static final List<CurePair> USUAL = List.of(new CurePair(200, 10), new CurePair(180, 20));

    private static CureWindow window(List<CurePair> pairs) {
        return value(CureWindow.of(pairs, null, CureWindow.USUAL_LEAST, CureWindow.USUAL_MOST));
    }

    /** 10 min at 200 °C and 20 at 180 °C of metal, as five powder sheets print: 61.78 kJ/mol; minutes computed apart. */
    @ParameterizedTest
    @CsvSource({
        "160, 42.64",
        "170, 28.96",
        "175, 24.02",
        "180, 20.00",
        "185, 16.72",
        "190, 14.04",
        "195, 11.83",
        "200, 10.00",
        "205, 8.49",
        "210, 7.22"
    })
    void twoPairsOfASheetGiveTheMinutesBetween(double degC, double minutes) {
        CureWindow window = window(USUAL);
        assertThat(window.energy_kJPerMol()).isCloseTo(61.78, within(0.01));
        assertThat(window.minutesAt(degC)).isCloseTo(minutes, within(0.005));
    }

    /** 15 min at 190 °C and 10 at 200 °C: 73.9 kJ/mol, computed apart. */
    @Test
    void otherPairsGiveOtherEnergies() {
        assertThat(window(List.of(new CurePair(190, 15), new CurePair(200, 10))).energy_kJPerMol())
                .isCloseTo(73.9, within(0.05));
    }

    /** A third pair on the line of two changes nothing. */
    @Test
    void morePairsAreFitted() {
        CureWindow two = window(USUAL);
        CureWindow three =
                window(List.of(new CurePair(200, 10), new CurePair(190, two.minutesAt(190)), new CurePair(180, 20)));
        assertThat(three.energy_kJPerMol()).isCloseTo(two.energy_kJPerMol(), within(1e-9));
        assertThat(three.minutesAt(170)).isCloseTo(two.minutesAt(170), within(1e-9));
    }

    /** A powder that cures low has its own pair: 20 min at 160 °C. */
    @Test
    void onePairNeedsAnEnergyAndIsMetAtItsOwnTemperature() {
        CureWindow low =
                value(CureWindow.of(List.of(new CurePair(160, 20)), CureWindow.TYPICAL_POWDER_KJ_PER_MOL, 1, 1.5));
        assertThat(low.minutesAt(160)).isEqualTo(20);
        assertThat(value(low.of(160, 20)).judged()).isEqualTo(Judged.CONFORMING);
        assertThat(EquivalentTimeTest.refusal(CureWindow.of(List.of(new CurePair(160, 20)), null, 1, 1.5)))
                .contains("a second pair or an activation energy is needed");
    }

    @ParameterizedTest
    @CsvSource({
        "200, 10, CONFORMING",
        "200, 9.9, NOT_CONFORMING",
        "200, 15, CONFORMING",
        "200, 15.1, NOT_CONFORMING",
        "180, 20, CONFORMING",
        "160, 20, NOT_CONFORMING"
    })
    void theWindowHasTwoSides(double degC, double minutes, Judged judged) {
        assertThat(value(window(USUAL).of(degC, minutes)).judged()).isEqualTo(judged);
    }

    /** The metal lags the air: half an hour to 190 °C, 14.04 min there; the way up adds what the sum of steps says. */
    @Test
    void theWayUpCountsByTheMetal() {
        Samples samples = EquivalentTimeTest.line(0, 20, 30, 190, 44.04, 190, 50, 40);
        CureWindow.Cure cure = value(window(USUAL).of(EquivalentTimeTest.trace(samples)));
        double summed = 0;
        for (double minute = 0.0005; minute < 50; minute += 0.001) {
            double degC = EquivalentTimeTest.drawn(samples, 0, minute * 60);
            summed += 0.001
                    / (10 * Math.exp(Math.log(2) * (1 / (degC + 273.15) - 1 / 473.15) / (1 / 453.15 - 1 / 473.15)));
        }
        assertThat(cure.least_share()).isCloseTo(summed, within(1e-4)).isBetween(1.0, 1.5);
        assertThat(cure.atTemperature_min()).isCloseTo(14.04 + 10 * 30 / 170.0 + 10 * 5.96 / 150, within(1e-6));
        assertThat(cure.judged()).isEqualTo(Judged.CONFORMING);
        assertThat(cure.hottest_degC()).isEqualTo(190);
        assertThat(cure.beyondSheet()).isFalse();
        assertThat(value(window(USUAL).of(210, 8)).beyondSheet()).isTrue();
    }

    /** The coldest metal decides on too little, the hottest on too much. */
    @Test
    void twoThermocouplesDecideOnTwoSides() {
        Samples samples = Samples.of(
                List.of("A", "B"), new long[] {0, 600_000}, new int[][] {{190_000, 190_000}, {215_000, 215_000}});
        CureWindow.Cure cure = value(window(USUAL).of(EquivalentTimeTest.trace(samples)));
        assertThat(cure.least_share()).isCloseTo(10 / 14.04, within(1e-3));
        assertThat(cure.findings())
                .extracting(Finding::judged)
                .containsExactly(Judged.NOT_CONFORMING, Judged.NOT_CONFORMING);
    }

    @Test
    void sheetsThatCannotBeAreRefused() {
        assertThat(EquivalentTimeTest.refusal(CureWindow.of(List.of(), null, 1, 1.5)))
                .contains("gives no minutes");
        assertThat(EquivalentTimeTest.refusal(
                        CureWindow.of(List.of(new CurePair(200, 20), new CurePair(180, 10)), null, 1, 1.5)))
                .contains("cure no faster when hotter");
        assertThat(EquivalentTimeTest.refusal(CureWindow.of(USUAL, null, 1, 1))).contains("is not above the least");
        assertThat(EquivalentTimeTest.refusal(CureWindow.of(USUAL, 60.0, 1, 1.5)))
                .contains("give the activation energy");
        assertThat(EquivalentTimeTest.refusal(CureWindow.of(List.of(new CurePair(200, -1)), 60.0, 1, 1.5)))
                .contains("The cure time, −1 min, is not above 0.");
    }

    /** 12 °C into air of 21 °C, goal 17.9 °C: τ ln(9 / 3.1). */
    @Test
    void aColdFrameWaits() {
        assertThat(value(WarmUp.hours(2, 21, 12, 17.9))).isCloseTo(2 * Math.log(9 / 3.1), within(1e-9));
        assertThat(value(WarmUp.hours(2, 21, 18, 17.9))).isZero();
        assertThat(EquivalentTimeTest.refusal(WarmUp.hours(2, 17, 12, 17.9)))
                .isEqualTo("In air of 17 °C the part never comes to 17.9 °C.");
    }
}
