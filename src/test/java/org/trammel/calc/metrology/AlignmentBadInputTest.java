package org.trammel.calc.metrology;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.trammel.calc.metrology.PlateReadings.FacePoint;
import org.trammel.calc.metrology.PlateReadings.PlateDatum;
import org.trammel.calc.metrology.PointReadings.AxisPoint;
import org.trammel.calc.metrology.PointReadings.ProbedPoint;
import org.trammel.calc.units.Answer;

/** Every slip is a sentence that names the reading, never a wrong number. */
class AlignmentBadInputTest {

    private final PlateReadings plate = new PlateFrame().readings();
    private final PointReadings points = new ProbedFrame().readings();

    @Test
    void pointsOnALineMakeNoDatum() {
        assertThat(words(faces(drive -> drive.stream()
                        .map(p -> new FacePoint(p.x_mm(), 0.1 * p.y_mm(), p.height()))
                        .toList())))
                .contains("drive-side face of the shell lie nearly on one line", "spread them round the face");
        List<ProbedPoint> line = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            line.add(probed("on a line " + i, 5.0 * i, 3.0 * i, 36.5));
        }
        assertThat(words(with(points, line, points.headTube()))).contains("nearly on one line");
    }

    @Test
    void twoPointsMakeNoDatum() {
        assertThat(words(faces(drive -> drive.subList(0, 2)))).contains("has 2 points", "three or more");
        assertThat(words(faces(drive -> List.of()))).contains("has 0 points");
    }

    @Test
    void aDroppedReadingIsMissed() {
        assertThat(words(plate.withHeadTube(plate.headTube().subList(0, 1))))
                .contains("head tube was read at one station", "two or more");
        PlateReadings.AxleReadings axle = plate.axle();
        assertThat(words(plate.withAxle(new PlateReadings.AxleReadings(
                        axle.x_mm(), axle.y_mm(), axle.driveFace(), List.of(), axle.insideWidths()))))
                .contains("One dropout was not read");
        assertThat(words(PlateReadings.ofTubes(plate.datum(), List.of(), List.of())))
                .contains("Nothing but the datum");
    }

    @Test
    void aDoubledReadingIsFound() {
        AxisStation first = plate.headTube().get(0);
        assertThat(words(plate.withHeadTube(List.of(first, plate.headTube().get(1), first))))
                .contains("HT lower is there twice");
        RawReading top = first.height().top();
        RawReading renamed = new RawReading("HT again", top.value_mm(), top.gauge(), top.contributions());
        AxisStation copied = new AxisStation(
                first.x_mm(),
                first.y_mm(),
                CentreHeight.above(renamed, first.height().diameter()));
        assertThat(words(plate.withHeadTube(
                        List.of(first, copied, plate.headTube().get(1)))))
                .contains("HT again", "to the last digit");
        assertThat(words(faces(drive -> {
                    List<FacePoint> all = new ArrayList<>(drive);
                    RawReading height = all.get(0).height();
                    all.add(new FacePoint(
                            all.get(0).x_mm(),
                            all.get(0).y_mm(),
                            new RawReading("copy", height.value_mm(), height.gauge(), height.contributions())));
                    return all;
                })))
                .contains("point copy", "to the last digit");
        List<AxisPoint> head = new ArrayList<>(points.headTube());
        ProbedPoint one = head.get(0).first();
        head.add(new AxisPoint(
                new ProbedPoint("copy", one.x_mm(), one.y_mm(), one.z_mm(), one.gauge(), one.contributions()), null));
        assertThat(words(with(points, points.driveFace(), head))).contains("to the last digit");
    }

    /** A second reading of the same station that is not a copy is welcome. */
    @Test
    void aStationReadTwiceIsTwoReadings() {
        AxisStation first = plate.headTube().get(0);
        RawReading top = first.height().top();
        RawReading again = new RawReading("HT again", top.value_mm() + 0.01, top.gauge(), top.contributions());
        AxisStation second = new AxisStation(
                first.x_mm(),
                first.y_mm(),
                CentreHeight.above(again, first.height().diameter()));
        assertThat(Alignment.of(plate.withHeadTube(
                        List.of(first, second, plate.headTube().get(1)))))
                .isInstanceOf(Answer.Determined.class);
    }

    @Test
    void heightsInInchesAreNotTakenForMillimetres() {
        AxisStation lower = plate.headTube().get(0);
        RawReading top = lower.height().top();
        AxisStation inches = new AxisStation(
                lower.x_mm(),
                lower.y_mm(),
                CentreHeight.above(
                        top.read(top.value_mm() / 25.4), lower.height().diameter()));
        assertThat(words(plate.withHeadTube(List.of(inches, plate.headTube().get(1)))))
                .contains("HT lower", "off the middle plane", "in millimetres");
        assertThat(words(faces(drive -> drive.stream()
                        .map(p -> new FacePoint(
                                p.x_mm(), p.y_mm(), p.height().read(p.height().value_mm() / 25.4)))
                        .toList())))
                .contains("sides or faces are exchanged");
        PointReadings all = ProbedFrame.moved(points, (x, y, z) -> new double[] {x / 25.4, y / 25.4, z / 25.4});
        assertThat(words(all)).containsAnyOf("lie nearly on one line", "As inches it would be 73 mm");
        assertThat(words(new PlateReadings(
                        plate.datum(),
                        true,
                        plate.headTube(),
                        plate.seatTube(),
                        plate.axle(),
                        new PlateReadings.StayReadings(
                                plate.stays().drive().read(17.02), plate.stays().nonDrive()),
                        null,
                        null)))
                .contains("CS D", "17.02 mm", "As inches it would be 432.308 mm");
    }

    /** One face point alone in inches, or a slip of ten millimetres, is no dirt. */
    @ParameterizedTest
    @ValueSource(doubles = {7.34, 176.5, 196.5, 1865, 18.65})
    void oneWrongPointOfAFaceIsASlip(double typed_mm) {
        String words = words(faces(drive -> {
            List<FacePoint> all = new ArrayList<>(drive);
            FacePoint p = all.get(1);
            all.set(1, new FacePoint(p.x_mm(), p.y_mm(), p.height().read(typed_mm)));
            return all;
        }));
        assertThat(words).containsAnyOf("no dirt but a slip", "is not between", "read its faces again");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNoNumberIsRefused(double typed) {
        AxisStation s = plate.seatTube().get(0);
        AxisStation bad = new AxisStation(
                s.x_mm(), s.y_mm(), CentreHeight.at(s.height().top().read(typed)));
        assertThat(words(plate.withSeatTube(List.of(bad, plate.seatTube().get(1)))))
                .contains("ST at 100 is no number");
        List<ProbedPoint> face = new ArrayList<>(points.driveFace());
        face.set(0, probed("bad", typed, 1, 36.5));
        assertThat(words(with(points, face, points.headTube()))).contains("coordinate of bad is no number");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, -0.03})
    void aResidualThatNoShellCanKeepIsNoSetting(double within_mm) {
        assertThat(words(plate, within_mm)).contains("is not above 0");
    }

    @Test
    void anUncertaintyOfZeroOrNoneIsRefused() {
        for (List<Contribution> doubt : List.of(
                List.<Contribution>of(),
                List.of(Contribution.own(ErrorKind.GAUGE, 0)),
                List.of(Contribution.own(ErrorKind.GAUGE, Double.NaN)),
                List.of(Contribution.own(ErrorKind.GAUGE, -0.01)))) {
            AxisStation s = plate.seatTube().get(0);
            AxisStation bad = new AxisStation(
                    s.x_mm(), s.y_mm(), CentreHeight.at(new RawReading("ST at 100", 167.4, "HG-1", doubt)));
            assertThat(words(plate.withSeatTube(List.of(bad, plate.seatTube().get(1)))))
                    .contains("uncertainty of ST at 100");
        }
    }

    @Test
    void sidesAndEndsThatAreExchangedAreFound() {
        PlateDatum.Faces faces = (PlateDatum.Faces) plate.datum();
        assertThat(words(new PlateReadings(
                        new PlateDatum.Faces(faces.nonDrive(), faces.drive()),
                        true,
                        plate.headTube(),
                        plate.seatTube(),
                        null,
                        null,
                        null,
                        null)))
                .contains("faces are exchanged");
        PlateReadings.AxleReadings a = plate.axle();
        assertThat(words(plate.withAxle(new PlateReadings.AxleReadings(
                        a.x_mm(), a.y_mm(), a.nonDriveFace(), a.driveFace(), List.of()))))
                .contains("the two may be exchanged");
        AxisStation s = plate.seatTube().get(0);
        CentreHeight upsideDown = CentreHeight.between(
                PlateFrame.reading("lower", 130, "HG-1"), PlateFrame.reading("upper", 165, "HG-1"));
        assertThat(words(plate.withSeatTube(List.of(
                        new AxisStation(s.x_mm(), s.y_mm(), upsideDown),
                        plate.seatTube().get(1)))))
                .contains("lies no higher than the lower");
    }

    @Test
    void aBaseThatIsTooShortTellsNoDirection() {
        AxisStation s = plate.seatTube().get(0);
        AxisStation beside = new AxisStation(
                s.x_mm() - 2, s.y_mm() + 8, CentreHeight.at(PlateFrame.reading("ST beside", 150.1, "HG-1")));
        AxisStation here =
                new AxisStation(s.x_mm(), s.y_mm(), CentreHeight.at(PlateFrame.reading("ST here", 150.2, "HG-1")));
        assertThat(words(plate.withSeatTube(List.of(here, beside)))).contains("8.247 mm apart", "20 mm at least");
    }

    @Test
    void aBoreThatIsNoCircleAndAnAxleBesideTheShellAreRefused() {
        List<ProbedPoint> line = Stream.of(-10.0, 0.0, 10.0)
                .map(x -> probed("bore " + x, x, x / 2, 0))
                .toList();
        PointReadings noBore = new PointReadings(
                points.driveFace(),
                points.nonDriveFace(),
                line,
                points.headTube(),
                points.seatTube(),
                points.driveDropout(),
                points.nonDriveDropout(),
                points.driveAxleEnd(),
                points.nonDriveAxleEnd(),
                points.headTubeTop(),
                points.drawnAxle());
        assertThat(words(noBore)).contains("make no circle");
    }

    /** What was not read is said, beside what the rest tells. */
    @Test
    void whatWasNotReadIsMissingWithItsReason() {
        Alignment alignment =
                AlignmentPointsTest.alignment(PlateReadings.ofTubes(plate.datum(), plate.headTube(), plate.seatTube()));
        assertThat(alignment.deviations())
                .extracting(MeasuredDeviation::what)
                .containsExactly(
                        Deviation.HEAD_TUBE_LEAN,
                        Deviation.SEAT_TUBE_LEAN,
                        Deviation.TWIST,
                        Deviation.HEAD_TUBE_OFFSET);
        Answer<MeasuredDeviation> yaw = alignment.of(Deviation.REAR_YAW);
        assertThat(((Answer.NotDeterminable<MeasuredDeviation>) yaw)
                        .gaps()
                        .get(0)
                        .words())
                .isEqualTo("The yaw of the rear axle needs both stay lengths and the axle width, which were not read.");
        assertThat(alignment.missing()).hasSize(Deviation.values().length - 4);
    }

    private PlateReadings faces(UnaryOperator<List<FacePoint>> drive) {
        PlateDatum.Faces faces = (PlateDatum.Faces) plate.datum();
        return PlateReadings.ofTubes(
                new PlateDatum.Faces(drive.apply(faces.drive()), faces.nonDrive()), plate.headTube(), plate.seatTube());
    }

    private static PointReadings with(PointReadings r, List<ProbedPoint> driveFace, List<AxisPoint> head) {
        return new PointReadings(
                driveFace,
                r.nonDriveFace(),
                r.shellBore(),
                head,
                r.seatTube(),
                r.driveDropout(),
                r.nonDriveDropout(),
                r.driveAxleEnd(),
                r.nonDriveAxleEnd(),
                r.headTubeTop(),
                r.drawnAxle());
    }

    private static ProbedPoint probed(String name, double x, double y, double z) {
        return new ProbedPoint(name, x, y, z, "AR-1", List.of(Contribution.own(ErrorKind.GAUGE, 0.02)));
    }

    private static String words(AlignmentReadings readings) {
        return words(readings, DatumFit.CLEAN_WITHIN_MM);
    }

    private static String words(AlignmentReadings readings, double cleanWithin_mm) {
        Answer<Alignment> answer = Alignment.of(readings, cleanWithin_mm);
        assertThat(answer).isInstanceOf(Answer.NotDeterminable.class);
        String words = String.join(
                " ",
                ((Answer.NotDeterminable<Alignment>) answer)
                        .gaps().stream().map(Answer.Gap::words).toList());
        assertThat(words).doesNotContain("NaN").doesNotContain("Infinity").endsWith(".");
        return words;
    }
}
