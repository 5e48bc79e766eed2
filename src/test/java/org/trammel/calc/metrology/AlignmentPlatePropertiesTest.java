package org.trammel.calc.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.calc.metrology.AlignmentPointsTest.alignment;
import static org.trammel.calc.metrology.AlignmentPointsTest.measured;
import static org.trammel.calc.metrology.AlignmentPointsTest.value;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.trammel.calc.metrology.PlateReadings.FacePoint;
import org.trammel.calc.metrology.PlateReadings.PlateDatum;

/** What holds of a frame on the plate however it lies, whichever side is up, and however often it is read. */
class AlignmentPlatePropertiesTest {

    /** A rigid motion as far as a plate allows one: raised, and tilted about two axes. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void howTheFrameLiesOnThePlateChangesNothing(long seed) {
        Random random = new Random(seed);
        Alignment one = alignment(new PlateFrame().readings());
        PlateFrame moved = new PlateFrame();
        moved.tiltAhead = 0.006 * random.nextGaussian();
        moved.tiltUp = 0.006 * random.nextGaussian();
        Alignment other = alignment(raised(moved.readings(), 20 * random.nextDouble()));
        for (Deviation what : Deviation.values()) {
            // heights of the fixture follow tilts to first order: what is left is their square, times the deviation
            assertThat(value(other, what)).as(what.name()).isCloseTo(value(one, what), within(1e-3));
        }
    }

    @Test
    void theOtherSideUpIsTheSameFrame() {
        PlateFrame turned = new PlateFrame();
        turned.driveSideUp = false;
        Alignment one = alignment(new PlateFrame().readings());
        Alignment other = alignment(turned.readings());
        for (Deviation what : Deviation.values()) {
            assertThat(value(other, what)).as(what.name()).isCloseTo(value(one, what), within(1e-9));
        }
    }

    /** The same heights, called the other way round: what has a side changes its sign, what has none stays. */
    @Test
    void callingTheUpperSideTheOtherOneTurnsTheSigns() {
        PlateReadings r = new PlateFrame().readings();
        PlateDatum.Faces faces = (PlateDatum.Faces) r.datum();
        PlateReadings.AxleReadings axle = java.util.Objects.requireNonNull(r.axle());
        PlateReadings.StayReadings stays = java.util.Objects.requireNonNull(r.stays());
        PlateReadings swapped = new PlateReadings(
                new PlateDatum.Faces(faces.nonDrive(), faces.drive()),
                !r.driveSideUp(),
                r.headTube(),
                r.seatTube(),
                new PlateReadings.AxleReadings(
                        axle.x_mm(), axle.y_mm(), axle.nonDriveFace(), axle.driveFace(), axle.insideWidths()),
                new PlateReadings.StayReadings(stays.nonDrive(), stays.drive()),
                r.gaps(),
                r.side());
        Alignment one = alignment(r);
        Alignment two = alignment(swapped);
        for (Deviation what : Deviation.values()) {
            double sign = what.mirrored() ? -1 : 1;
            assertThat(value(two, what)).as(what.name()).isCloseTo(sign * value(one, what), within(1e-9));
        }
    }

    /** A further point of a face or station of a tube, of whatever doubt of its own, with what all share alike. */
    @ParameterizedTest
    @ValueSource(doubles = {0.002, 0.015, 0.2, 2})
    void aFurtherReadingNeverRaisesAnUncertainty(double own_mm) {
        PlateReadings r = new PlateFrame().readings();
        Alignment before = alignment(r);
        Random random = new Random(7);
        for (int i = 0; i < 12; i++) {
            PlateReadings more = i % 2 == 0 ? withFacePoint(r, own_mm, random) : withStation(r, own_mm, random);
            Alignment after = alignment(more);
            for (MeasuredDeviation one : before.deviations()) {
                assertThat(measured(after, one.what()).budget().u())
                        .as("u of %s with one more", one.what())
                        .isLessThanOrEqualTo(one.budget().u() * (1 + 1e-6));
            }
        }
    }

    private static RawReading more(RawReading like, double height_mm, double own_mm) {
        List<Contribution> causes = new ArrayList<>(like.contributions().stream()
                .filter(cause -> cause.sharedAs() != null)
                .toList());
        causes.add(Contribution.own(ErrorKind.REPEATABILITY, own_mm));
        return new RawReading("more", height_mm, like.gauge(), causes);
    }

    private static PlateReadings withFacePoint(PlateReadings r, double own_mm, Random random) {
        PlateDatum.Faces faces = (PlateDatum.Faces) r.datum();
        double angle = 2 * Math.PI * random.nextDouble();
        double x = 19 * Math.cos(angle);
        double y = 19 * Math.sin(angle);
        List<FacePoint> drive = new ArrayList<>(faces.drive());
        drive.add(new FacePoint(x, y, more(faces.drive().get(0).height(), 150 + 0.004 * x - 0.003 * y + 36.5, own_mm)));
        return new PlateReadings(
                new PlateDatum.Faces(drive, faces.nonDrive()),
                r.driveSideUp(),
                r.headTube(),
                r.seatTube(),
                r.axle(),
                r.stays(),
                r.gaps(),
                r.side());
    }

    private static PlateReadings withStation(PlateReadings r, double own_mm, Random random) {
        AxisStation low = r.seatTube().get(0);
        double along = 120 + 250 * random.nextDouble();
        double x = -along * Math.cos(AlignmentPlateTest.SEAT_ANGLE);
        double y = along * Math.sin(AlignmentPlateTest.SEAT_ANGLE);
        RawReading diameter = java.util.Objects.requireNonNull(low.height().diameter());
        double height = 150 + 0.004 * x - 0.003 * y + along * 0.001 + diameter.value_mm() / 2;
        List<AxisStation> seat = new ArrayList<>(List.of(
                low,
                new AxisStation(x, y, CentreHeight.above(more(low.height().top(), height, own_mm), diameter)),
                r.seatTube().get(1)));
        return r.withSeatTube(seat);
    }

    private static PlateReadings raised(PlateReadings r, double by_mm) {
        PlateDatum.Faces faces = (PlateDatum.Faces) r.datum();
        PlateReadings.AxleReadings axle = java.util.Objects.requireNonNull(r.axle());
        return new PlateReadings(
                new PlateDatum.Faces(faces(faces.drive(), by_mm), faces(faces.nonDrive(), by_mm)),
                r.driveSideUp(),
                stations(r.headTube(), by_mm),
                stations(r.seatTube(), by_mm),
                new PlateReadings.AxleReadings(
                        axle.x_mm(),
                        axle.y_mm(),
                        heights(axle.driveFace(), by_mm),
                        heights(axle.nonDriveFace(), by_mm),
                        axle.insideWidths()),
                r.stays(),
                r.gaps(),
                r.side());
    }

    private static List<FacePoint> faces(List<FacePoint> points, double by_mm) {
        return points.stream()
                .map(point -> new FacePoint(
                        point.x_mm(),
                        point.y_mm(),
                        point.height().read(point.height().value_mm() + by_mm)))
                .toList();
    }

    private static List<AxisStation> stations(List<AxisStation> stations, double by_mm) {
        return stations.stream()
                .map(station -> new AxisStation(
                        station.x_mm(),
                        station.y_mm(),
                        CentreHeight.above(
                                station.height()
                                        .top()
                                        .read(station.height().top().value_mm() + by_mm),
                                java.util.Objects.requireNonNull(
                                        station.height().diameter()))))
                .toList();
    }

    private static List<RawReading> heights(List<RawReading> readings, double by_mm) {
        return readings.stream()
                .map(reading -> reading.read(reading.value_mm() + by_mm))
                .toList();
    }
}
