package org.trammel.calc.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.metrology.Rejudgement.Outcome;
import org.trammel.calc.metrology.Rejudgement.Rejudged;
import org.trammel.calc.units.Answer;
import org.trammel.calc.units.DecimalSign;

/** A height gauge found 0,18 mm high; the truth lies anywhere between reading − 0,18 and reading. */
class RejudgementTest {

    private static final ReadingError HIGH = ReadingError.found("HG-2", new BigDecimal("0.18"), new BigDecimal("20"));

    /**
     * Worked example of the trade: axle offset, ±1,00, u 0,060, so conforming within 0,90. Read +0,75 it lies between
     * +0,57 and +0,75, cleared; read −0,80 between −0,98 and −0,80, which may be past 0,90.
     */
    @ParameterizedTest
    @CsvSource({
        "0.75, 0.57, 0.75, CLEARED",
        "-0.80, -0.98, -0.80, MEASURE_AGAIN",
        "0.90, 0.72, 0.90, CLEARED",
        "0.91, 0.73, 0.91, MEASURE_AGAIN",
        "-0.72, -0.90, -0.72, CLEARED",
        "-0.73, -0.91, -0.73, MEASURE_AGAIN"
    })
    void anOffsetIsClearedOrNot(BigDecimal read, BigDecimal least, BigDecimal greatest, Outcome outcome) {
        Judging judging = guarded("-1.0", "1.0");
        Answer<ReadingSpan> span = ReadingSpan.of(Reduction.SINGLE, List.of(read), judging.limits(), HIGH);
        ReadingSpan found = ((Answer.Determined<ReadingSpan>) span).value();
        assertThat(found.least()).isEqualByComparingTo(least);
        assertThat(found.greatest()).isEqualByComparingTo(greatest);
        assertThat(found.outcome(judging, new BigDecimal("0.060"))).isEqualTo(outcome);
    }

    /**
     * The same through the heights: shell read with another gauge, axle ends at 224 and 76 mm with the failed one, so
     * their errors are independent and the middle may be off by all of it.
     */
    @Test
    void theAxleOffsetRunsOverTheWholeSpan() {
        PlateFrame frame = frame("HG-1", "HG-1");
        PlateReadings r = frame.readings();
        PlateReadings.AxleReadings a = r.axle();
        PlateReadings readings = r.withAxle(new PlateReadings.AxleReadings(
                a.x_mm(), a.y_mm(), withGauge(a.driveFace()), withGauge(a.nonDriveFace()), a.insideWidths()));
        Rejudged offset = only(rejudged(readings, Deviation.REAR_AXLE_OFFSET, guarded("-1", "1")));
        assertThat(offset.least()).isCloseTo(0.57, within(1e-4));
        assertThat(offset.greatest()).isCloseTo(0.75, within(1e-4));
        // its u, with the doubt of a datum from small faces, leaves less than 0,75
        assertThat(offset.outcome()).isEqualTo(Outcome.MEASURE_AGAIN);
        // with the 0,060 that a shop may set, the limit is 0,901 and all of the span below it
        Judging set = guarded("-1", "1").withU(new BigDecimal("0.060"));
        assertThat(only(rejudged(readings, Deviation.REAR_AXLE_OFFSET, set)).outcome())
                .isEqualTo(Outcome.CLEARED);
        assertThat(offset.words(DecimalSign.COMMA)).contains("between 0,570 and 0,750 mm", "measure again");
    }

    /** A mandrel's ends 1,2 mm apart in height share the error: the twist stands as it was, −0,246°, under 0,267. */
    @Test
    void whatCancelsIsRecognised() {
        List<AxisStation> seat = List.of(seat("ST at 100", 100, 150.00), seat("ST at 400", 400, 150.09));
        List<AxisStation> head = AlignmentPlateTest.headAt(
                150,
                failed(AlignmentPlateTest.reading("mandrel lower", 150.30, false, true)),
                failed(AlignmentPlateTest.reading("mandrel upper", 149.10, false, true)));
        PlateReadings readings = AlignmentPlateTest.example(head, true).withSeatTube(seat);
        Rejudged twist = only(rejudged(readings, Deviation.TWIST, guarded("-0.30", "0.30")));
        assertThat(twist.judgedLeast().doubleValue()).isCloseTo(-0.246, within(0.0005));
        assertThat(twist.cancels()).isTrue();
        assertThat(twist.outcome()).isEqualTo(Outcome.CLEARED);
        assertThat(twist.words(DecimalSign.COMMA)).contains("falls out", "cleared by calculation");
    }

    @Test
    void whatTheGaugeDidNotReadIsNotTouched() {
        Answer<Rejudgement> answer = Rejudgement.of(
                frame("HG-1", "HG-1").readings(),
                HIGH,
                Map.of(Deviation.TWIST, guarded("-0.30", "0.30"), Deviation.AXLE_WIDTH, guarded("148", "148.5")));
        Rejudgement all = ((Answer.Determined<Rejudgement>) answer).value();
        assertThat(all.deviations()).extracting(Rejudged::outcome).containsOnly(Outcome.NOT_TOUCHED);
        assertThat(all.outcome()).isEqualTo(Outcome.NOT_TOUCHED);
        // the width comes from a calliper, whatever gauge read the heights
        Answer<Rejudgement> mixed = Rejudgement.of(
                frame("HG-2", "HG-2").readings(),
                HIGH,
                Map.of(Deviation.REAR_AXLE_OFFSET, guarded("-1", "1"), Deviation.AXLE_WIDTH, guarded("148", "148.5")));
        Rejudgement some = ((Answer.Determined<Rejudgement>) mixed).value();
        assertThat(some.deviations())
                .extracting(Rejudged::outcome)
                .containsExactly(Outcome.MEASURE_AGAIN, Outcome.NOT_TOUCHED);
        assertThat(some.outcome()).isEqualTo(Outcome.MEASURE_AGAIN);
    }

    /** An arm has no error over what it reads along an axis; what it read is not called untouched. */
    @Test
    void whatAnArmReadCannotBeCleared() {
        Answer<Rejudgement> answer = Rejudgement.of(
                new ProbedFrame().readings(),
                ReadingError.found("AR-1", new BigDecimal("-0.1"), new BigDecimal("20")),
                Map.of(Deviation.REAR_YAW, guarded("-1", "1")));
        assertThat(answer).isInstanceOf(Answer.NotDeterminable.class);
        assertThat(answer.toString()).contains("is a coordinate", "measured again");
    }

    /**
     * A calliper found 0.18 too high. Both chainstays are read over the pins and alike, so its error falls out of their
     * difference; the width between the faces, 148.2 and 148.22 read, is that or up to 0.18 less; the diameters under the
     * heights of the tubes, 34.9 and 54, err each by their own: half of up to 0.18 on the tube's middle.
     */
    @Test
    void anErrorOverWhatACalliperReadsIsTriedOnItsDistances() {
        ReadingError error = ReadingError.found("CA-4", new BigDecimal("0.18"), new BigDecimal("20"));
        Map<Deviation, Judging> judging = Map.of(
                Deviation.AXLE_WIDTH, guarded("147", "149"), Deviation.CHAINSTAY_DIFFERENCE, guarded("-0.5", "0.5"));
        Answer<Rejudgement> answer = Rejudgement.of(frame("HG-1", "HG-1").readings(), error, judging);
        Rejudgement all = ((Answer.Determined<Rejudgement>) answer).value();
        assertThat(all.deviations()).hasSize(2);
        for (Rejudged one : all.deviations()) {
            BigDecimal read = Figure.judged(one.measured().value());
            boolean width = one.measured().what() == Deviation.AXLE_WIDTH;
            assertThat(one.judgedGreatest()).isEqualByComparingTo(read);
            assertThat(one.judgedLeast()).isEqualByComparingTo(width ? read.subtract(new BigDecimal("0.18")) : read);
            assertThat(one.cancels()).isEqualTo(!width);
            assertThat(one.outcome()).isEqualTo(Outcome.CLEARED);
        }
    }

    /** Figures within 20 mm of each other: heights and distances, and distances inside and over a part, err apart. */
    @Test
    void onlyFiguresOfOneScaleShareAnError() {
        List<ErrorGroups.Figure> figures = List.of(
                new ErrorGroups.Figure(new BigDecimal("150"), Scale.HEIGHT),
                new ErrorGroups.Figure(new BigDecimal("148"), Scale.INSIDE),
                new ErrorGroups.Figure(new BigDecimal("149"), Scale.INSIDE),
                new ErrorGroups.Figure(new BigDecimal("148"), Scale.OUTSIDE),
                new ErrorGroups.Figure(new BigDecimal("151"), Scale.HEIGHT));
        assertThat(ErrorGroups.ofScales(figures, new BigDecimal("20")))
                .containsExactly(List.of(List.of(0, 4), List.of(1, 2), List.of(3)));
    }

    /**
     * Independent method: every group of heights gets each of five errors from none to 0,18, all combinations, and random
     * ones beside, for every way to cut the heights into groups; the bounds hold them all and are reached.
     *
     * <p>With all read by one gauge the tubes' upper sides, 17 and 27 mm above the middle, make a chain with the shell's
     * upper face, 36,5 above it, that can be cut in two ways.
     */
    @ParameterizedTest
    @CsvSource({"HG-2, HG-1, 0.004, 1", "HG-2, HG-2, 0.004, 2", "HG-2, HG-2, 0.008, 2", "HG-1, HG-2, 0.01, 1"})
    void theBoundsAreThoseOfAllErrorsTried(String shell, String tubes, double tiltAhead, int expectedWays) {
        PlateFrame frame = frame(shell, tubes);
        frame.tiltAhead = tiltAhead;
        PlateReadings r = frame.readings();
        PlateReadings readings =
                new PlateReadings(r.datum(), true, r.headTube(), r.seatTube(), r.axle(), null, null, null);
        FrameModel model = ((Answer.Determined<FrameModel>) Alignment.model(readings)).value();
        List<List<List<Integer>>> ways = byHand(model);
        assertThat(ways).hasSize(expectedWays);
        Map<Deviation, double[]> seen = new EnumMap<>(Deviation.class);
        ways.forEach(groups -> tryErrors(model, groups, seen));
        Rejudgement rejudgement = rejudged(readings, null, guarded("-1", "1"));
        for (Rejudged one : rejudgement.deviations()) {
            double[] span = seen.get(one.measured().what());
            String what = one.measured().what().name();
            assertThat(one.least())
                    .as(what)
                    .isLessThanOrEqualTo(span[0] + 1e-12)
                    .isCloseTo(span[0], within(2e-6));
            assertThat(one.greatest())
                    .as(what)
                    .isGreaterThanOrEqualTo(span[1] - 1e-12)
                    .isCloseTo(span[1], within(2e-6));
        }
        assertThat(rejudgement.deviations()).hasSameSizeAs(model.told());
    }

    private static void tryErrors(FrameModel model, List<List<Integer>> groups, Map<Deviation, double[]> seen) {
        double[] read = Propagation.values(model.quantities());
        int combinations = (int) Math.pow(5, groups.size());
        Random random = new Random(groups.size());
        for (int way = 0; way < combinations + 1000; way++) {
            double[] q = read.clone();
            int digits = way;
            for (List<Integer> group : groups) {
                double error = way < combinations ? 0.18 * (digits % 5) / 4 : 0.18 * random.nextDouble();
                digits /= 5;
                group.forEach(i -> q[i] -= error);
            }
            double[] y = model.apply(q);
            for (int j = 0; j < y.length; j++) {
                double[] span = seen.computeIfAbsent(
                        model.told().get(j), what -> new double[] {Double.MAX_VALUE, -Double.MAX_VALUE});
                span[0] = Math.min(span[0], y[j]);
                span[1] = Math.max(span[1], y[j]);
            }
        }
    }

    /** Every set of cuts between sorted heights that leaves no group wider than 20 mm, no cut without need and none within 2 mm. */
    private static List<List<List<Integer>>> byHand(FrameModel model) {
        List<Integer> touched = new ArrayList<>();
        for (int i = 0; i < model.quantities().size(); i++) {
            Quantity one = model.quantities().get(i);
            if (one.height() && "HG-2".equals(one.gauge())) {
                touched.add(i);
            }
        }
        double[] h = Propagation.values(model.quantities());
        touched.sort((a, b) -> Double.compare(h[a], h[b]));
        List<List<List<Integer>>> ways = new ArrayList<>();
        for (int cuts = 0; cuts < 1 << (touched.size() - 1); cuts++) {
            List<List<Integer>> groups = new ArrayList<>();
            groups.add(new ArrayList<>());
            for (int k = 0; k < touched.size(); k++) {
                if (k > 0 && (cuts >> (k - 1) & 1) == 1) {
                    groups.add(new ArrayList<>());
                }
                groups.get(groups.size() - 1).add(touched.get(k));
            }
            boolean kept = true;
            for (int g = 0; g < groups.size(); g++) {
                List<Integer> group = groups.get(g);
                double first = h[group.get(0)];
                double last = h[group.get(group.size() - 1)];
                kept &= last - first <= 20;
                if (g + 1 < groups.size()) {
                    List<Integer> next = groups.get(g + 1);
                    kept &= h[next.get(next.size() - 1)] - first > 20 && h[next.get(0)] - last > 2;
                }
            }
            if (kept) {
                ways.add(groups);
            }
        }
        return ways;
    }

    private static PlateFrame frame(String shell, String tubes) {
        PlateFrame frame = new PlateFrame();
        frame.shellGauge = shell;
        frame.tubeGauge = tubes;
        return frame;
    }

    private static List<RawReading> withGauge(List<RawReading> readings) {
        return readings.stream().map(RejudgementTest::failed).toList();
    }

    private static RawReading failed(RawReading r) {
        return new RawReading(r.name(), r.value_mm(), "HG-2", r.contributions());
    }

    private static AxisStation seat(String name, double along, double height) {
        return AxisStation.along(
                0,
                0,
                AlignmentPlateTest.SEAT_ANGLE,
                along,
                CentreHeight.at(failed(AlignmentPlateTest.reading(name, height, true, true))));
    }

    private static Judging guarded(String lower, String upper) {
        return Judging.guarded(Limits.between(new BigDecimal(lower), new BigDecimal(upper)));
    }

    /** All deviations alike, or one of them. */
    private static Rejudgement rejudged(PlateReadings readings, Deviation what, Judging judging) {
        Map<Deviation, Judging> all = new HashMap<>();
        for (Deviation one : Deviation.values()) {
            if (what == null || what == one) {
                all.put(one, judging);
            }
        }
        Answer<Rejudgement> answer = Rejudgement.of(readings, HIGH, all);
        assertThat(answer).as(answer.toString()).isInstanceOf(Answer.Determined.class);
        return ((Answer.Determined<Rejudgement>) answer).value();
    }

    private static Rejudged only(Rejudgement rejudgement) {
        assertThat(rejudgement.deviations()).hasSize(1);
        return rejudgement.deviations().get(0);
    }
}
