package org.trammel.calc.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.hipparchus.stat.StatUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.statistics.ControlChart.Alarm;
import org.trammel.calc.statistics.ControlChart.Point;

class ControlChartTest {

    /** Rear axle offsets of a jig that drifts, mm; worked by hand: σ 0.35, centre 0. */
    private static final List<Double> DRIFT = List.of(0.3, -0.1, 0.2, 0.4, 0.1, 0.6, 0.5, 0.8, 0.7, 0.9, 0.8, 1.0);

    private static Baseline given(double centre, double sigma) {
        return Published.value(Baseline.given(centre, sigma));
    }

    private static List<Integer> indices(ControlChart chart) {
        return chart.alarms().stream().map(Alarm::index).distinct().toList();
    }

    private static double[] plotted(ControlChart chart, int trace) {
        return chart.traces().get(trace).points().stream()
                .mapToDouble(Point::value)
                .toArray();
    }

    /** NIST/SEMATECH 6.3.2.2: mean 50.81, mean moving range 1.8778, limits 55.8041 and 45.8159 with the divisor 1.128. */
    @Test
    void flowRatesHaveTheLimitsOfTheHandbook() {
        List<Double> flow = Published.column("flow-rate.csv", "x");
        Baseline base = Published.value(Baseline.ofReadings(flow));
        ControlChart chart = Published.value(ControlChart.individuals(flow, base, RunRule.LIMITS_ALONE));
        assertThat(base.mean()).isCloseTo(50.81, within(1e-12));
        assertThat(base.sigma() * 1.1283791671).isCloseTo(16.9 / 9, within(1e-9));
        assertThat(base.count()).isEqualTo(10);
        Point first = chart.traces().get(0).points().get(0);
        assertThat(first.upper()).isCloseTo(55.8041, within(0.0018)).isCloseTo(55.80241, within(5e-6));
        assertThat(first.lower()).isCloseTo(45.8159, within(0.0018)).isCloseTo(45.81759, within(5e-6));
        ControlChart.Trace steps = chart.traces().get(1);
        assertThat(steps.centre()).isCloseTo(1.8778, within(5e-5));
        assertThat(steps.points().get(0).upper()).isCloseTo(6.1347, within(1e-3));
        assertThat(plotted(chart, 1))
                .containsExactly(new double[] {2.0, 2.3, 1.4, 3.5, 3.4, 1.4, 0.2, 1.2, 1.5}, within(1e-12));
        assertThat(steps.points().get(0).index()).isEqualTo(1);
        assertThat(chart.alarms()).isEmpty();
    }

    /** NIST/SEMATECH 6.3.2.4: λ 0.3, σ 2.0539, settled limits 52.5884 and 47.4115 (cut off, not rounded). */
    @Test
    void weightedMeansAreThoseOfTheHandbook() {
        List<Double> x = Published.column("weighted-mean.csv", "x");
        ControlChart chart =
                Published.value(ControlChart.weightedMean(x, given(50, 2.0539), new WeightedMeanSetting(0.3, 3, true)));
        double[] printed = Published.numbers(Published.column("weighted-mean.csv", "mean"));
        assertThat(plotted(chart, 0)).containsExactly(printed, within(0.00501));
        assertThat(chart.traces().get(0).points()).allSatisfy(point -> {
            assertThat(point.upper()).isCloseTo(52.5884, within(1e-4));
            assertThat(point.lower()).isCloseTo(47.411568, within(1e-6));
        });
        assertThat(chart.alarms()).isEmpty();
    }

    /** The opening limits of the same, computed apart from this project. */
    @Test
    void limitsOpenAsReadingsGather() {
        List<Double> x = Published.column("weighted-mean.csv", "x");
        ControlChart chart = Published.value(
                ControlChart.weightedMean(x, given(50, 2.0539), new WeightedMeanSetting(0.3, 3, false)));
        double[] upper = chart.traces().get(0).points().stream()
                .mapToDouble(Point::upper)
                .limit(5)
                .toArray();
        assertThat(upper).containsExactly(new double[] {51.8485, 52.2564, 52.4314, 52.5127, 52.5516}, within(5e-5));
    }

    /** NIST/SEMATECH 6.3.2.3: target 325, k 0.3175, h 4.1959; alarms from the 14th reading on. */
    @Test
    void cumulativeSumsAreThoseOfTheHandbook() {
        List<Double> x = Published.column("cumulative-sum.csv", "x");
        ControlChart chart = Published.value(ControlChart.cumulativeSum(
                x, given(325, 0.635), new CumulativeSumSetting(0.3175 / 0.635, 4.1959 / 0.635)));
        assertThat(plotted(chart, 0))
                .containsExactly(Published.numbers(Published.column("cumulative-sum.csv", "above")), within(1e-9));
        assertThat(plotted(chart, 1))
                .containsExactly(
                        Published.column("cumulative-sum.csv", "below").stream()
                                .mapToDouble(each -> -each)
                                .toArray(),
                        within(1e-9));
        assertThat(indices(chart)).isEqualTo(IntStream.range(13, 20).boxed().toList());
        assertThat(chart.traces().get(0).points().get(0).upper()).isCloseTo(4.1959, within(1e-12));
        assertThat(chart.traces().get(1).points().get(0).lower()).isCloseTo(-4.1959, within(1e-12));
    }

    /**
     * Piston rings, D. C. Montgomery, Introduction to Statistical Quality Control: mean 74.001176, mean range 0.02276,
     * mean standard deviation 0.009240037 of 25 groups of five; limits of means 73.988 and 74.0143, of ranges 0.0481, of
     * deviations 0.01930.
     */
    @Test
    void limitsOfGroupsAreThoseOfTheTextbook() {
        List<List<Double>> any = List.of(List.of(74.0, 74.0, 74.0, 74.0, 74.01));
        ControlConstants five = ControlConstants.forSize(5);
        Baseline ranges = new Baseline(74.001176, 0.02276 / five.d2(), 25, 5, Baseline.Origin.RANGES);
        ControlChart byRange = Published.value(ControlChart.meansAndRanges(any, ranges, RunRule.LIMITS_ALONE));
        assertThat(byRange.traces().get(0).points().get(0).upper()).isCloseTo(74.0143, within(5e-5));
        assertThat(byRange.traces().get(0).points().get(0).lower()).isCloseTo(73.98805, within(5e-6));
        assertThat(byRange.traces().get(1).points().get(0).upper()).isCloseTo(0.0481260, within(5e-8));
        assertThat(byRange.traces().get(1).points().get(0).lower()).isZero();
        Baseline deviations = new Baseline(74.001176, 0.009240037 / five.c4(), 25, 5, Baseline.Origin.DEVIATIONS);
        ControlChart byDeviation =
                Published.value(ControlChart.meansAndDeviations(any, deviations, RunRule.LIMITS_ALONE));
        assertThat(deviations.sigma()).isCloseTo(0.009829977, within(5e-10));
        assertThat(byDeviation.traces().get(0).points().get(0).upper()).isCloseTo(74.014364, within(5e-7));
        assertThat(byDeviation.traces().get(0).points().get(0).lower()).isCloseTo(73.987988, within(5e-7));
        assertThat(byDeviation.traces().get(1).points().get(0).upper()).isCloseTo(0.01930242, within(5e-8));
    }

    /** Second opinion from raw readings: a general library's means and deviations, and the factors A₂, A₃ of the table. */
    @Test
    void groupsAreReckonedFromTheirReadings() {
        Random random = new Random(7870);
        List<List<Double>> groups = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            double shift = i == 27 ? 4 : 0;
            groups.add(random.doubles(4).mapToObj(each -> 10 + shift + each).toList());
        }
        double[] means = groups.stream()
                .mapToDouble(each -> StatUtils.mean(Published.numbers(each)))
                .toArray();
        double[] ranges = groups.stream()
                .mapToDouble(each -> StatUtils.max(Published.numbers(each)) - StatUtils.min(Published.numbers(each)))
                .toArray();
        double[] deviations = groups.stream()
                .mapToDouble(each -> Math.sqrt(StatUtils.variance(Published.numbers(each))))
                .toArray();
        ControlChart byRange = Published.value(Baseline.byRanges(groups)
                .then(base -> ControlChart.meansAndRanges(groups, base, RunRule.LIMITS_ALONE)));
        assertThat(plotted(byRange, 0)).containsExactly(means, within(1e-12));
        assertThat(plotted(byRange, 1)).containsExactly(ranges, within(1e-12));
        assertThat(byRange.traces().get(0).points().get(0).upper())
                .isCloseTo(StatUtils.mean(means) + 0.72859719 * StatUtils.mean(ranges), within(1e-7));
        ControlChart byDeviation = Published.value(Baseline.byDeviations(groups)
                .then(base -> ControlChart.meansAndDeviations(groups, base, RunRule.LIMITS_ALONE)));
        assertThat(plotted(byDeviation, 1)).containsExactly(deviations, within(1e-12));
        assertThat(byDeviation.traces().get(0).points().get(0).lower())
                .isCloseTo(StatUtils.mean(means) - 1.62810282 * StatUtils.mean(deviations), within(1e-7));
        assertThat(indices(byRange)).containsExactly(27);
        assertThat(byRange.alarms().get(0).words()).startsWith("Group 28: the mean of the group, 14.");
    }

    /** Worked by hand: z₈ 0.380 against 0.311 at the eighth frame; the sum passes 1.669 at the ninth; all within ∓1. */
    @Test
    void aDriftIsFoundBeforeAnyReadingLeavesItsTolerance() {
        ControlChart weighted =
                Published.value(ControlChart.weightedMean(DRIFT, given(0, 0.35), WeightedMeanSetting.USUAL));
        assertThat(DoubleStream.of(plotted(weighted, 0)).limit(8).toArray())
                .containsExactly(new double[] {0.06, 0.028, 0.062, 0.130, 0.124, 0.219, 0.275, 0.380}, within(5.01e-4));
        assertThat(weighted.traces().get(0).points().get(7).upper()).isCloseTo(0.311, within(5e-4));
        assertThat(indices(weighted)).containsExactly(7, 8, 9, 10, 11);
        assertThat(weighted.first())
                .hasValueSatisfying(alarm -> assertThat(alarm.words())
                        .isEqualTo("Reading 8: the weighted mean, 0.380, is above its upper limit 0.311."));
        ControlChart sum =
                Published.value(ControlChart.cumulativeSum(DRIFT, given(0, 0.35), CumulativeSumSetting.USUAL));
        assertThat(sum.traces().get(0).points().get(0).upper()).isCloseTo(1.669, within(6e-4));
        assertThat(indices(sum)).containsExactly(8, 9, 10, 11);
        ControlChart singles = Published.value(ControlChart.individuals(DRIFT, given(0, 0.35), RunRule.LIMITS_ALONE));
        assertThat(indices(singles)).isEmpty();
        assertThat(DRIFT).allMatch(each -> Math.abs(each) <= 1.0);
    }

    /** 3 × 0.1 and 3 × 0.25: figures of a sentence have as many decimals as the one that wants most of them, and no more. */
    @Test
    void anAlarmWritesItsFiguresWithoutNeedlessZeros() {
        assertThat(Published.value(ControlChart.individuals(List.of(0.8), given(0, 0.1), RunRule.LIMITS_ALONE))
                        .first())
                .hasValueSatisfying(alarm -> assertThat(alarm.words())
                        .isEqualTo("Reading 1: the reading, 0.8, is above its upper limit 0.3."));
        assertThat(Published.value(ControlChart.individuals(List.of(-0.8), given(0, 0.25), RunRule.LIMITS_ALONE))
                        .first())
                .hasValueSatisfying(alarm -> assertThat(alarm.words())
                        .isEqualTo("Reading 1: the reading, \u22120.80, is below its lower limit \u22120.75."));
    }

    /** Steps and spreads have limits of their own: D₄ d₂ = 3.686 and (c₄ + 3 √(1 − c₄²)) = 2.606 for pairs, as printed (D₂, B₆). */
    @Test
    void aLeapBetweenReadingsThatLieWithinTheirLimitsIsToldByItsStep() {
        List<Double> leap = List.of(-1.85, 1.85);
        ControlChart singles = Published.value(ControlChart.individuals(leap, given(0, 1), RunRule.LIMITS_ALONE));
        assertThat(singles.alarms()).singleElement().satisfies(alarm -> {
            assertThat(alarm.plotted()).isEqualTo(ControlChart.Plotted.MOVING_RANGE);
            assertThat(alarm.words())
                    .isEqualTo("Reading 2: the step from the reading before, 3.70, is above its upper limit 3.69.");
        });
        assertThat(Published.value(ControlChart.individuals(List.of(-1.84, 1.84), given(0, 1), RunRule.NELSON))
                        .alarms())
                .isEmpty();
        assertThat(Published.value(ControlChart.meansAndRanges(List.of(leap), given(0, 1), RunRule.LIMITS_ALONE))
                        .alarms())
                .extracting(Alarm::plotted)
                .containsExactly(ControlChart.Plotted.RANGE);
        assertThat(Published.value(ControlChart.meansAndDeviations(List.of(leap), given(0, 1), RunRule.LIMITS_ALONE))
                        .alarms())
                .extracting(Alarm::plotted)
                .containsExactly(ControlChart.Plotted.DEVIATION);
    }

    /** With all the weight on the newest reading the mean is that reading, and its limits those of single readings. */
    @Test
    void aMeanOfTheNewestReadingAloneIsTheReading() {
        ControlChart weighted =
                Published.value(ControlChart.weightedMean(DRIFT, given(0, 0.31), new WeightedMeanSetting(1, 3, false)));
        ControlChart singles = Published.value(ControlChart.individuals(DRIFT, given(0, 0.31), RunRule.LIMITS_ALONE));
        assertThat(plotted(weighted, 0)).containsExactly(plotted(singles, 0));
        assertThat(weighted.traces().get(0).points().get(0).upper()).isCloseTo(0.93, within(1e-12));
        assertThat(indices(weighted)).containsExactly(11);
    }

    /** What a chart says does not hang on the unit, and down is up mirrored. */
    @Test
    void chartsFollowTheUnitAndTheSign() {
        for (double factor : new double[] {1000, -1, -0.04}) {
            List<Double> scaled = DRIFT.stream().map(each -> 20 + factor * each).toList();
            Baseline base = given(20, 0.35 * Math.abs(factor));
            assertThat(indices(Published.value(ControlChart.weightedMean(scaled, base, WeightedMeanSetting.USUAL))))
                    .containsExactly(7, 8, 9, 10, 11);
            assertThat(indices(Published.value(ControlChart.cumulativeSum(scaled, base, CumulativeSumSetting.USUAL))))
                    .containsExactly(8, 9, 10, 11);
        }
    }

    /** The chain of Brook and Evans (Biometrika 59 (1972) 539) written for this: states of the sum, one side. */
    private static double runLength(double slack, double decision, double shift) {
        int states = 300;
        double width = 2 * decision / (2 * states - 1);
        double[][] chain = new double[states][states];
        double[] ones = new double[states];
        org.hipparchus.distribution.continuous.NormalDistribution normal =
                new org.hipparchus.distribution.continuous.NormalDistribution();
        for (int from = 0; from < states; from++) {
            ones[from] = 1;
            for (int to = 0; to < states; to++) {
                double step = (to - from) * width + slack - shift;
                double p = normal.cumulativeProbability(step + width / 2)
                        - (to == 0 ? 0 : normal.cumulativeProbability(step - width / 2));
                chain[from][to] = (from == to ? 1 : 0) - p;
            }
        }
        return new org.hipparchus.linear.LUDecomposition(new org.hipparchus.linear.Array2DRowRealMatrix(chain))
                .getSolver()
                .solve(new org.hipparchus.linear.ArrayRealVector(ones))
                .getEntry(0);
    }

    /** False alarms of both sides together: half of one side's. Montgomery, table of cusum run lengths: 370 at h 4.77. */
    @Test
    void theUsualSumRaisesAFalseAlarmInAboutThreeHundredAndSeventyReadings() {
        CumulativeSumSetting usual = CumulativeSumSetting.USUAL;
        assertThat(runLength(usual.slack(), usual.decision(), 0) / 2).isCloseTo(370, within(2.0));
        assertThat(runLength(0.5, 5, 0) / 2).isCloseTo(465.44, within(0.5));
        assertThat(runLength(0.5, 5, 1)).isCloseTo(10.38, within(0.01));
    }

    /**
     * Readings until an alarm after a shift of one σ, from many drawn processes. Cusum k 0.5, h 5: 10.4, no shift: 465
     * (Montgomery, table 9.3); limits at 3 σ: 43.89, no shift 370.4 (geometric distribution).
     */
    @ParameterizedTest
    @CsvSource({"0, 465.4, 370.4", "1, 10.38, 43.89", "2, 4.01, 6.30"})
    void alarmsComeAsSoonAsTablesSay(double shift, double sum, double limits) {
        Random random = new Random(1954);
        Baseline base = given(0, 1);
        int rounds = 400;
        double untilSum = 0;
        double untilLimits = 0;
        for (int round = 0; round < rounds; round++) {
            List<Double> readings = random.doubles(shift == 0 ? 6000 : 500)
                    .map(each -> shift + random.nextGaussian())
                    .boxed()
                    .toList();
            untilSum += 1
                    + Published.value(ControlChart.cumulativeSum(readings, base, new CumulativeSumSetting(0.5, 5)))
                            .first()
                            .orElseThrow()
                            .index();
            untilLimits += 1
                    + Published.value(ControlChart.individuals(readings, base, RunRule.LIMITS_ALONE)).alarms().stream()
                            .filter(alarm -> alarm.plotted() == ControlChart.Plotted.READING)
                            .findFirst()
                            .orElseThrow()
                            .index();
        }
        assertThat(untilSum / rounds).isCloseTo(sum, within(4.5 * sum / Math.sqrt(rounds)));
        assertThat(untilLimits / rounds).isCloseTo(limits, within(4.5 * limits / Math.sqrt(rounds)));
    }

    /** Limits stay where the base put them, whatever is charted. */
    @Test
    void limitsStayFrozen() {
        List<Double> base = DRIFT.subList(0, 5);
        Baseline frozen = Published.value(Baseline.ofReadings(base));
        ControlChart early = Published.value(ControlChart.individuals(base, frozen, RunRule.NELSON));
        ControlChart late = Published.value(ControlChart.individuals(DRIFT, frozen, RunRule.NELSON));
        assertThat(late.traces().get(0).points().get(11).upper())
                .isEqualTo(early.traces().get(0).points().get(0).upper());
        assertThat(late.baseline()).isEqualTo(frozen);
        assertThat(frozen.mean()).isCloseTo(0.18, within(1e-12));
        assertThat(frozen.sigma()).isCloseTo((0.4 + 0.3 + 0.2 + 0.3) / 4 / 1.128379167, within(1e-9));
    }

    @Test
    void aBaseThatDoesNotStandStillIsDoubtedInWords() {
        assertThat(Published.value(BaseDoubts.of(DRIFT)).sentences())
                .anySatisfy(words -> assertThat(words).startsWith("The base has 12 readings"))
                .anySatisfy(words -> assertThat(words).contains("resemble each other"));
        Random random = new Random(1);
        List<Double> still =
                random.doubles(40).map(each -> random.nextGaussian()).boxed().toList();
        assertThat(Published.value(BaseDoubts.of(still)).sentences()).isEmpty();
        List<Double> leap = new ArrayList<>(still);
        leap.set(30, 9.0);
        assertThat(Published.value(BaseDoubts.of(leap)).sentences())
                .anySatisfy(words -> assertThat(words)
                        .startsWith("The base does not stand still by its own limits. Reading 31: the reading, 9."));
    }

    @Test
    void deviationsAreScaledByTheirTolerance() {
        assertThat(Published.value(ScaledDeviation.of(100.3, 100, 99, 101)).share())
                .isCloseTo(0.3, within(1e-12));
        assertThat(Published.value(ScaledDeviation.of(65.0, 65.5, 65.0, 66.0)).share())
                .isCloseTo(-1, within(1e-12));
        assertThat(Published.value(ScaledDeviation.of(1, 0, 0, 4)).share()).isCloseTo(0.5, within(1e-12));
        assertThat(Published.words(ScaledDeviation.of(1, 0, 2, 2)))
                .contains("The limits 2 and 2 leave nothing between them to scale by.");
        assertThat(Published.words(ScaledDeviation.of(1, 5, 0, 2)))
                .containsExactly("The nominal, 5, is not between the limits 0 and 2.");
        assertThat(Published.words(ScaledDeviation.of(Double.NaN, 0, -1, Double.POSITIVE_INFINITY)))
                .hasSize(2);
    }

    @Test
    void noSpreadNoReadingAndWrongSettingsAreSentences() {
        assertThat(Published.words(Baseline.ofReadings(Collections.nCopies(30, 0.1))))
                .containsExactly("All readings of the base are the same, 0.1: without spread there are no limits. A"
                        + " finer gauge or a given standard deviation would give some.");
        assertThat(Published.words(Baseline.ofReadings(List.of(0.3)))).hasSize(1);
        assertThat(Published.words(Baseline.ofReadings(List.of(0.3), 0)))
                .containsExactly("The standard deviation, 0, is not above 0.");
        assertThat(Published.words(Baseline.given(Double.NaN, -1))).hasSize(2);
        assertThat(Published.words(Baseline.byRanges(List.of(List.of(1.0, 1.0), List.of(2.0, 2.0)))))
                .containsExactly("The readings inside every group are the same: without spread there are no limits.");
        assertThat(Published.words(Baseline.byDeviations(List.of(List.of(1.0, 1.1), List.of(2.0)))))
                .containsExactly("Group 2 has 1 readings, the first has 2: limits hold for groups of one size.");
        assertThat(Published.words(Baseline.byRanges(List.of(List.of(1.0)))))
                .containsExactly("Groups of 1 cannot be charted: from 2 to 25 readings can.");
        assertThat(Published.words(Baseline.byRanges(List.of()))).containsExactly("There is no group of readings.");
        Baseline base = given(0, 1);
        assertThat(Published.words(ControlChart.individuals(List.of(), base, RunRule.NELSON)))
                .containsExactly("There is no reading to chart.");
        assertThat(Published.words(ControlChart.individuals(List.of(1.0, Double.NaN), base, RunRule.NELSON)))
                .containsExactly("Reading 2 is no number.");
        assertThat(Published.words(
                        ControlChart.weightedMean(List.of(1.0), base, new WeightedMeanSetting(1.5, 0, false))))
                .containsExactly(
                        "The weight of the newest reading, 1.5, is not above 0 and at most 1.",
                        "The width of the limits, 0, is not above 0.");
        assertThat(Published.words(ControlChart.cumulativeSum(
                        List.of(1.0), base, new CumulativeSumSetting(-0.5, Double.POSITIVE_INFINITY))))
                .hasSize(2);
        Baseline grouped = new Baseline(0, 1, 20, 5, Baseline.Origin.RANGES);
        assertThat(Published.words(ControlChart.individuals(List.of(1.0), grouped, RunRule.NELSON)))
                .containsExactly("The base was taken from groups of 5, what is charted comes singly.");
        assertThat(Published.words(ControlChart.meansAndRanges(
                        List.of(List.of(1.0, 2.0)),
                        new Baseline(0, Double.NaN, 20, 2, Baseline.Origin.RANGES),
                        Set.of())))
                .containsExactly("The standard deviation of the base is no number that can be reckoned with.");
        assertThat(Published.value(ControlChart.individuals(List.of(9.0), base, Set.of()))
                        .alarms())
                .isEmpty();
    }
}
