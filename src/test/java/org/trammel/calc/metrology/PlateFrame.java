package org.trammel.calc.metrology;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.metrology.PlateReadings.AxleReadings;
import org.trammel.calc.metrology.PlateReadings.FacePoint;
import org.trammel.calc.metrology.PlateReadings.GapReadings;
import org.trammel.calc.metrology.PlateReadings.PlateDatum;
import org.trammel.calc.metrology.PlateReadings.SidePoint;
import org.trammel.calc.metrology.PlateReadings.SideReadings;
import org.trammel.calc.metrology.PlateReadings.StayReadings;

/**
 * An invented frame on the plate, its shell standing askew by two tilts. Heights follow from the equations of planes and
 * lines, written out here.
 */
final class PlateFrame {

    double tiltAhead = 0.004;
    double tiltUp = -0.003;
    double headLean = -0.0048;
    double seatLean = 0.001;
    double headOffset_mm = 0.4;
    double axleOffset_mm = 0.75;
    double faceOff_mm = 0;
    boolean driveSideUp = true;
    String shellGauge = "HG-1";
    String tubeGauge = "HG-1";

    /** Height of what lies z to the drive side of the middle plane at (x, y), to first order in the tilts. */
    private double height_mm(double x, double y, double z) {
        double upright = 150 + tiltAhead * x + tiltUp * y + z;
        return driveSideUp ? upright : 300 - upright;
    }

    PlateReadings readings() {
        RawReading headOd = new RawReading("OD of HT", 54, "CA-3", List.of(Contribution.own(ErrorKind.GAUGE, 0.012)));
        RawReading seatOd = new RawReading("OD of ST", 34.9, "CA-3", List.of(Contribution.own(ErrorKind.GAUGE, 0.012)));
        return new PlateReadings(
                new PlateDatum.Faces(face("face D", 36.5), face("face N", -36.5)),
                driveSideUp,
                List.of(head("HT lower", -50, headOd), head("HT upper", 50, headOd)),
                List.of(seat("ST at 100", 100, seatOd), seat("ST at 400", 400, seatOd)),
                new AxleReadings(
                        -428.1,
                        58,
                        List.of(reading("axle D", height_mm(-428.1, 58, axleOffset_mm + 74.1), shellGauge)),
                        List.of(reading("axle N", height_mm(-428.1, 58, axleOffset_mm - 74.1), shellGauge)),
                        List.of(calliper("inside width 1", 148.2), calliper("inside width 2", 148.22))),
                new StayReadings(calliper("CS D", 432.4), calliper("CS N", 432.1)),
                new GapReadings(
                        calliper("gap fore", 148.3),
                        calliper("gap aft", 148.1),
                        calliper("gap up", 148.2),
                        calliper("gap down", 148.3),
                        60),
                side());
    }

    private List<FacePoint> face(String name, double z_mm) {
        List<FacePoint> all = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            double x = 19 * Math.cos(0.3 + i * Math.PI / 2);
            double y = 19 * Math.sin(0.3 + i * Math.PI / 2);
            double off = faceOff_mm * (i % 2 == 0 ? 1 : -1);
            all.add(new FacePoint(x, y, reading(name + i, height_mm(x, y, z_mm + off), shellGauge)));
        }
        return all;
    }

    private AxisStation head(String name, double along, RawReading od) {
        double x = 483 - along * Math.cos(AlignmentPlateTest.HEAD_ANGLE);
        double y = 589 + along * Math.sin(AlignmentPlateTest.HEAD_ANGLE);
        return onTop(name, x, y, headOffset_mm + along * headLean, od);
    }

    private AxisStation seat(String name, double along, RawReading od) {
        double x = -along * Math.cos(AlignmentPlateTest.SEAT_ANGLE);
        double y = along * Math.sin(AlignmentPlateTest.SEAT_ANGLE);
        return onTop(name, x, y, along * seatLean, od);
    }

    private AxisStation onTop(String name, double x, double y, double z, RawReading od) {
        return new AxisStation(
                x, y, CentreHeight.above(reading(name, height_mm(x, y, z) + od.value_mm() / 2, tubeGauge), od));
    }

    /** The side view turned by 20°, its shell 300 and 200 mm from the plate in the two settings. */
    private SideReadings side() {
        return new SideReadings(
                sidePoint("shell", 0, 0),
                sidePoint("axle", -428.1, 58),
                List.of(
                        sidePoint("HT lower end", 458 + 115 * Math.cos(1.1432), 643.1 - 115 * Math.sin(1.1432)),
                        sidePoint("HT upper end", 458, 643.1)),
                List.of(
                        sidePoint("ST low", -100 * Math.cos(1.3), 100 * Math.sin(1.3)),
                        sidePoint("ST high", -400 * Math.cos(1.3), 400 * Math.sin(1.3))),
                -428.1,
                58);
    }

    private SidePoint sidePoint(String name, double x, double y) {
        double c = Math.cos(Math.toRadians(20));
        double s = Math.sin(Math.toRadians(20));
        return new SidePoint(
                CentreHeight.at(reading(name + " first", 300 + c * x - s * y, "HG-1")),
                CentreHeight.at(reading(name + " second", 200 + s * x + c * y, "HG-1")));
    }

    static RawReading reading(String name, double value_mm, String gauge) {
        return new RawReading(
                name,
                value_mm,
                gauge,
                List.of(
                        Contribution.shared(ErrorKind.GAUGE, 0.012, gauge),
                        Contribution.own(ErrorKind.REPEATABILITY, 0.015),
                        Contribution.own(ErrorKind.PLATE, 0.006),
                        Contribution.shared(ErrorKind.CLAMP, 0.03, "first clamping"),
                        Contribution.temperature(value_mm, 23.6e-6 - 11.5e-6, 2, "room")));
    }

    private static RawReading calliper(String name, double value_mm) {
        return new RawReading(
                name,
                value_mm,
                "CA-4",
                List.of(
                        Contribution.shared(ErrorKind.GAUGE, 0.015, "CA-4"),
                        Contribution.own(ErrorKind.REPEATABILITY, 0.02)));
    }
}
