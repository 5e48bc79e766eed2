package org.trammel.calc.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.calc.metrology.AlignmentPointsTest.alignment;
import static org.trammel.calc.metrology.AlignmentPointsTest.measured;
import static org.trammel.calc.metrology.AlignmentPointsTest.value;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.units.Answer;
import org.trammel.calc.units.DecimalSign;

/** The shell on its post: tilt taken out, residual judged, doubt carried to the rear axle. */
class AlignmentShellTest {

    /** The frame's equations are of the first order in its tilts, so results agree to their square, 0,004² of a metre. */
    @ParameterizedTest
    @CsvSource({"0, 0, true", "0.004, -0.003, true", "-0.01, 0.008, true", "0.004, -0.003, false", "0, 0.01, false"})
    void theShellNeedNotStandTrue(double ahead, double up, boolean driveSideUp) {
        PlateFrame frame = new PlateFrame();
        frame.tiltAhead = ahead;
        frame.tiltUp = up;
        frame.driveSideUp = driveSideUp;
        Alignment alignment = alignment(frame.readings());
        double second = 2 * (ahead * ahead + up * up);
        assertThat(value(alignment, Deviation.HEAD_TUBE_LEAN)).isCloseTo(-0.0048, within(1e-6 + second));
        assertThat(value(alignment, Deviation.SEAT_TUBE_LEAN)).isCloseTo(0.001, within(1e-6 + second));
        assertThat(value(alignment, Deviation.TWIST)).isCloseTo(-0.0058, within(1e-6 + second));
        assertThat(value(alignment, Deviation.HEAD_TUBE_OFFSET)).isCloseTo(0.4, within(1e-6 + second * 700));
        assertThat(value(alignment, Deviation.REAR_AXLE_OFFSET)).isCloseTo(0.75, within(1e-6 + second * 450));
        assertThat(value(alignment, Deviation.AXLE_WIDTH)).isCloseTo(148.21, within(1e-9));
        assertThat(value(alignment, Deviation.CHAINSTAY_DIFFERENCE)).isCloseTo(0.3, within(1e-9));
        assertThat(value(alignment, Deviation.REAR_YAW)).isCloseTo(Math.atan(0.3 / 148.21), within(1e-9));
        assertThat(value(alignment, Deviation.DROPOUTS_FORE_AFT)).isCloseTo(0.2, within(1e-9));
        assertThat(value(alignment, Deviation.DROPOUTS_UP_DOWN)).isCloseTo(-0.1, within(1e-9));
        assertThat(value(alignment, Deviation.STACK)).isCloseTo(643.1, within(1e-9));
        assertThat(value(alignment, Deviation.REACH)).isCloseTo(458, within(1e-9));
        assertThat(value(alignment, Deviation.HEAD_ANGLE)).isCloseTo(1.1432, within(1e-9));
        assertThat(value(alignment, Deviation.SEAT_ANGLE)).isCloseTo(1.3, within(1e-9));
        assertThat(alignment.datum().tilt_rad()).isCloseTo(Math.hypot(ahead, up), within(1e-4));
        assertThat(alignment.missing()).isEmpty();
    }

    @Test
    void aShellThatIsNotFacedIsSaidToBe() {
        PlateFrame frame = new PlateFrame();
        frame.faceOff_mm = 0.045;
        DatumFit datum = alignment(frame.readings()).datum();
        assertThat(datum.clean()).isFalse();
        assertThat(datum.residual_mm()).isCloseTo(0.045, within(1e-4));
        assertThat(datum.words(DecimalSign.COMMA)).contains("0,045 mm off", "0,030 mm", "face the shell");
        frame.faceOff_mm = 0.02;
        assertThat(alignment(frame.readings()).datum().clean()).isTrue();
    }

    /** Faces that each are flat but stand at an angle: a wedge of so much is told, whatever the tilt. */
    @Test
    void facesThatAreNotParallelAreToldByTheirAngle() {
        PlateReadings r = new PlateFrame().readings();
        PlateReadings.PlateDatum.Faces faces = (PlateReadings.PlateDatum.Faces) r.datum();
        List<PlateReadings.FacePoint> wedged = faces.drive().stream()
                .map(p -> new PlateReadings.FacePoint(
                        p.x_mm(), p.y_mm(), p.height().read(p.height().value_mm() + 0.002 * p.x_mm())))
                .toList();
        PlateReadings readings = new PlateReadings(
                new PlateReadings.PlateDatum.Faces(wedged, faces.nonDrive()),
                true,
                r.headTube(),
                r.seatTube(),
                r.axle(),
                r.stays(),
                r.gaps(),
                r.side());
        DatumFit datum = alignment(readings).datum();
        assertThat(datum.faces_rad()).isCloseTo(0.002, within(1e-5));
        assertThat(datum.residual_mm()).isGreaterThan(0.01);
    }

    /**
     * By hand: eight points with independent u on a radius of 19 mm tell each slope with u / √(8 · 19² / 2), which the
     * axle, 432 mm away, shows 432 times.
     */
    @Test
    void theDoubtOfTheDatumIsCarriedToTheRearAxle() {
        double u = Math.hypot(0.015, 0.006);
        double slope = u / Math.sqrt(8 * 19 * 19 / 2.0);
        double axle = u / Math.sqrt(2);
        double middle = u / Math.sqrt(8);
        double expected = Math.sqrt(Math.pow(slope * Math.hypot(428.1, 58), 2) + axle * axle + middle * middle);
        MeasuredDeviation offset = measured(alignment(new PlateFrame().readings()), Deviation.REAR_AXLE_OFFSET);
        assertThat(offset.budget().u()).isCloseTo(expected, within(0.002 * expected));
        assertThat(AlignmentPlateTest.line(offset.budget(), ErrorKind.CLAMP).u())
                .isCloseTo(0, within(1e-6));
        assertThat(AlignmentPlateTest.line(offset.budget(), ErrorKind.CLAMP).uIndependent())
                .isGreaterThan(0.1);
    }

    /**
     * JCGM 101:2008, clause 7: draw every independent cause from its normal distribution, reduce, and look at the spread
     * of the results. 20 000 draws tell a standard deviation to about 0,5 %, a correlation to 0,01; four of these are
     * allowed.
     */
    @Test
    void drawingTheErrorsAtRandomGivesTheSameUncertainties() {
        drawn(new PlateFrame().readings(), 101);
        drawn(new ProbedFrame().readings(), 102);
    }

    private static void drawn(AlignmentReadings readings, long seed) {
        Alignment alignment = alignment(readings);
        FrameModel model = ((Answer.Determined<FrameModel>) Alignment.model(readings)).value();
        UnaryOperator<double[]> reduce = model;
        Random random = new Random(seed);
        List<String> causes = new ArrayList<>();
        List<double[]> loads = new ArrayList<>();
        int n = model.quantities().size();
        for (int i = 0; i < n; i++) {
            for (Contribution one : model.quantities().get(i).contributions()) {
                String name = one.sharedAs() == null ? "own " + causes.size() : one.kind() + " of " + one.sharedAs();
                if (!causes.contains(name)) {
                    causes.add(name);
                    loads.add(new double[n]);
                }
                loads.get(causes.indexOf(name))[i] += one.u();
            }
        }
        int m = model.told().size();
        int draws = 20_000;
        double[][] results = new double[m][draws];
        for (int draw = 0; draw < draws; draw++) {
            double[] q = Propagation.values(model.quantities());
            for (double[] load : loads) {
                double z = random.nextGaussian();
                for (int i = 0; i < n; i++) {
                    q[i] += z * load[i];
                }
            }
            double[] y = reduce.apply(q);
            for (int j = 0; j < m; j++) {
                results[j][draw] = y[j];
            }
        }
        for (int j = 0; j < m; j++) {
            double s = new DescriptiveStatistics(results[j]).getStandardDeviation();
            double u = alignment.deviations().get(j).budget().u();
            assertThat(u).as("u of " + model.told().get(j)).isCloseTo(s, within(0.02 * s));
            for (int k = 0; k < j; k++) {
                assertThat(alignment.correlation(
                                model.told().get(j), model.told().get(k)))
                        .as(model.told().get(j) + " with " + model.told().get(k))
                        .isCloseTo(new PearsonsCorrelation().correlation(results[j], results[k]), within(0.04));
            }
        }
    }
}
