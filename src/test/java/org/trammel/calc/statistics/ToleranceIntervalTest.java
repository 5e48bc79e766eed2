package org.trammel.calc.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.units.Answer;

/** Factors of the two-sided tolerance interval against published ones. */
class ToleranceIntervalTest {

    /** NIST/SEMATECH e-Handbook 7.2.6.3: 43 items, 90 % with 99 % confidence, k2 = 2.217. */
    @Test
    void theFactorOfTheHandbooksExample() {
        assertThat(ToleranceInterval.factor(43, 0.90, 0.99)).isCloseTo(2.2173, within(0.0002));
    }

    /** P. M. Berthouex, L. C. Brown, Statistics for Environmental Engineers, table 21.1: 95 % confidence. */
    @ParameterizedTest(name = "{0} pieces, share {1}: {2}")
    @CsvSource({
        "10, 0.90, 2.86",
        "10, 0.95, 3.39",
        "10, 0.99, 4.44",
        "15, 0.95, 2.96",
        "20, 0.95, 2.76",
        "30, 0.99, 3.35",
        "60, 0.95, 2.34"
    })
    void theFactorsOfATable(int n, double share, double k) {
        assertThat(ToleranceInterval.factor(n, share, 0.95)).isCloseTo(k, within(0.025));
    }

    /** Mean 5.5 and deviation √(82.5/9) = 3.0277 of one to ten, by hand. */
    @Test
    void theIntervalLiesAroundTheMean() {
        ToleranceInterval told = ((Answer.Determined<ToleranceInterval>) ToleranceInterval.of(
                        IntStream.rangeClosed(1, 10).mapToObj(Double::valueOf).toList(), 0.95, 0.95))
                .value();
        assertThat(told.mean()).isCloseTo(5.5, within(1e-12));
        assertThat(told.deviation()).isCloseTo(3.0277, within(1e-4));
        assertThat(told.greatest() - told.mean()).isCloseTo(3.39 * 3.0277, within(0.05));
        assertThat(told.mean() - told.least()).isCloseTo(told.greatest() - told.mean(), within(1e-12));
    }

    @Test
    void tooFewOrAllAlikeSayNothing() {
        assertThat(ToleranceInterval.of(List.of(1.0, 2.0), 0.95, 0.95)).isInstanceOf(Answer.NotDeterminable.class);
        assertThat(ToleranceInterval.of(Collections.nCopies(12, 43.0), 0.95, 0.95))
                .isInstanceOf(Answer.NotDeterminable.class);
    }
}
