package org.trammel.calc.statistics;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.trammel.calc.units.Answer;

/**
 * All charts over a hundred thousand readings, one after the other on one thread, beside a plain loop over bare numbers
 * that does the same arithmetic and keeps nothing. Started by {@code ops/bench/charts}; ends with 1 if charts or alarms
 * are lost on the way or the two do not agree, never for being slow.
 */
final class ChartsBenchmark {

    private static final int READINGS = 100_000;
    private static final int SERIES = 500;
    private static final int BASE = 20;
    private static final int GROUP = 5;
    private static final int ROUNDS = 8;

    private final PrintStream out = System.out;
    private boolean worthIt = true;

    private ChartsBenchmark() {}

    public static void main(String[] arguments) {
        ChartsBenchmark benchmark = new ChartsBenchmark();
        benchmark.measure("in 500 series of 200", series(SERIES, 1));
        benchmark.measure("in 500 series of 200 that drifted off", series(SERIES, 8));
        benchmark.measure("in one series", series(1, 1));
        System.exit(benchmark.worthIt ? 0 : 1);
    }

    /** Scaled deviations; the second half of every tenth series, or of more of them, is off by two deviations. */
    private static List<List<Double>> series(int count, int ofTenDrift) {
        Random random = new Random(20261130);
        List<List<Double>> series = new ArrayList<>();
        for (int s = 0; s < count; s++) {
            double drift = s % 10 < ofTenDrift ? 0.7 : 0;
            List<Double> readings = new ArrayList<>();
            int length = READINGS / count;
            for (int i = 0; i < length; i++) {
                readings.add((i > length / 2 ? drift : 0) + 0.35 * random.nextGaussian());
            }
            series.add(readings);
        }
        return series;
    }

    private void measure(String what, List<List<Double>> series) {
        double[][] bare = series.stream().map(Summary::numbers).toArray(double[][]::new);
        double[] whole = new double[ROUNDS];
        double[] plain = new double[ROUNDS];
        out.printf(Locale.ROOT, "%d readings %s: every chart, every rule; one thread%n", READINGS, what);
        for (int round = 0; round < ROUNDS; round++) {
            long began = work();
            double last = 0;
            long alarms = 0;
            for (List<Double> readings : series) {
                for (ControlChart chart : charts(readings)) {
                    alarms += chart.alarms().size();
                    last += lastOf(chart);
                }
            }
            whole[round] = (work() - began) / 1e6;
            began = work();
            double expected = 0;
            for (double[] readings : bare) {
                expected += plain(readings);
            }
            plain[round] = (work() - began) / 1e6;
            worthIt &= alarms > SERIES / 10 && Math.abs(last - expected) < 1e-9 * (1 + Math.abs(expected));
            out.printf(
                    Locale.ROOT,
                    "round %d%s: %.1f ms of work, the plain loop %.2f ms; %d alarms%n",
                    round + 1,
                    round == 0 ? " (cold)" : "",
                    whole[round],
                    plain[round],
                    alarms);
        }
        Arrays.sort(whole, 1, ROUNDS);
        Arrays.sort(plain, 1, ROUNDS);
        out.printf(
                Locale.ROOT,
                "median of the warm: %.1f ms, plain %.2f ms, ratio %.1f%n%n",
                whole[ROUNDS / 2],
                plain[ROUNDS / 2],
                whole[ROUNDS / 2] / plain[ROUNDS / 2]);
    }

    private static long work() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static List<ControlChart> charts(List<Double> readings) {
        Baseline base = value(Baseline.ofReadings(readings.subList(0, BASE)));
        List<List<Double>> groups = new ArrayList<>();
        for (int i = 0; i + GROUP <= readings.size(); i += GROUP) {
            groups.add(readings.subList(i, i + GROUP));
        }
        List<List<Double>> baseGroups = groups.subList(0, BASE / GROUP);
        return List.of(
                value(ControlChart.individuals(readings, base, RunRule.NELSON)),
                value(ControlChart.weightedMean(readings, base, WeightedMeanSetting.USUAL)),
                value(ControlChart.cumulativeSum(readings, base, CumulativeSumSetting.USUAL)),
                value(ControlChart.meansAndRanges(groups, value(Baseline.byRanges(baseGroups)), RunRule.NELSON)),
                value(ControlChart.meansAndDeviations(
                        groups, value(Baseline.byDeviations(baseGroups)), RunRule.NELSON)));
    }

    private static double lastOf(ControlChart chart) {
        double last = 0;
        for (ControlChart.Trace trace : chart.traces()) {
            last += trace.points().get(trace.points().size() - 1).value();
        }
        return last;
    }

    /** Last points of the same traces. */
    private static double plain(double[] x) {
        double mean = 0;
        double steps = 0;
        for (int i = 0; i < BASE; i++) {
            mean += x[i] / BASE;
            steps += i == 0 ? 0 : Math.abs(x[i] - x[i - 1]) / (BASE - 1);
        }
        double sigma = steps / 1.1283791670955126;
        double weighted = mean;
        double above = 0;
        double below = 0;
        double step = 0;
        for (int i = 0; i < x.length; i++) {
            step = i == 0 ? 0 : Math.abs(x[i] - x[i - 1]);
            weighted = 0.2 * x[i] + 0.8 * weighted;
            above = Math.max(0, above + x[i] - mean - 0.5 * sigma);
            below = Math.min(0, below + x[i] - mean + 0.5 * sigma);
        }
        double groupMean = 0;
        double range = 0;
        double deviation = 0;
        for (int i = 0; i + GROUP <= x.length; i += GROUP) {
            double sum = 0;
            double squares = 0;
            double least = x[i];
            double most = x[i];
            for (int j = i; j < i + GROUP; j++) {
                sum += x[j];
                least = Math.min(least, x[j]);
                most = Math.max(most, x[j]);
            }
            groupMean = sum / GROUP;
            for (int j = i; j < i + GROUP; j++) {
                squares += (x[j] - groupMean) * (x[j] - groupMean);
            }
            range = most - least;
            deviation = Math.sqrt(squares / (GROUP - 1));
        }
        return x[x.length - 1] + step + weighted + above + below + 2 * groupMean + range + deviation;
    }

    private static <T> T value(Answer<T> answer) {
        return ((Answer.Determined<T>) answer).value();
    }
}
