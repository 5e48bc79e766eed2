package org.trammel.calc.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.trammel.calc.statistics.ControlChart.Alarm;
import org.trammel.calc.statistics.ControlChart.Plotted;
import org.trammel.calc.statistics.ControlChart.Point;
import org.trammel.calc.units.Answer;

/**
 * Charts that go on after others. Where a row is cut must not show: the whole charts, which are held against published ones
 * in {@link ControlChartTest}, are the check.
 */
class ContinuedChartsTest {

    private static final Baseline BASE = Published.value(Baseline.given(0, 1));

    private static List<ControlChart> charts(ChartedBefore before, List<Double> readings, Set<RunRule> rules) {
        return List.of(
                Published.value(ControlChart.individuals(before, readings, BASE, rules)),
                Published.value(ControlChart.weightedMean(before, readings, BASE, WeightedMeanSetting.USUAL)),
                Published.value(ControlChart.cumulativeSum(before, readings, BASE, CumulativeSumSetting.USUAL)));
    }

    private static double last(ControlChart chart, int trace) {
        List<Point> points = chart.traces().get(trace).points();
        return points.get(points.size() - 1).value();
    }

    /** Readings of one decimal, so that some are equal, some on a line; some stretches drift, alternate or stand still. */
    private static List<Double> row(long seed) {
        Random random = new Random(seed);
        List<Double> row = new ArrayList<>();
        while (row.size() < 90) {
            int manner = random.nextInt(5);
            int length = 5 + random.nextInt(20);
            for (int i = 0; i < length; i++) {
                double each = switch (manner) {
                    case 0 -> random.nextGaussian();
                    case 1 -> 0.2 * i - 1;
                    case 2 -> (i % 2 == 0 ? 1.5 : -1.5) + 0.3 * random.nextGaussian();
                    case 3 -> 0.4 * random.nextGaussian();
                    default -> 1.2 + random.nextGaussian();
                };
                row.add(Math.round(10 * each) / 10.0);
            }
        }
        return row;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void whereARowIsCutDoesNotShow(long seed) {
        List<Double> row = row(seed);
        Set<RunRule> rules = Set.of(RunRule.values());
        List<ControlChart> whole = charts(ChartedBefore.nothing(BASE), row, rules);
        assertThat(whole.get(0).alarms().stream().map(Alarm::rule).distinct()).hasSizeGreaterThan(2);
        for (int cut = 1; cut < row.size(); cut++) {
            List<Double> head = row.subList(0, cut);
            List<ControlChart> before = charts(ChartedBefore.nothing(BASE), head, rules);
            ChartedBefore kept = new ChartedBefore(
                    cut,
                    last(before.get(1), 0),
                    last(before.get(2), 0),
                    last(before.get(2), 1),
                    ChartedBefore.nothing(BASE).recentAfter(head));
            List<ControlChart> after = charts(kept, row.subList(cut, row.size()), rules);
            for (int chart = 0; chart < 3; chart++) {
                for (int trace = 0; trace < whole.get(chart).traces().size(); trace++) {
                    int from = cut;
                    assertThat(after.get(chart).traces().get(trace).points())
                            .as("seed " + seed + ", cut at " + cut)
                            .isEqualTo(whole.get(chart).traces().get(trace).points().stream()
                                    .filter(point -> point.index() >= from)
                                    .toList());
                }
                int from = cut;
                assertThat(after.get(chart).alarms())
                        .as("seed " + seed + ", cut at " + cut)
                        .isEqualTo(whole.get(chart).alarms().stream()
                                .filter(alarm -> alarm.index() >= from)
                                .toList());
            }
        }
    }

    @Test
    void aMemoryThatIsTooShortIsRefusedAndNotReckonedWith() {
        ChartedBefore forgot = new ChartedBefore(20, 0, 0, 0, List.of(0.1, 0.2));
        Answer<ControlChart> answer = ControlChart.individuals(forgot, List.of(0.3), BASE, RunRule.LIMITS_ALONE);
        assertThat(((Answer.NotDeterminable<ControlChart>) answer).gaps())
                .singleElement()
                .satisfies(gap -> assertThat(gap.input()).isEqualTo("before"));
    }

    @Test
    void aStepIsTakenFromTheLastReadingBefore() {
        ChartedBefore one = new ChartedBefore(1, 0.2, 0.5, 0, List.of(1.0));
        ControlChart chart = Published.value(ControlChart.individuals(one, List.of(5.5), BASE, RunRule.LIMITS_ALONE));
        assertThat(chart.traces().get(1).points()).singleElement().satisfies(step -> {
            assertThat(step.index()).isEqualTo(1);
            assertThat(step.value()).isEqualTo(4.5);
        });
        assertThat(chart.alarms().stream().map(Alarm::plotted)).contains(Plotted.READING, Plotted.MOVING_RANGE);
    }
}
