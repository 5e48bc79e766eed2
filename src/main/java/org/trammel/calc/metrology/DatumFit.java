package org.trammel.calc.metrology;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.DecimalSign;

/**
 * How well the shell's faces give a datum plane.
 *
 * @param width_mm between the faces, along the common normal
 * @param residual_mm greatest distance of a point from the plane of its face
 * @param rms_mm root mean square of those distances, over points less the four numbers that were fitted
 * @param farthest name of the point with the greatest
 * @param faces_rad angle between the planes of the two faces, each fitted alone; how far from parallel they are
 * @param tilt_rad angle of the shell's axis to the upright of the plate, which was taken out; null for points in space
 * @param within_mm greatest residual that a clean, faced shell shows
 */
public record DatumFit(
        double width_mm,
        double residual_mm,
        double rms_mm,
        String farthest,
        double faces_rad,
        @Nullable Double tilt_rad,
        double within_mm) {

    /** What a clean, faced shell shows at most; common practice. */
    public static final double CLEAN_WITHIN_MM = 0.03;

    private static final int FITTED = 4;

    /** Whether the plane may be measured from. */
    public boolean clean() {
        return residual_mm <= within_mm;
    }

    /** One sentence on the residual. */
    public String words(DecimalSign sign) {
        String residual = sign.write(Figure.rounded(residual_mm, 3)) + " mm";
        String within = sign.write(Figure.rounded(within_mm, 3)) + " mm";
        return clean()
                ? "The points lie within " + residual + " of the planes of the shell's faces, " + within + " at most."
                : farthest + " lies " + residual + " off the plane of its face, more than " + within
                        + ": clean or face the shell and read it again.";
    }

    static DatumFit of(Datum.Faces faces, double[] q, boolean onPlate, double within_mm) {
        Datum datum = faces.at(q);
        List<Vec> d = Spot.at(faces.drive(), q);
        List<Vec> n = Spot.at(faces.nonDrive(), q);
        double[] wd = faces.driveWeights();
        double[] wn = faces.nonDriveWeights();
        int count = d.size() + n.size();
        Vec meanD = Vec.mean(d, wd);
        Vec meanN = Vec.mean(n, wn);
        double greatest = -1;
        double squares = 0;
        String farthest = "";
        for (int i = 0; i < count; i++) {
            boolean drive = i < d.size();
            Spot spot = drive ? faces.drive().get(i) : faces.nonDrive().get(i - d.size());
            double off = datum.normal().dot(spot.at(q).minus(drive ? meanD : meanN));
            squares += off * off;
            if (Math.abs(off) > greatest) {
                greatest = Math.abs(off);
                farthest = spot.name();
            }
        }
        Vec alone = Scatter.of(d, wd).across();
        Vec other = Scatter.of(n, wn).across();
        return new DatumFit(
                datum.normal().dot(meanD.minus(meanN)),
                greatest,
                Math.sqrt(squares / (count - FITTED)),
                farthest,
                Math.atan2(alone.cross(other).length(), Math.abs(alone.dot(other))),
                onPlate
                        ? Math.atan2(
                                datum.normal().across(new Vec(0, 0, 1)).length(),
                                Math.abs(datum.normal().z()))
                        : null,
                within_mm);
    }
}
