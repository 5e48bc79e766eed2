package org.trammel.calc.metrology;

import java.util.Arrays;
import java.util.List;

/** Whether points lie as the thing they were read on does; a sentence for each slip. */
final class Shape {

    /** Across the line they lie along, root mean square; points nearer a line than this give no plane. */
    private static final double LEAST_SPREAD_MM = 2;

    /** Further off the common plane is no dirt but a slip. */
    private static final double FACE_SLIP_MM = 2;

    private static final double LEAST_BASE_MM = 20;

    /** No axis of a frame passes the middle further off. */
    private static final double OFF_MIDDLE_MM = 30;

    private static final double SHELL_LEAST_MM = 30;
    private static final double SHELL_MOST_MM = 200;
    private static final double WIDTH_LEAST_MM = 60;
    private static final double WIDTH_MOST_MM = 250;
    private static final int SPREAD_LEAST = 3;

    private final Asked asked;
    private final double[] q;

    Shape(Asked asked, double[] q) {
        this.asked = asked;
        this.q = q;
    }

    /** Points that are to give a plane. */
    boolean plane(String input, String what, List<Spot> spots) {
        if (!asked.holds(
                spots.size() >= SPREAD_LEAST,
                input,
                "The " + what + " has " + spots.size() + (spots.size() == 1 ? " point" : " points")
                        + ": a plane needs three or more, spread round it.")) {
            return false;
        }
        double spread = Scatter.of(Spot.at(spots, q), alike(spots)).middle_mm();
        return asked.holds(
                spread >= LEAST_SPREAD_MM,
                input,
                "The points of the " + what + " lie nearly on one line, only " + Figure.written(spread)
                        + " mm to its sides: spread them round the face.");
    }

    /** Both faces of the shell, each a plane by itself. */
    boolean shell(Datum.Faces faces) {
        if (!(plane("driveFace", "drive-side face of the shell", faces.drive())
                & plane("nonDriveFace", "non-drive-side face of the shell", faces.nonDrive()))) {
            return false;
        }
        DatumFit fit = DatumFit.of(faces, q, true, DatumFit.CLEAN_WITHIN_MM);
        return asked.within(
                        "datum", "width between the faces of the shell", fit.width_mm(), SHELL_LEAST_MM, SHELL_MOST_MM)
                && asked.holds(
                        fit.residual_mm() <= FACE_SLIP_MM,
                        "datum",
                        fit.farthest() + " lies " + Figure.written(fit.residual_mm())
                                + " mm off the plane of its face, which is no dirt but a slip: read it again, in"
                                + " millimetres.");
    }

    /** Stations of an axis. */
    boolean axis(String input, String tube, List<Spot> spots, Datum datum) {
        if (spots.isEmpty()) {
            return true;
        }
        if (!asked.holds(
                spots.size() >= 2,
                input,
                "The " + tube + " was read at one station: its direction needs two or more, far apart.")) {
            return false;
        }
        boolean near = true;
        for (Spot spot : spots) {
            double off = datum.offset_mm(spot.at(q));
            near &= asked.holds(
                    Math.abs(off) <= OFF_MIDDLE_MM,
                    input,
                    "The axis at " + spot.name() + " would lie " + Figure.written(off)
                            + " mm off the middle plane: read it again, in millimetres and from the same side as the"
                            + " others.");
        }
        List<Vec> points = Spot.at(spots, q);
        double base = points.get(points.size() - 1).minus(points.get(0)).length();
        return near
                && asked.holds(
                        base >= LEAST_BASE_MM,
                        input,
                        "The first and the last station of the " + tube + " lie " + Figure.written(base)
                                + " mm apart: its direction needs " + Figure.written(LEAST_BASE_MM)
                                + " mm at least, and the wider the better.");
    }

    /** Inner faces of the dropouts at the axle. */
    boolean dropouts(List<Spot> drive, List<Spot> nonDrive, Datum datum) {
        double d = datum.offset_mm(Vec.mean(Spot.at(drive, q)));
        double n = datum.offset_mm(Vec.mean(Spot.at(nonDrive, q)));
        return asked.holds(
                        d > n,
                        "axle",
                        "The drive-side dropout would lie on the non-drive side of the other: the two may be exchanged.")
                && asked.within("axle", "width between the dropouts", d - n, WIDTH_LEAST_MM, WIDTH_MOST_MM)
                && asked.holds(
                        Math.abs(d + n) / 2 <= OFF_MIDDLE_MM,
                        "axle",
                        "The rear axle would lie " + Figure.written((d + n) / 2)
                                + " mm off the middle plane: read the dropouts again, both in millimetres.");
    }

    private static double[] alike(List<Spot> spots) {
        double[] weights = new double[spots.size()];
        Arrays.fill(weights, 1);
        return weights;
    }
}
