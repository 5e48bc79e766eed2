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
     */
    record Faces(List<Spot> drive, List<Spot> nonDrive) implements Source {

        @Override
        public Datum at(double[] q) {
            List<Vec> d = Spot.at(drive, q);
            List<Vec> n = Spot.at(nonDrive, q);
            double[] wd = Spot.weights(all());
            double[] wn = Arrays.copyOfRange(wd, d.size(), wd.length);
            wd = Arrays.copyOf(wd, d.size());
            Vec meanD = Vec.mean(d, wd);
            Vec meanN = Vec.mean(n, wn);
            Vec across = Scatter.of(List.of(d, n), List.of(wd, wn)).across();
            Vec normal = across.dot(meanD.minus(meanN)) < 0 ? across.times(-1) : across;
            return new Datum(normal, meanD.plus(meanN).times(0.5));
        }

        private List<Spot> all() {
            return Stream.concat(drive.stream(), nonDrive.stream()).toList();
        }
    }
}
