package org.trammel.calc.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ControlConstantsTest {

    private static final Offset<Double> EIGHT_DECIMALS = within(5.001e-9);

    static List<List<String>> printed() {
        return Published.rows("control-constants.csv").stream()
                .skip(1)
                .map(List::of)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("printed")
    void everyConstantIsThatOfTheTable(List<String> row) {
        double[] of = row.stream().mapToDouble(Double::parseDouble).toArray();
        ControlConstants constants = Published.value(ControlConstants.of((int) of[0]));
        assertThat(constants.size()).isEqualTo((int) of[0]);
        assertThat(constants.d2()).isCloseTo(of[1], EIGHT_DECIMALS);
        assertThat(constants.d3()).isCloseTo(of[2], EIGHT_DECIMALS);
        assertThat(constants.c4()).isCloseTo(of[3], EIGHT_DECIMALS);
        assertThat(constants.meanByRange()).isCloseTo(of[4], EIGHT_DECIMALS);
        assertThat(constants.meanByDeviation()).isCloseTo(of[5], EIGHT_DECIMALS);
        assertThat(constants.rangeLower()).isCloseTo(of[6], EIGHT_DECIMALS);
        assertThat(constants.rangeUpper()).isCloseTo(of[7], EIGHT_DECIMALS);
        assertThat(constants.deviationLower()).isCloseTo(of[8], EIGHT_DECIMALS);
        assertThat(constants.deviationUpper()).isCloseTo(of[9], EIGHT_DECIMALS);
        assertThat(constants.singleByRange()).isCloseTo(of[10], EIGHT_DECIMALS);
    }

    /** Closed forms: 2/√π, 3/√π, √(2/π), √π/2; for pairs the range is |N(0, √2)|, so d₃ = √(2 − 4/π). */
    @Test
    void pairsAndTriplesHaveClosedForms() {
        ControlConstants two = Published.value(ControlConstants.of(2));
        ControlConstants three = Published.value(ControlConstants.of(3));
        assertThat(two.d2()).isCloseTo(2 / Math.sqrt(Math.PI), within(1e-13));
        assertThat(two.d3()).isCloseTo(Math.sqrt(2 - 4 / Math.PI), within(1e-13));
        assertThat(two.c4()).isCloseTo(Math.sqrt(2 / Math.PI), within(1e-13));
        assertThat(three.d2()).isCloseTo(3 / Math.sqrt(Math.PI), within(1e-12));
        assertThat(three.c4()).isCloseTo(Math.sqrt(Math.PI) / 2, within(1e-13));
    }

    /** Three decimals as printed: D. C. Montgomery, Introduction to Statistical Quality Control, appendix VI (from memory). */
    @ParameterizedTest
    @CsvSource({
        "4, 2.059, 0.880, 0.9213, 0.729, 1.628, 0, 2.282, 0, 2.266",
        "5, 2.326, 0.864, 0.9400, 0.577, 1.427, 0, 2.114, 0, 2.089",
        "7, 2.704, 0.833, 0.9594, 0.419, 1.182, 0.076, 1.924, 0.118, 1.882",
        "10, 3.078, 0.797, 0.9727, 0.308, 0.975, 0.223, 1.777, 0.284, 1.716",
    })
    void threeDecimalsAreThoseThatArePrinted(
            int n, double d2, double d3, double c4, double a2, double a3, double r3, double r4, double b3, double b4) {
        ControlConstants of = Published.value(ControlConstants.of(n));
        double[] computed = {
            of.d2(),
            of.d3(),
            of.c4(),
            of.meanByRange(),
            of.meanByDeviation(),
            of.rangeLower(),
            of.rangeUpper(),
            of.deviationLower(),
            of.deviationUpper()
        };
        double[] printed = {d2, d3, c4, a2, a3, r3, r4, b3, b4};
        for (int i = 0; i < printed.length; i++) {
            assertThat(computed[i]).isCloseTo(printed[i], within(5.1e-4));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {Integer.MIN_VALUE, -1, 0, 1, 26, Integer.MAX_VALUE})
    void otherGroupsHaveNone(int size) {
        assertThat(Published.words(ControlConstants.of(size)))
                .containsExactly("Groups of " + size + " have no constants here: from 2 to 25 do.");
    }
}
