package org.trammel.calc.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Certified values: NIST Statistical Reference Datasets, linear regression. */
class RegressionTest {

    private static Column column(String name, double... readings) {
        return new Column(
                name,
                IntStream.range(0, readings.length).mapToObj(i -> readings[i]).toList());
    }

    private static Column column(String file, String name) {
        return new Column(name, Published.column(file, name));
    }

    private static void assertCertified(Regression.Coefficient of, double estimate, double error, double percent) {
        assertThat(of.estimate()).isCloseTo(estimate, Percentage.withPercentage(percent));
        assertThat(of.standardError()).isCloseTo(error, Percentage.withPercentage(percent));
    }

    @Test
    void ozoneMonitorsHaveTheirCertifiedLine() {
        Regression norris =
                Published.value(Regression.of(List.of(column("norris.csv", "x")), column("norris.csv", "y")));
        assertCertified(norris.constant(), -0.262323073774029, 0.232818234301152, 1e-10);
        assertCertified(norris.terms().get(0).coefficient(), 1.00211681802045, 0.429796848199937e-3, 1e-11);
        assertThat(norris.residualDeviation()).isCloseTo(0.884796396144373, within(1e-12));
        assertThat(norris.rSquared()).isCloseTo(0.999993745883712, within(1e-14));
        assertThat(norris.degreesOfFreedom()).isEqualTo(34);
        assertThat(norris.count()).isEqualTo(36);
    }

    /** Six columns that nearly follow from each other; standard errors are certified as well (values from memory of the file). */
    @Test
    void employmentHasItsCertifiedPlane() {
        List<Column> xs = IntStream.rangeClosed(1, 6)
                .mapToObj(i -> column("longley.csv", "x" + i))
                .toList();
        Regression longley = Published.value(Regression.of(xs, column("longley.csv", "y")));
        double[] estimates = {
            15.0618722713733,
            -0.0358191792925910,
            -2.02022980381683,
            -1.03322686717359,
            -0.0511041056535807,
            1829.15146461355
        };
        double[] errors = {
            84.9149257747669,
            0.334910077722432e-1,
            0.488399681651699,
            0.214274163161675,
            0.226073200069370,
            455.478499142212
        };
        assertCertified(longley.constant(), -3482258.63459582, 890420.383607373, 1e-8);
        for (int i = 0; i < 6; i++) {
            assertCertified(longley.terms().get(i).coefficient(), estimates[i], errors[i], 1e-8);
        }
        assertThat(longley.residualDeviation()).isCloseTo(304.8540735619638, within(1e-8));
        assertThat(longley.rSquared()).isCloseTo(0.995479004577296, within(1e-13));
    }

    /** Second opinion: a general library, and its t interval of a coefficient. */
    @Test
    void randomPlanesAreThoseOfALibrary() {
        Random random = new Random(20261130);
        for (int round = 0; round < 40; round++) {
            int columns = 1 + random.nextInt(4);
            int n = columns + 2 + random.nextInt(30);
            double[][] x = new double[n][columns];
            double[] y = new double[n];
            for (int i = 0; i < n; i++) {
                y[i] = random.nextGaussian();
                for (int j = 0; j < columns; j++) {
                    x[i][j] = 10 * j + random.nextGaussian();
                    y[i] += (j - 1) * x[i][j];
                }
            }
            OLSMultipleLinearRegression library = new OLSMultipleLinearRegression();
            library.newSampleData(y, x);
            List<Column> xs = new ArrayList<>();
            for (int j = 0; j < columns; j++) {
                int at = j;
                xs.add(new Column(
                        "x" + j, IntStream.range(0, n).mapToObj(i -> x[i][at]).toList()));
            }
            Regression ours = Published.value(Regression.of(xs, column("y", y)));
            double[] estimates = library.estimateRegressionParameters();
            double[] errors = library.estimateRegressionParametersStandardErrors();
            assertThat(ours.constant().estimate()).isCloseTo(estimates[0], within(1e-7));
            assertThat(ours.constant().standardError()).isCloseTo(errors[0], Percentage.withPercentage(1e-6));
            for (int j = 0; j < columns; j++) {
                Regression.Coefficient of = ours.terms().get(j).coefficient();
                assertThat(of.estimate()).isCloseTo(estimates[j + 1], within(1e-8));
                assertThat(of.standardError()).isCloseTo(errors[j + 1], Percentage.withPercentage(1e-6));
                assertThat((of.interval().low() + of.interval().high()) / 2).isCloseTo(of.estimate(), within(1e-9));
            }
            assertThat(ours.residualDeviation())
                    .isCloseTo(library.estimateRegressionStandardError(), Percentage.withPercentage(1e-7));
            assertThat(ours.rSquared()).isCloseTo(library.calculateRSquared(), within(1e-9));
            assertThat(ours.farthest()).isCloseTo(largest(library.calculateHat()), within(1e-8));
        }
    }

    private static double largest(org.hipparchus.linear.RealMatrix hat) {
        return IntStream.range(0, hat.getRowDimension())
                .mapToDouble(i -> hat.getEntry(i, i))
                .max()
                .orElseThrow();
    }

    /** Of many next readings 95 in 100 fall into their interval, whatever the line: drawn, not computed. */
    @Test
    void theNextReadingFallsIntoItsIntervalNinetyFiveTimesOfAHundred() {
        Random random = new Random(95);
        int rounds = 4000;
        int inNext = 0;
        int inMean = 0;
        for (int round = 0; round < rounds; round++) {
            double[] x = new double[6];
            double[] y = new double[6];
            for (int i = 0; i < 6; i++) {
                x[i] = i;
                y[i] = 3 + 2 * x[i] + random.nextGaussian();
            }
            Regression.Prediction at =
                    Published.value(Published.value(Regression.of(List.of(column("x", x)), column("y", y)))
                            .predict(List.of(4.5)));
            inNext += at.next().holds(12 + random.nextGaussian()) ? 1 : 0;
            inMean += at.mean().holds(12) ? 1 : 0;
        }
        double scatter = Math.sqrt(rounds * 0.95 * 0.05);
        assertThat((double) inNext).isCloseTo(0.95 * rounds, within(4 * scatter));
        assertThat((double) inMean).isCloseTo(0.95 * rounds, within(4 * scatter));
    }

    @Test
    void whatCannotTellALineIsASentence() {
        Column y = column("push", 5.4, 5.9, 6.1);
        assertThat(Published.words(Regression.of(List.of(column("set", 0.5, 0.8)), column("push", 5.4, 5.9))))
                .containsExactly(
                        "There are 2 occasions: 2 always lie on a line of this kind exactly, and only from 3 on"
                                + " can be told how far the next falls from it.");
        assertThat(Published.words(Regression.of(List.of(column("set", 0.5, 0.8)), y)))
                .containsExactly("There are 2 readings of the set and 3 of the push: each occasion needs both.");
        assertThat(Published.words(Regression.of(List.of(column("set", 0.5, 0.5, 0.5)), y)))
                .containsExactly("The set was the same every time, 0.5: nothing can be told of what it does.");
        assertThat(Published.words(Regression.of(List.of(column("set", 1, 2, 3)), column("push", 1.1, 1.2, 1.3))))
                .singleElement()
                .asString()
                .startsWith("All 3 occasions lie on the line exactly");
        assertThat(Published.words(Regression.of(List.of(column("set", 1, 2, 3)), column("push", 7, 7, 7))))
                .singleElement()
                .asString()
                .startsWith("All 3 occasions lie on the line exactly");
        assertThat(Published.words(Regression.of(
                        List.of(column("set", 1, 2, 4, 3, 5), column("inches", 3, 5, 9, 7, 11)),
                        column("push", 1, 2, 3, 4, 7))))
                .containsExactly(
                        "The inches follows from the other figures: what each of them does cannot be told apart.");
        assertThat(Published.words(Regression.of(List.of(), y))).hasSize(1);
        assertThat(Published.words(Regression.of(List.of(column("set", 1, Double.NaN, 3)), y)))
                .containsExactly("Of the set, reading 2 is no number.");
    }

    @ParameterizedTest
    @CsvSource({"0.99", "5.01", "-1", "1e9"})
    void aLineIsNotDrawnOut(double at) {
        Regression line =
                Published.value(Regression.of(List.of(column("set", 1, 2, 3, 5)), column("push", 1, 2, 4, 5)));
        assertThat(Published.words(line.predict(List.of(at))))
                .singleElement()
                .asString()
                .endsWith("lies outside what was done so far, 1 to 5: the line is not drawn out.");
        assertThat(Published.value(line.predict(List.of(1.0))).value()).isFinite();
        assertThat(Published.value(line.predict(List.of(5.0))).value()).isFinite();
        assertThat(Published.words(line.predict(List.of()))).hasSize(1);
        assertThat(Published.words(line.predict(List.of(Double.NaN)))).hasSize(1);
    }

    /** Small with small and large with large was had; small with large was not. */
    @Test
    void aPlaceThatWasNotHadTogetherIsRefused() {
        Regression plane = Published.value(Regression.of(
                List.of(column("a", 1, 2, 3, 4, 5, 6), column("b", 1.1, 1.9, 3.2, 3.9, 5.1, 6.2)),
                column("y", 2, 4.1, 6, 8.2, 10, 12)));
        assertThat(Published.value(plane.predict(List.of(3.5, 3.5))).value()).isCloseTo(7, within(0.3));
        assertThat(Published.words(plane.predict(List.of(1.5, 5.5))))
                .containsExactly(
                        "Each of these figures was had before, but nothing near them together: the line is not drawn out.");
    }
}
