package org.trammel.calc.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.units.Answer;

/** A height gauge found 0,18 mm high; the truth lies anywhere between reading − 0,18 and reading. */
class DeviationSpanTest {

    private static final ReadingError HIGH = ReadingError.found("HG-2", new BigDecimal("0.18"), new BigDecimal("20"));

    /**
     * Worked example of the trade: an axle offset read +0,75 with a gauge that reads up to 0,18 high lies between +0,57 and
     * +0,75. The shell is read with another gauge, the axle's ends at 224 and 76 mm with the failed one, so their errors
     * are independent and the middle may be off by all of it.
     */
    @Test
    void theAxleOffsetRunsOverTheWholeSpan() {
        PlateReadings r = frame("HG-1", "HG-1").readings();
        PlateReadings.AxleReadings a = r.axle();
        PlateReadings readings = r.withAxle(new PlateReadings.AxleReadings(
                a.x_mm(), a.y_mm(), withGauge(a.driveFace()), withGauge(a.nonDriveFace()), a.insideWidths()));
        DeviationSpan offset = of(readings, HIGH, Deviation.REAR_AXLE_OFFSET);
        assertThat(offset.touched()).isTrue();
        assertThat(offset.least()).isCloseTo(0.57, within(1e-4));
        assertThat(offset.greatest()).isCloseTo(0.75, within(1e-4));
    }

    /** A mandrel's ends 1,2 mm apart in height share the error: the twist stands as it was, −0,246°. */
    @Test
    void whatCancelsFallsOut() {
        List<AxisStation> seat = List.of(seat("ST at 100", 100, 150.00), seat("ST at 400", 400, 150.09));
        List<AxisStation> head = AlignmentPlateTest.headAt(
                150,
                failed(AlignmentPlateTest.reading("mandrel lower", 150.30, false, true)),
                failed(AlignmentPlateTest.reading("mandrel upper", 149.10, false, true)));
        PlateReadings readings = AlignmentPlateTest.example(head, true).withSeatTube(seat);
        DeviationSpan twist = of(readings, HIGH, Deviation.TWIST);
        assertThat(twist.touched()).isTrue();
        assertThat(Math.toDegrees(twist.least())).isCloseTo(-0.246, within(0.0005));
        assertThat(twist.greatest()).isCloseTo(twist.least(), within(1e-9));
    }

    @Test
    void whatTheGaugeDidNotReadIsNotTouched() {
        assertThat(spans(frame("HG-1", "HG-1").readings(), HIGH)).allSatisfy(span -> {
            assertThat(span.touched()).isFalse();
            assertThat(span.least()).isEqualTo(span.value());
            assertThat(span.greatest()).isEqualTo(span.value());
        });
        // the width comes from a calliper, whatever gauge read the heights
        PlateReadings mixed = frame("HG-2", "HG-2").readings();
        assertThat(of(mixed, HIGH, Deviation.REAR_AXLE_OFFSET).touched()).isTrue();
        assertThat(of(mixed, HIGH, Deviation.AXLE_WIDTH).touched()).isFalse();
    }

    /** An arm has no error over what it reads along an axis; what it read is not called untouched. */
    @Test
    void whatAnArmReadIsNamed() {
        Answer<List<DeviationSpan>> answer = DeviationSpan.of(
                new ProbedFrame().readings(), ReadingError.found("AR-1", new BigDecimal("-0.1"), new BigDecimal("20")));
        assertThat(((Answer.Determined<List<DeviationSpan>>) answer).value())
                .filteredOn(span -> span.what() == Deviation.REAR_YAW)
                .singleElement()
                .satisfies(span -> assertThat(span.coordinate()).isNotNull());
    }

    /**
     * A calliper found 0.18 too high. Both chainstays are read over the pins and alike, so its error falls out of their
     * difference; the width between the faces, 148.2 and 148.22 read, is that or up to 0.18 less.
     */
    @Test
    void anErrorOverWhatACalliperReadsIsTriedOnItsDistances() {
        ReadingError error = ReadingError.found("CA-4", new BigDecimal("0.18"), new BigDecimal("20"));
        PlateReadings readings = frame("HG-1", "HG-1").readings();
        DeviationSpan width = of(readings, error, Deviation.AXLE_WIDTH);
        assertThat(width.greatest()).isCloseTo(width.value(), within(1e-9));
        assertThat(width.least()).isCloseTo(width.value() - 0.18, within(1e-9));
        DeviationSpan stays = of(readings, error, Deviation.CHAINSTAY_DIFFERENCE);
        assertThat(stays.least()).isCloseTo(stays.value(), within(1e-9));
        assertThat(stays.greatest()).isCloseTo(stays.value(), within(1e-9));
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
        List<DeviationSpan> all = spans(readings, HIGH);
        for (DeviationSpan one : all) {
            double[] span = seen.get(one.what());
            String what = one.what().name();
            assertThat(one.least())
                    .as(what)
                    .isLessThanOrEqualTo(span[0] + 1e-12)
                    .isCloseTo(span[0], within(2e-6));
            assertThat(one.greatest())
                    .as(what)
                    .isGreaterThanOrEqualTo(span[1] - 1e-12)
                    .isCloseTo(span[1], within(2e-6));
        }
        assertThat(all).hasSameSizeAs(model.told());
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
        return readings.stream().map(DeviationSpanTest::failed).toList();
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

    private static List<DeviationSpan> spans(PlateReadings readings, ReadingError error) {
        Answer<List<DeviationSpan>> answer = DeviationSpan.of(readings, error);
        assertThat(answer).as(answer.toString()).isInstanceOf(Answer.Determined.class);
        return ((Answer.Determined<List<DeviationSpan>>) answer).value();
    }

    private static DeviationSpan of(PlateReadings readings, ReadingError error, Deviation what) {
        return spans(readings, error).stream()
                .filter(span -> span.what() == what)
                .findFirst()
                .orElseThrow();
    }
}
