package org.trammel.calc.geometry;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.trammel.calc.units.Answer;

/**
 * Ten thousand random designs, one after the other on one thread: closed from sets that builders draw from, checked, and
 * all their tubes cut. Started by {@code ops/bench/frames}; ends with 1 if designs are lost on the way, never for being
 * slow.
 */
final class FramesBenchmark {

    private static final int DESIGNS = 10_000;
    private static final int ROUNDS = 6;
    private static final SawRules RULES = SawRules.usual(List.of(32.0, 35.0, 42.0, 54.0));

    /** What is taken out of the thirteen numbers of a layout and what is given in its place. */
    private static final List<List<Set<Dimension>>> SETS = List.of(
            List.of(EnumSet.noneOf(Dimension.class), EnumSet.noneOf(Dimension.class)),
            List.of(EnumSet.of(Dimension.HEAD_TUBE), EnumSet.of(Dimension.STACK)),
            List.of(EnumSet.of(Dimension.REACH), EnumSet.of(Dimension.EFFECTIVE_TOP_TUBE)),
            List.of(EnumSet.of(Dimension.SHELL_DROP), EnumSet.of(Dimension.SHELL_HEIGHT)),
            List.of(EnumSet.of(Dimension.CHAINSTAY), EnumSet.of(Dimension.WHEELBASE)),
            List.of(EnumSet.of(Dimension.FORK_OFFSET), EnumSet.of(Dimension.TRAIL)),
            List.of(EnumSet.of(Dimension.HEAD_ANGLE), EnumSet.of(Dimension.FRONT_CENTRE)),
            List.of(
                    EnumSet.of(Dimension.HEAD_ANGLE, Dimension.HEAD_TUBE),
                    EnumSet.of(Dimension.STACK, Dimension.WHEELBASE)));

    private FramesBenchmark() {}

    public static void main(String[] arguments) {
        PrintStream out = System.out;
        List<Map<Dimension, Double>> designs = designs();
        boolean worthIt = true;
        out.printf(Locale.ROOT, "%d random designs: closed, checked, every tube cut; one thread%n", DESIGNS);
        for (int round = 0; round < ROUNDS; round++) {
            long began = System.nanoTime();
            long work = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            int whole = 0;
            int mitres = 0;
            for (Map<Dimension, Double> design : designs) {
                int cut = cut(design);
                whole += cut >= 0 ? 1 : 0;
                mitres += Math.max(0, cut);
            }
            double millis = (System.nanoTime() - began) / 1e6;
            double worked = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - work) / 1e6;
            out.printf(
                    Locale.ROOT,
                    "round %d%s: %.0f ms by the clock, %.0f ms of work, %.1f µs each; %d closed and checked, %d mitred ends%n",
                    round + 1,
                    round == 0 ? " (cold)" : "",
                    millis,
                    worked,
                    1000 * worked / DESIGNS,
                    whole,
                    mitres);
            worthIt &= whole == DESIGNS && mitres > 3 * DESIGNS;
        }
        System.exit(worthIt ? 0 : 1);
    }

    private static List<Map<Dimension, Double>> designs() {
        List<Map<Dimension, Double>> designs = new ArrayList<>();
        int set = 0;
        for (FrameGeometry frame : RandomFrames.frames(DESIGNS, 20261130)) {
            List<Set<Dimension>> change = SETS.get(set++ % SETS.size());
            Set<Dimension> given = EnumSet.range(Dimension.HEAD_ANGLE, Dimension.REAR_WHEEL_RADIUS);
            given.removeAll(change.get(0));
            given.addAll(change.get(1));
            Map<Dimension, Double> values = new EnumMap<>(Dimension.class);
            given.forEach(dimension -> values.put(dimension, dimension.of(frame)));
            designs.add(values);
        }
        return designs;
    }

    /** Ends that were mitred; below 0 if the design was not closed and checked. */
    private static int cut(Map<Dimension, Double> design) {
        if (!(Closure.of(design) instanceof ClosureOutcome.Closed closed)) {
            return -1;
        }
        FrameGeometry frame = closed.geometry();
        Layout layout = frame.layout();
        JointPlaces places =
                new JointPlaces(layout.headTube_mm() * 0.27, layout.headTube_mm() * 0.26, layout.seatTube_mm() * 0.1);
        if (!(TubeAxes.of(frame, places) instanceof Answer.Determined<TubeAxes> axes) || !checked(axes.value())) {
            return -1;
        }
        Stays stays = value(Stays.of(frame, new StayPlaces(layout.seatTube_mm() * 0.13, 24, 148, 18, 4, 42, 34.9)));
        StaySet set = new StaySet(
                value(BentStay.of(stays.chainstay(), List.of())),
                value(BentStay.of(stays.seatstay(), List.of())),
                TubeStock.plain(22, 1.6),
                TubeStock.plain(18, 1.4),
                new DropoutPlate(6, 0.1, 25));
        TubeSet tubes = new TubeSet(
                54,
                42,
                TubeStock.plain(38, 1.4),
                TubeStock.plain(31.8, 1.15),
                TubeStock.plain(34.9, 1.35),
                Map.of(),
                set);
        return (int) value(CutList.of(axes.value(), tubes, RULES)).pieces().stream()
                .flatMap(piece -> Arrays.stream(new EndCut[] {piece.endOne(), piece.endTwo()}))
                .filter(EndCut.Mitred.class::isInstance)
                .count();
    }

    private static boolean checked(TubeAxes axes) {
        FrameGeometry frame = axes.geometry();
        return Clearances.rearTyreToSeatTube(frame, 17.45, 6) instanceof Answer.Determined<?>
                && Clearances.pedalToFrontTyre(frame, 170, 100) instanceof Answer.Determined<?>
                && Clearances.standover(frame, axes.topTubeAtSeat(), axes.topTubeAtHead(), 15.9, 20, 900)
                        instanceof Answer.Determined<?>
                && Clearances.headTube(
                                frame,
                                27,
                                new Clearances.TubeAtHead(axes.topTubeAtHead(), axes.topTubeAtSeat(), 15.9),
                                new Clearances.TubeAtHead(axes.downTubeAtHead(), FrameGeometry.SHELL, 19),
                                8)
                        instanceof Answer.Determined<?>;
    }

    private static <T> T value(Answer<T> answer) {
        return ((Answer.Determined<T>) answer).value();
    }
}
