package org.trammel.calc.metrology;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import org.trammel.calc.units.Answer;

/**
 * One frame on the plate, reduced and judged, and the same reduced over the error of a failed gauge; on one thread. Started by
 * {@code ops/bench/alignment}; ends with 1 if a deviation gets no verdict, never for being slow.
 */
final class AlignmentBenchmark {

    private static final PrintStream OUT = System.out;
    private static final int TIMES = 200;
    private static final int ROUNDS = 6;

    private AlignmentBenchmark() {}

    public static void main(String[] arguments) {
        Judging judging = Judging.guarded(Limits.between(BigDecimal.ONE.negate(), BigDecimal.ONE));
        ReadingError error = ReadingError.found("HG-2", new BigDecimal("0.18"), new BigDecimal("20"));
        boolean worthIt = measure("a frame reduced and judged", time -> judgesAll(frame(time), judging));
        worthIt &= measure("a frame reduced over an error", time -> spansAll(frame(time), error));
        System.exit(worthIt ? 0 : 1);
    }

    /** Each a little different, so that nothing computed once serves twice. */
    private static PlateReadings frame(int time) {
        PlateFrame frame = new PlateFrame();
        frame.shellGauge = "HG-2";
        frame.tubeGauge = "HG-2";
        frame.tiltAhead = 1e-5 * time;
        return frame.readings();
    }

    private static boolean judgesAll(PlateReadings readings, Judging judging) {
        Alignment alignment = AlignmentPointsTest.alignment(readings);
        return alignment.missing().isEmpty()
                && alignment.deviations().stream()
                        .noneMatch(found -> judging.judge(found) instanceof ConformityDecision.GaugeUnfit);
    }

    /** What a re-judgement does with the figures of a frame. */
    private static boolean spansAll(PlateReadings readings, ReadingError error) {
        return DeviationSpan.of(readings, error) instanceof Answer.Determined<List<DeviationSpan>> found
                && !found.value().isEmpty();
    }

    private static boolean measure(String what, IntPredicate done) {
        boolean all = true;
        double[] rounds = new double[ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            long began = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            for (int time = 0; time < TIMES; time++) {
                all &= done.test(round * TIMES + time);
            }
            rounds[round] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - began) / 1e6 / TIMES;
        }
        double cold = rounds[0];
        Arrays.sort(rounds, 1, ROUNDS);
        OUT.printf(
                Locale.ROOT,
                "%s: %.2f ms of work each, of the first %d cold ones %.2f ms%n",
                what,
                rounds[ROUNDS / 2],
                TIMES,
                cold);
        return all;
    }
}
