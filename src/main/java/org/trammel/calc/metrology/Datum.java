package org.trammel.calc.metrology;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * The middle plane of the frame.
 *
 * @param normal of length 1, to the drive side
 * @param middle a point of the plane on the shell's axis, or near it
 */
record Datum(Vec normal, Vec middle) {

    /** Distance of a point from the plane, positive on the drive side. */
    double offset_mm(Vec point) {
        return normal.dot(point.minus(middle));
    }

    /** From the values of all quantities to the plane. */
    @FunctionalInterface
    interface Source {
        Datum at(double[] q);
    }

    /**
     * Midway between two parallel planes of least squares: one normal for both faces, Σ w (n · (p − p̄_face))² least.
     *
     * @param drive spots of the face on the drive side
     * @param nonDrive spots of the other
     * @param driveWeights of the fit, both faces on one scale
     * @param nonDriveWeights the same
     */
    record Faces(List<Spot> drive, List<Spot> nonDrive, double[] driveWeights, double[] nonDriveWeights)
            implements Source {

        static Faces of(List<Spot> drive, List<Spot> nonDrive) {
            double[] weights = Spot.weights(
                    Stream.concat(drive.stream(), nonDrive.stream()).toList());
            return new Faces(
                    drive,
                    nonDrive,
                    Arrays.copyOf(weights, drive.size()),
                    Arrays.copyOfRange(weights, drive.size(), weights.length));
        }

        @Override
        public Datum at(double[] q) {
            List<Vec> d = Spot.at(drive, q);
            List<Vec> n = Spot.at(nonDrive, q);
            Vec meanD = Vec.mean(d, driveWeights);
            Vec meanN = Vec.mean(n, nonDriveWeights);
            Vec across = Scatter.of(List.of(d, n), List.of(driveWeights, nonDriveWeights))
                    .across();
            Vec normal = across.dot(meanD.minus(meanN)) < 0 ? across.times(-1) : across;
            return new Datum(normal, meanD.plus(meanN).times(0.5));
        }
    }
}
