package org.trammel.calc.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NormalityTest {

    /** A² of a general library (SciPy 1.17.1, anderson), before the correction for n. */
    @ParameterizedTest
    @CsvSource({
        "flow-rate.csv, x, 0.3048580492709476",
        "lew.csv, y, 6.000646915775917",
        "mavro.csv, y, 1.6684654846545612",
        "resistance.csv, resistance, 0.2572586211214549",
    })
    void theStatisticIsThatOfALibrary(String file, String column, double squared) {
        List<Double> readings = Published.column(file, column);
        double n = readings.size();
        assertThat(Published.value(Normality.of(readings)).statistic())
                .isCloseTo(squared * (1 + 0.75 / n + 2.25 / n / n), within(1e-8));
    }

    /** Points of the published table (D'Agostino and Stephens 1986, table 4.7; from memory), which the formulas follow. */
    @ParameterizedTest
    @CsvSource({"0.631, 0.10", "0.752, 0.05", "0.873, 0.025", "1.035, 0.01", "1.159, 0.005"})
    void probabilitiesFollowTheTable(double statistic, double probability) {
        assertThat(Normality.probability(statistic)).isCloseTo(probability, within(0.02 * probability));
    }

    @Test
    void probabilitiesFallWithTheStatisticAndStayBetweenNoughtAndOne() {
        double before = 1;
        for (double a = 0.005; a < 300; a *= 1.01) {
            double now = Normality.probability(a);
            // Where two formulas meet the printed digits leave a step of some thousandths.
            assertThat(now).isBetween(0.0, before + 0.003);
            before = now;
        }
    }

    /** Normal readings are called not normal one time in twenty, skew ones mostly: drawn. */
    @Test
    void normalReadingsAreSeldomDoubtedAndSkewOnesMostly() {
        Random random = new Random(4);
        int rounds = 3000;
        int doubted = 0;
        int found = 0;
        for (int round = 0; round < rounds; round++) {
            List<Double> normal =
                    IntStream.range(0, 25).mapToObj(i -> random.nextGaussian()).toList();
            doubted += Published.value(Normality.of(normal)).probability() < 0.05 ? 1 : 0;
            List<Double> skew = normal.stream().map(Math::exp).toList();
            found += Published.value(Normality.of(skew)).probability() < 0.05 ? 1 : 0;
        }
        assertThat((double) doubted)
                .isCloseTo(0.05 * rounds, within(4 * Math.sqrt(0.05 * 0.95 * rounds) + 0.004 * rounds));
        assertThat(found).isGreaterThan((int) (0.9 * rounds));
    }

    @Test
    void wordsSayWhichAndTooFewIsASentence() {
        assertThat(Published.value(Normality.of(Published.column("lew.csv", "y")))
                        .words())
                .startsWith("The readings are not spread as a normal distribution is");
        assertThat(Published.value(Normality.of(Published.column("flow-rate.csv", "x")))
                        .words())
                .isEqualTo("Nothing speaks against a normal distribution.");
        assertThat(Published.words(Normality.of(List.of(1.0, 2.0, 3.0)))).hasSize(1);
        assertThat(Published.words(Normality.of(Collections.nCopies(20, 1.0)))).hasSize(1);
        assertThat(Published.words(Normality.of(Collections.nCopies(20, Double.NaN))))
                .hasSize(1);
    }
}
