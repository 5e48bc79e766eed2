package org.trammel.calc.metrology;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.trammel.calc.metrology.PointReadings.AxisPoint;
import org.trammel.calc.metrology.PointReadings.DrawnAxle;
import org.trammel.calc.metrology.PointReadings.ProbedPoint;

/**
 * An invented frame of known deviations, as points in space: x ahead, y up, z to the drive side, the shell's axis the z
 * axis. Every place follows from elementary trigonometry, none from the code that is tested.
 */
final class ProbedFrame {

    static final double HEAD_ANGLE = Math.toRadians(65.5);
    static final double SEAT_ANGLE = Math.toRadians(74.5);
    static final double AXLE_X = -428.1;
    static final double AXLE_Y = 58;
    static final double REACH = 458;
    static final double STACK = 643.1;
    static final double SHELL_HALF = 36.5;

    double headLean_rad = Math.toRadians(-0.27);
    double seatLean_rad = Math.toRadians(0.06);
    double headOffset_mm = 0.4;
    double axleOffset_mm = 0.75;
    double axleWidth_mm = 148.2;
    double driveLonger_mm = 0.36;
    double openFore_mm = 0.2;
    double openUp_mm = -0.1;
    double noise_mm = 0;
    long seed = 1;

    private final List<Contribution> doubt = List.of(
            Contribution.own(ErrorKind.REPEATABILITY, 0.02),
            Contribution.shared(ErrorKind.GAUGE, 0.03, "AR-1"),
            Contribution.shared(ErrorKind.TEMPERATURE, 0.01, "room"));

    /** The points as an arm at the frame's own axes would give them. */
    PointReadings readings() {
        Random random = new Random(seed);
        List<ProbedPoint> driveFace = ring("face D", 19, SHELL_HALF, 4, random);
        List<ProbedPoint> nonDriveFace = ring("face N", 19, -SHELL_HALF, 4, random);
        List<ProbedPoint> bore = ring("bore", 17, 10, 5, random);
        double drive = axleOffset_mm + axleWidth_mm / 2;
        double nonDrive = axleOffset_mm - axleWidth_mm / 2;
        return new PointReadings(
                driveFace,
                nonDriveFace,
                bore,
                head(random),
                seat(random),
                dropout("dropout D", driveLonger_mm / 2, drive, openFore_mm / 2 / 60, openUp_mm / 2 / 60, random),
                dropout("dropout N", -driveLonger_mm / 2, nonDrive, -openFore_mm / 2 / 60, -openUp_mm / 2 / 60, random),
                end("axle D", driveLonger_mm / 2, drive, random),
                end("axle N", -driveLonger_mm / 2, nonDrive, random),
                point("top", REACH, STACK, headOffset_mm + 60 * Math.tan(headLean_rad), random),
                new DrawnAxle(AXLE_X, AXLE_Y));
    }

    /** An axle end so much further from the shell's axis than drawn. */
    private ProbedPoint end(String name, double further_mm, double z_mm, Random random) {
        double scale = scale(further_mm);
        return point(name, AXLE_X * scale, AXLE_Y * scale, z_mm, random);
    }

    private List<AxisPoint> head(Random random) {
        List<AxisPoint> all = new ArrayList<>();
        for (double along : new double[] {-60, 0, 60}) {
            double x = REACH - (along - 60) * Math.cos(HEAD_ANGLE);
            double y = STACK + (along - 60) * Math.sin(HEAD_ANGLE);
            double z = headOffset_mm + along * Math.tan(headLean_rad);
            all.add(new AxisPoint(
                    point("head " + along + " D", x, y, z + 27, random),
                    point("head " + along + " N", x, y, z - 27, random)));
        }
        return all;
    }

    private List<AxisPoint> seat(Random random) {
        List<AxisPoint> all = new ArrayList<>();
        for (double along : new double[] {100, 200, 400}) {
            all.add(new AxisPoint(
                    point(
                            "seat " + along,
                            -along * Math.cos(SEAT_ANGLE),
                            along * Math.sin(SEAT_ANGLE),
                            along * Math.tan(seatLean_rad),
                            random),
                    null));
        }
        return all;
    }

    private static double scale(double further_mm) {
        double length = Math.hypot(AXLE_X, AXLE_Y);
        return (length + further_mm) / length;
    }

    /** Points round an axle end, on a face that passes it at z and slopes so much. */
    private List<ProbedPoint> dropout(
            String name, double further_mm, double z_mm, double ahead, double upwards, Random random) {
        double scale = scale(further_mm);
        List<ProbedPoint> all = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            double dx = 15 * Math.cos(i * Math.PI / 2);
            double dy = 15 * Math.sin(i * Math.PI / 2);
            all.add(point(
                    name + i, AXLE_X * scale + dx, AXLE_Y * scale + dy, z_mm + ahead * dx + upwards * dy, random));
        }
        return all;
    }

    private List<ProbedPoint> ring(String name, double radius_mm, double z_mm, int count, Random random) {
        List<ProbedPoint> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double angle = 2 * Math.PI * i / count + 0.3;
            all.add(point(name + i, radius_mm * Math.cos(angle), radius_mm * Math.sin(angle), z_mm, random));
        }
        return all;
    }

    private ProbedPoint point(String name, double x, double y, double z, Random random) {
        return new ProbedPoint(
                name,
                x + noise_mm * random.nextGaussian(),
                y + noise_mm * random.nextGaussian(),
                z + noise_mm * random.nextGaussian(),
                "AR-1",
                doubt);
    }

    /** From one point to another, for all points. */
    @FunctionalInterface
    interface Motion {
        double[] of(double x, double y, double z);
    }

    static PointReadings moved(PointReadings r, Motion motion) {
        return new PointReadings(
                moved(r.driveFace(), motion),
                moved(r.nonDriveFace(), motion),
                moved(r.shellBore(), motion),
                movedAxis(r.headTube(), motion),
                movedAxis(r.seatTube(), motion),
                moved(r.driveDropout(), motion),
                moved(r.nonDriveDropout(), motion),
                moved(r.driveAxleEnd(), motion),
                moved(r.nonDriveAxleEnd(), motion),
                moved(r.headTubeTop(), motion),
                r.drawnAxle());
    }

    /** The same points with the sides called the other way round. */
    static PointReadings sidesExchanged(PointReadings r) {
        return new PointReadings(
                r.nonDriveFace(),
                r.driveFace(),
                r.shellBore(),
                r.headTube(),
                r.seatTube(),
                r.nonDriveDropout(),
                r.driveDropout(),
                r.nonDriveAxleEnd(),
                r.driveAxleEnd(),
                r.headTubeTop(),
                r.drawnAxle());
    }

    static List<ProbedPoint> moved(List<ProbedPoint> points, Motion motion) {
        return points.stream().map(point -> moved(point, motion)).toList();
    }

    private static List<AxisPoint> movedAxis(List<AxisPoint> points, Motion motion) {
        return points.stream()
                .map(point -> new AxisPoint(
                        moved(point.first(), motion),
                        point.opposite() == null ? null : moved(point.opposite(), motion)))
                .toList();
    }

    static ProbedPoint moved(ProbedPoint p, Motion motion) {
        double[] to = motion.of(p.x_mm(), p.y_mm(), p.z_mm());
        return new ProbedPoint(p.name(), to[0], to[1], to[2], p.gauge(), p.contributions());
    }

    /** A turn about a random axis and a shift, from the quaternion of a random direction (K. Shoemake 1992). */
    static Motion rigid(Random random) {
        double u = random.nextDouble();
        double a = 2 * Math.PI * random.nextDouble();
        double b = 2 * Math.PI * random.nextDouble();
        double w = Math.sqrt(1 - u) * Math.sin(a);
        double i = Math.sqrt(1 - u) * Math.cos(a);
        double j = Math.sqrt(u) * Math.sin(b);
        double k = Math.sqrt(u) * Math.cos(b);
        double[] shift = {
            1000 * random.nextDouble() - 500, 1000 * random.nextDouble() - 500, 1000 * random.nextDouble() - 500
        };
        return (x, y, z) -> new double[] {
            (1 - 2 * (j * j + k * k)) * x + 2 * (i * j - k * w) * y + 2 * (i * k + j * w) * z + shift[0],
            2 * (i * j + k * w) * x + (1 - 2 * (i * i + k * k)) * y + 2 * (j * k - i * w) * z + shift[1],
            2 * (i * k - j * w) * x + 2 * (j * k + i * w) * y + (1 - 2 * (i * i + j * j)) * z + shift[2]
        };
    }
}
