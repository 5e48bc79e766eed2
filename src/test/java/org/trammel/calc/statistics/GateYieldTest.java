package org.trammel.calc.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.stat.interval.BinomialProportion;
import org.hipparchus.stat.interval.ConfidenceInterval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.statistics.GateYield.Gate;

class GateYieldTest {

    /** R. G. Newcombe, Statistics in Medicine 17 (1998) 857, table I, method 3; the rest by the same formula elsewhere. */
    @ParameterizedTest
    @CsvSource({
        "15, 148, 0.0624, 0.1605",
        "0, 20, 0, 0.1611",
        "1, 29, 0.0061, 0.1718",
        "29, 29, 0.8830, 1",
        "57, 60, 0.863, 0.983",
        "4, 5, 0.376, 0.964",
        "5, 10, 0.236593, 0.763407",
        "0, 10, 0, 0.277533",
        "10, 10, 0.722467, 1",
        "3, 5, 0.230724, 0.882379",
    })
    void sharesHaveTheirPublishedIntervals(int hits, int count, String low, String high) {
        Proportion of = Published.value(Proportion.of(hits, count));
        assertThat(of.share()).isEqualTo((double) hits / count);
        assertThat(of.interval().low()).isCloseTo(Double.parseDouble(low), within(halfDigit(low)));
        assertThat(of.interval().high()).isCloseTo(Double.parseDouble(high), within(halfDigit(high)));
    }

    private static double halfDigit(String printed) {
        return 0.51 * Math.pow(10, printed.indexOf('.') - printed.length() + 1);
    }

    /** Second opinion: a general library. */
    @Test
    void everyShareHasTheIntervalOfALibrary() {
        for (int n = 1; n <= 60; n++) {
            for (int k = 0; k <= n; k++) {
                ConfidenceInterval library = BinomialProportion.getWilsonScoreInterval(n, (double) k / n, 0.95);
                Interval ours = Published.value(Proportion.of(k, n)).interval();
                assertThat(ours.low())
                        .isCloseTo(library.getLowerBound(), within(1e-10))
                        .isBetween(0.0, 1.0);
                assertThat(ours.high())
                        .isCloseTo(library.getUpperBound(), within(1e-10))
                        .isBetween(0.0, 1.0);
            }
        }
    }

    private static List<Gate> gates() {
        return List.of(
                new Gate("tack check", 97, 100, 0.8),
                new Gate("weld out", 94, 100, 1.5),
                new Gate("alignment", 78, 100, 0.7),
                new Gate("heat treat", 99, 100, 26),
                new Gate("coat", 85, 100, 3.5),
                new Gate("assembly", 96, 100, 0.5));
    }

    /** Worked by hand: 57.5 %; 0.03·0.8 + 0.06·1.5 + 0.22·0.7 + 0.01·26 + 0.15·3.5 + 0.04·0.5 = 1.073 h, the coat 0.525. */
    @Test
    void theWorkedExampleComesOut() {
        GateYield of = Published.value(GateYield.of(gates(), 62));
        assertThat(of.rolled()).isCloseTo(0.575, within(5e-4));
        assertThat(of.reworkHours()).isCloseTo(1.073, within(1e-9));
        assertThat(of.reworkCost()).isCloseTo(66.5, within(0.05));
        assertThat(of.lines().get(4).reworkHours()).isCloseTo(0.525, within(1e-9));
        assertThat(of.lines().get(4).share()).isCloseTo(0.49, within(0.005));
        assertThat(of.lines().get(2).firstPass().interval().low()).isCloseTo(0.689, within(0.001));
        assertThat(of.words()).isEqualTo("Rework takes 1.07 h a frame; most of it, 0.53 h or 49 %, comes from coat.");
    }

    /** 0.98 · 0.93 · 0.95 · 0.98 · 0.94 = 0.797603; e^−0.158 = 0.853850 from defects per unit 0.10, 0.05, 0.008 (M. Harry). */
    @ParameterizedTest
    @CsvSource({"0.797603, 980000 930000 950000 980000 940000", "0.853850, 904837 951229 992032"})
    void yieldsMultiply(double rolled, String passed) {
        List<Gate> gates = IntStream.range(0, passed.split(" ").length)
                .mapToObj(i -> new Gate("gate " + i, Integer.parseInt(passed.split(" ")[i]), 1_000_000, 0))
                .toList();
        GateYield of = Published.value(GateYield.of(gates, 0));
        assertThat(of.rolled()).isCloseTo(rolled, within(1e-6));
        assertThat(of.words()).isEqualTo("No hours go into rework.");
        assertThat(of.lines().get(0).share()).isZero();
    }

    @Test
    void gatesWithoutFramesAndWrongCountsAreSentences() {
        assertThat(Published.words(Proportion.of(0, 0))).containsExactly("There are 0 to take a share of.");
        assertThat(Published.words(Proportion.of(5, 4))).containsExactly("5 of 4 are more than all.");
        assertThat(Published.words(Proportion.of(-1, 4))).hasSize(1);
        assertThat(Published.words(GateYield.of(List.of(), 62))).containsExactly("There is no gate.");
        assertThat(Published.words(GateYield.of(List.of(new Gate("coat", 0, 0, 1)), 62)))
                .containsExactly("Of coat no share can be taken: 0 of 0 frames.");
        assertThat(Published.words(GateYield.of(List.of(new Gate("coat", 1, 2, Double.NaN)), -1)))
                .hasSize(2);
    }
}
