package org.trammel.calc.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.trammel.calc.metrology.PointReadings.ProbedPoint;
import org.trammel.calc.units.Answer;

/** Points of a frame whose deviations are known because the test put them there. */
class AlignmentPointsTest {

    @Test
    void theDeviationsPutIntoAFrameComeOut() {
        ProbedFrame frame = new ProbedFrame();
        Alignment alignment = alignment(frame.readings());
        assertThat(alignment.missing()).isEmpty();
        Map<Deviation, Double> expected = new EnumMap<>(Deviation.class);
        expected.put(Deviation.HEAD_TUBE_LEAN, frame.headLean_rad);
        expected.put(Deviation.SEAT_TUBE_LEAN, frame.seatLean_rad);
        expected.put(Deviation.TWIST, Math.toRadians(-0.33));
        expected.put(Deviation.HEAD_TUBE_OFFSET, 0.4);
        expected.put(Deviation.REAR_AXLE_OFFSET, 0.75);
        expected.put(Deviation.AXLE_WIDTH, 148.2);
        expected.put(Deviation.DROPOUTS_FORE_AFT, 0.2);
        expected.put(Deviation.DROPOUTS_UP_DOWN, -0.1);
        expected.put(Deviation.CHAINSTAY_DIFFERENCE, 0.36);
        expected.put(Deviation.REAR_YAW, Math.atan(0.36 / 148.2));
        expected.put(Deviation.HEAD_ANGLE, ProbedFrame.HEAD_ANGLE);
        expected.put(Deviation.SEAT_ANGLE, ProbedFrame.SEAT_ANGLE);
        expected.put(Deviation.STACK, 643.1);
        expected.put(Deviation.REACH, 458.0);
        assertThat(expected).hasSameSizeAs(Deviation.values());
        expected.forEach((what, value) ->
                assertThat(value(alignment, what)).as(what.name()).isCloseTo(value, within(1e-9)));
        assertThat(alignment.datum()).isNotNull();
        assertThat(alignment.datum().width_mm()).isCloseTo(73, within(1e-9));
        assertThat(alignment.datum().clean()).isTrue();
    }

    /** Half a millimetre of length difference on 148 mm is a yaw of 0,1936°; elementary. */
    @Test
    void aStayLongerByHalfAMillimetreYawsTheAxleByAFifthOfADegree() {
        ProbedFrame frame = new ProbedFrame();
        frame.driveLonger_mm = 0.5;
        frame.axleWidth_mm = 148;
        assertThat(Math.toDegrees(value(alignment(frame.readings()), Deviation.REAR_YAW)))
                .isCloseTo(0.1936, within(5e-5));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void howTheFrameLiesChangesNothing(long seed) {
        ProbedFrame frame = new ProbedFrame();
        frame.noise_mm = 0.02;
        frame.seed = seed;
        PointReadings readings = frame.readings();
        Alignment before = alignment(readings);
        Alignment after = alignment(ProbedFrame.moved(readings, ProbedFrame.rigid(new Random(seed))));
        for (MeasuredDeviation one : before.deviations()) {
            MeasuredDeviation other = measured(after, one.what());
            assertThat(other.value()).as(one.what().name()).isCloseTo(one.value(), within(1e-9));
            assertThat(other.budget().u())
                    .as("u of " + one.what())
                    .isCloseTo(one.budget().u(), within(1e-8));
        }
        assertThat(after.datum().residual_mm()).isCloseTo(before.datum().residual_mm(), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26})
    void callingTheSidesTheOtherWayRoundTurnsTheSigns(long seed) {
        ProbedFrame frame = new ProbedFrame();
        frame.noise_mm = 0.05;
        frame.seed = seed;
        PointReadings readings = frame.readings();
        Alignment before = alignment(readings);
        Alignment named = alignment(ProbedFrame.sidesExchanged(readings));
        PointReadings image = ProbedFrame.moved(readings, (x, y, z) -> new double[] {x, y, -z});
        Alignment mirrored = alignment(ProbedFrame.sidesExchanged(image));
        Alignment throughTheGlass = alignment(image);
        for (MeasuredDeviation one : before.deviations()) {
            double sign = one.what().mirrored() ? -1 : 1;
            assertThat(value(named, one.what()))
                    .as("sides named anew, " + one.what())
                    .isCloseTo(sign * one.value(), within(1e-9));
            assertThat(value(mirrored, one.what()))
                    .as("mirror image, " + one.what())
                    .isCloseTo(sign * one.value(), within(1e-9));
            assertThat(value(throughTheGlass, one.what()))
                    .as("mirror image, its sides named as before, " + one.what())
                    .isCloseTo(one.value(), within(1e-9));
        }
    }

    /** A mirror image whose sides keep their names is the same frame bent the other way. */
    @Test
    void theMirrorImageOfAFrameDeviatesTheOtherWay() {
        ProbedFrame frame = new ProbedFrame();
        ProbedFrame other = new ProbedFrame();
        other.headLean_rad = -frame.headLean_rad;
        other.seatLean_rad = -frame.seatLean_rad;
        other.headOffset_mm = -frame.headOffset_mm;
        other.axleOffset_mm = -frame.axleOffset_mm;
        other.driveLonger_mm = -frame.driveLonger_mm;
        Alignment one = alignment(frame.readings());
        Alignment two = alignment(other.readings());
        for (Deviation what : Deviation.values()) {
            double sign = what.mirrored() ? -1 : 1;
            assertThat(value(two, what)).as(what.name()).isCloseTo(sign * value(one, what), within(1e-9));
        }
    }

    /** A further point of any feature, of whatever doubt of its own, with what all share alike. */
    @ParameterizedTest
    @ValueSource(doubles = {0.002, 0.02, 0.2, 2})
    void aFurtherPointNeverRaisesAnUncertainty(double own_mm) {
        PointReadings r = new ProbedFrame().readings();
        Alignment before = alignment(r);
        Random random = new Random(5);
        for (int feature = 0; feature < 6; feature++) {
            for (int turn = 0; turn < 6; turn++) {
                Alignment after = alignment(oneMore(r, feature, own_mm, random));
                for (MeasuredDeviation one : before.deviations()) {
                    assertThat(measured(after, one.what()).budget().u())
                            .as("u of %s with one more of feature %d", one.what(), feature)
                            .isLessThanOrEqualTo(one.budget().u() * (1 + 1e-6));
                }
            }
        }
    }

    private static PointReadings oneMore(PointReadings r, int feature, double own_mm, Random random) {
        List<Contribution> doubt = List.of(
                Contribution.own(ErrorKind.REPEATABILITY, own_mm),
                Contribution.shared(ErrorKind.GAUGE, 0.03, "AR-1"),
                Contribution.shared(ErrorKind.TEMPERATURE, 0.01, "room"));
        double angle = 2 * Math.PI * random.nextDouble();
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        double x = ProbedFrame.AXLE_X + 15 * c;
        double y = ProbedFrame.AXLE_Y + 15 * s;
        ProbedPoint faceD = new ProbedPoint("more", 19 * c, 19 * s, ProbedFrame.SHELL_HALF, "AR-1", doubt);
        ProbedPoint faceN = new ProbedPoint("more", 19 * c, 19 * s, -ProbedFrame.SHELL_HALF, "AR-1", doubt);
        ProbedPoint dropD =
                new ProbedPoint("more", x, y, 0.75 + 74.1 + (0.1 * c * 15 - 0.05 * s * 15) / 60, "AR-1", doubt);
        ProbedPoint dropN =
                new ProbedPoint("more", x, y, 0.75 - 74.1 - (0.1 * c * 15 - 0.05 * s * 15) / 60, "AR-1", doubt);
        double along = 100 + 300 * random.nextDouble();
        ProbedPoint seat = new ProbedPoint(
                "more",
                -along * Math.cos(ProbedFrame.SEAT_ANGLE),
                along * Math.sin(ProbedFrame.SEAT_ANGLE),
                along * Math.tan(Math.toRadians(0.06)),
                "AR-1",
                doubt);
        double up = -60 + 120 * random.nextDouble();
        ProbedPoint head = new ProbedPoint(
                "more",
                ProbedFrame.REACH - (up - 60) * Math.cos(ProbedFrame.HEAD_ANGLE),
                ProbedFrame.STACK + (up - 60) * Math.sin(ProbedFrame.HEAD_ANGLE),
                0.4 + up * Math.tan(Math.toRadians(-0.27)),
                "AR-1",
                doubt);
        return new PointReadings(
                feature == 0 ? plus(r.driveFace(), faceD) : r.driveFace(),
                feature == 1 ? plus(r.nonDriveFace(), faceN) : r.nonDriveFace(),
                r.shellBore(),
                feature == 2 ? inside(r.headTube(), new PointReadings.AxisPoint(head, null)) : r.headTube(),
                feature == 3 ? inside(r.seatTube(), new PointReadings.AxisPoint(seat, null)) : r.seatTube(),
                feature == 4 ? plus(r.driveDropout(), dropD) : r.driveDropout(),
                feature == 5 ? plus(r.nonDriveDropout(), dropN) : r.nonDriveDropout(),
                r.driveAxleEnd(),
                r.nonDriveAxleEnd(),
                r.headTubeTop(),
                r.drawnAxle());
    }

    private static List<ProbedPoint> plus(List<ProbedPoint> points, ProbedPoint more) {
        List<ProbedPoint> all = new ArrayList<>(points);
        all.add(more);
        return all;
    }

    private static List<PointReadings.AxisPoint> inside(
            List<PointReadings.AxisPoint> points, PointReadings.AxisPoint more) {
        List<PointReadings.AxisPoint> all = new ArrayList<>(points);
        all.add(1, more);
        return all;
    }

    static Alignment alignment(AlignmentReadings readings) {
        Answer<Alignment> answer = Alignment.of(readings);
        assertThat(answer).as(answer.toString()).isInstanceOf(Answer.Determined.class);
        return ((Answer.Determined<Alignment>) answer).value();
    }

    static MeasuredDeviation measured(Alignment alignment, Deviation what) {
        return ((Answer.Determined<MeasuredDeviation>) alignment.of(what)).value();
    }

    static double value(Alignment alignment, Deviation what) {
        return measured(alignment, what).value();
    }
}
