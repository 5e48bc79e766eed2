package org.trammel.calc.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class CapabilityTest {

    /** Rear axle offsets on a jig that holds, mm; worked by hand. */
    private static final List<Double> OFFSETS = List.of(
            0.3, -0.1, 0.2, 0.4, 0.1, 0.6, 0.5, -0.3, 0.0, 0.2, -0.2, 0.4, 0.3, 0.1, -0.1, 0.5, 0.2, 0.0, 0.3, -0.2,
            0.1, 0.4, 0.2, 0.3, 0.0);

    /** Gaps, mm: skew, and never below 0. */
    private static final List<Double> GAPS = List.of(
            0.12, 0.05, 0.31, 0.22, 0.08, 0.17, 0.41, 0.26, 0.09, 0.14, 0.33, 0.19, 0.06, 0.28, 0.11, 0.23, 0.52, 0.15,
            0.20, 0.37, 0.10, 0.18, 0.07, 0.29, 0.13);

    private static final Tolerance ONE = new Tolerance(-1.0, 1.0);

    private static Capability capability(List<Double> readings, Tolerance tolerance) {
        return Published.value(Capability.of(readings, tolerance, Shape.NORMAL));
    }

    private static Capability.Index pp(Capability of) {
        return Objects.requireNonNull(of.pp());
    }

    /** Readings whose mean and deviation are exactly these: half on each side, one amid if the count is odd. */
    private static List<Double> exactly(int count, double mean, double deviation) {
        List<Double> readings = new ArrayList<>();
        double off = deviation * Math.sqrt((count - 1.0) / (count - count % 2));
        for (int i = 0; i < count / 2; i++) {
            readings.add(mean - off);
            readings.add(mean + off);
        }
        if (count % 2 == 1) {
            readings.add(mean);
        }
        return readings;
    }

    /** Worked by hand: mean 0.168, s 0.239, Ppk 1.16, Pp 1.39, 0.81 to 1.51. */
    @Test
    void theWorkedExampleComesOut() {
        Capability of = capability(OFFSETS, ONE);
        assertThat(of.mean()).isCloseTo(0.168, within(5e-4));
        assertThat(of.deviation()).isCloseTo(0.239, within(5e-4));
        assertThat(of.ppk().value()).isCloseTo(1.16, within(0.005));
        assertThat(pp(of).value()).isCloseTo(1.39, within(0.005));
        assertThat(of.ppk().interval().low()).isCloseTo(0.81, within(0.005));
        assertThat(of.ppk().interval().high()).isCloseTo(1.51, within(0.005));
        assertThat(of.words(1.33))
                .isEqualTo("Ppk 1.16, at 95 % between 0.81 and 1.51: not proven to be 1.33 or more; moving the mean by"
                        + " \u22120.17 to the middle alone would raise it to 1.39.");
        assertThat(of.words(0.8)).endsWith(": proven to be 0.8 or more.");
        assertThat(of.words(2)).contains(": proven to be below 2; moving");
    }

    /**
     * NIST/SEMATECH 6.1.6: limits 8 and 20, mean 16, s 2: Cp 1.0, Cpk 0.6667. Piston rings (D. C. Montgomery; software of
     * general use prints the intervals): 74.001176, s 0.009785039, 73.95 to 74.05, n 125: Cp 1.703 (1.491, 1.915), Cpk 1.663
     * (1.448, 1.878). Montgomery: n 20, s 1.75, 38 to 62: Cp 2.29 (1.57, 3.01), from memory.
     */
    @Test
    void textbookIndicesComeOut() {
        Capability handbook = capability(exactly(30, 16, 2), new Tolerance(8.0, 20.0));
        assertThat(pp(handbook).value()).isCloseTo(1.0, within(1e-9));
        assertThat(handbook.ppk().value()).isCloseTo(0.6667, within(5e-5));
        Capability rings = capability(exactly(125, 74.001176, 0.009785039), new Tolerance(73.95, 74.05));
        assertIndex(pp(rings), 1.703, 1.491, 1.915);
        assertIndex(rings.ppk(), 1.663, 1.448, 1.878);
        Capability few = capability(exactly(20, 50, 1.75), new Tolerance(38.0, 62.0));
        assertThat(pp(few).value()).isCloseTo(2.2857, within(5e-5));
        assertThat(pp(few).interval().low()).isCloseTo(1.57, within(0.006));
        assertThat(pp(few).interval().high()).isCloseTo(3.01, within(0.006));
        assertThat(few.words(3)).doesNotContain("moving");
    }

    private static void assertIndex(Capability.Index of, double value, double low, double high) {
        assertThat(of.value()).isCloseTo(value, within(5e-4));
        assertThat(of.interval().low()).isCloseTo(low, within(5.1e-4));
        assertThat(of.interval().high()).isCloseTo(high, within(5.1e-4));
    }

    /** Drawn processes whose true index is known: the intervals hold it as often as they say, Ppk's nearly. */
    @Test
    void intervalsHoldTheTrueIndex() {
        Random random = new Random(616);
        int rounds = 4000;
        int holdPp = 0;
        int holdPpk = 0;
        for (int round = 0; round < rounds; round++) {
            List<Double> readings = IntStream.range(0, 30)
                    .mapToObj(i -> 0.5 + random.nextGaussian())
                    .toList();
            Capability of = capability(readings, new Tolerance(-4.0, 4.0));
            holdPp += pp(of).interval().holds(8.0 / 6) ? 1 : 0;
            holdPpk += of.ppk().interval().holds(3.5 / 3) ? 1 : 0;
        }
        double scatter = Math.sqrt(rounds * 0.95 * 0.05);
        assertThat((double) holdPp).isCloseTo(0.95 * rounds, within(4 * scatter));
        assertThat((double) holdPpk).isCloseTo(0.95 * rounds, within(0.015 * rounds + 4 * scatter));
    }

    /** One side only: Ppk is of that side, and there is no Pp. */
    @Test
    void oneLimitIsEnough() {
        Capability above = capability(OFFSETS, new Tolerance(null, 1.0));
        assertThat(above.pp()).isNull();
        assertThat(above.ppk().value()).isCloseTo((1 - 0.168) / 3 / 0.239, within(0.01));
        Capability below = capability(OFFSETS, new Tolerance(-1.0, null));
        assertThat(below.ppk().value()).isCloseTo(1.168 / 3 / 0.239, within(0.01));
        assertThat(below.words(1.33)).doesNotContain("moving");
        assertThat(capability(OFFSETS, new Tolerance(null, 0.0)).ppk().value()).isNegative();
    }

    /** Second opinion: percentiles of a general library (SciPy 1.17.1) laid through the gaps by largest likelihood. */
    @ParameterizedTest
    @CsvSource({
        "WEIBULL, 0.00620013, 0.18740723, 0.64218562",
        "LOG_NORMAL, 0.02593467, 0.16962643, 1.10944650",
    })
    void percentilesOfAShapeAreThoseOfALibrary(Shape shape, double low, double median, double high) {
        Capability of = Published.value(Capability.of(GAPS, new Tolerance(null, 0.8), shape));
        assertThat(of.percentiles().low()).isCloseTo(low, within(5.1e-9));
        assertThat(of.percentiles().median()).isCloseTo(median, within(5.1e-9));
        assertThat(of.percentiles().high()).isCloseTo(high, within(5.1e-9));
        assertThat(of.ppk().value()).isCloseTo((0.8 - median) / (high - median), within(1e-6));
        assertThat(of.ppk().interval().low()).isLessThan(of.ppk().value());
        assertThat(of.ppk().interval().high()).isGreaterThan(of.ppk().value());
        assertThat(of.pp()).isNull();
    }

    /** Squares of 0 to 1 in a thousand steps, percentiles by the same library (method "weibull", places p (n + 1)). */
    @Test
    void manyReadingsAreTheirOwnPercentiles() {
        List<Double> squares =
                IntStream.rangeClosed(0, 1000).mapToObj(i -> i * i / 1e6).toList();
        Capability of = Published.value(Capability.of(squares, new Tolerance(-0.5, 1.5), Shape.AS_READ));
        assertThat(of.percentiles().low()).isCloseTo(3.52598e-07, within(1e-12));
        assertThat(of.percentiles().median()).isCloseTo(0.25, within(1e-12));
        assertThat(of.percentiles().high()).isCloseTo(0.999295157, within(1e-9));
        assertThat(pp(of).value()).isCloseTo(2.0 / 0.9992946, within(1e-5));
        assertThat(Published.words(Capability.of(squares.subList(0, 739), ONE, Shape.AS_READ)))
                .singleElement()
                .asString()
                .contains("740 readings or more, there are 739");
    }

    /** All shapes agree where they must: a fine grid of normal quantiles, and of their exponentials. */
    @Test
    void percentilesOfNormalReadingsAreThreeDeviationsOut() {
        NormalDistribution normal = new NormalDistribution();
        List<Double> grid = IntStream.range(0, 5000)
                .mapToObj(i -> normal.inverseCumulativeProbability((i + 0.5) / 5000))
                .toList();
        Tolerance tolerance = new Tolerance(-4.0, 5.0);
        Capability asRead = Published.value(Capability.of(grid, tolerance, Shape.AS_READ));
        assertThat(asRead.ppk().value())
                .isCloseTo(capability(grid, tolerance).ppk().value(), within(0.015));
        assertThat(pp(asRead).value()).isCloseTo(1.5, within(0.015));
        Capability logs = Published.value(Capability.of(
                grid.stream().map(Math::exp).toList(), new Tolerance(null, Math.exp(5)), Shape.LOG_NORMAL));
        assertThat(logs.percentiles().high()).isCloseTo(Math.exp(3), within(0.05));
    }

    /** One question, one answer: drawn samples do not change what is said. */
    @ParameterizedTest
    @EnumSource(
            value = Shape.class,
            names = {"NORMAL", "LOG_NORMAL", "WEIBULL"})
    void theSameQuestionHasTheSameAnswerInAnyUnit(Shape shape) {
        Tolerance tolerance = new Tolerance(0.01, 0.8);
        Capability once = Published.value(Capability.of(GAPS, tolerance, shape));
        assertThat(Published.value(Capability.of(GAPS, tolerance, shape))).isEqualTo(once);
        Capability inMicrons = Published.value(
                Capability.of(GAPS.stream().map(each -> 1000 * each).toList(), new Tolerance(10.0, 800.0), shape));
        assertThat(inMicrons.ppk().value()).isCloseTo(once.ppk().value(), within(1e-9));
        assertThat(pp(inMicrons).interval().low()).isCloseTo(pp(once).interval().low(), within(1e-9));
    }

    @Test
    void tooFewNoSpreadAndWrongShapesAreSentences() {
        assertThat(Published.words(Capability.of(OFFSETS.subList(0, 19), ONE, Shape.NORMAL)))
                .containsExactly(
                        "19 readings are too few for an index, which begins to mean something at 20: look at the"
                                + " readings themselves.");
        assertThat(Published.words(Capability.of(List.of(0.1), ONE, Shape.NORMAL)))
                .singleElement()
                .asString()
                .startsWith("1 reading is too few");
        assertThat(capability(OFFSETS.subList(0, 20), ONE).count()).isEqualTo(20);
        assertThat(Published.words(Capability.of(Collections.nCopies(30, 0.2), ONE, Shape.NORMAL)))
                .containsExactly(
                        "All 30 readings are the same, 0.2: without spread there is no index. The gauge may be too"
                                + " coarse.");
        assertThat(Published.words(Capability.of(OFFSETS, ONE, Shape.WEIBULL)))
                .containsExactly("A reading is 0 or below, where this shape has none: choose another shape.");
        List<Double> coarse = new ArrayList<>(Collections.nCopies(990, 0.2));
        coarse.addAll(Collections.nCopies(10, 0.1));
        assertThat(Published.words(Capability.of(coarse, ONE, Shape.AS_READ)))
                .singleElement()
                .asString()
                .contains("too coarse for an index");
        assertThat(Published.words(Capability.of(OFFSETS, new Tolerance(1.0, 1.0), Shape.NORMAL)))
                .containsExactly("The limits 1 and 1 leave nothing between them.");
        assertThat(Published.words(Capability.of(OFFSETS, new Tolerance(null, null), Shape.NORMAL)))
                .containsExactly("No limit is given to compare with.");
        assertThat(Published.words(Capability.of(OFFSETS, new Tolerance(Double.NaN, 1.0), Shape.NORMAL)))
                .hasSize(1);
        List<Double> broken = new ArrayList<>(OFFSETS);
        broken.set(24, Double.POSITIVE_INFINITY);
        assertThat(Published.words(Capability.of(broken, ONE, Shape.NORMAL)))
                .containsExactly("Reading 25 is too large to reckon with.");
    }
}
