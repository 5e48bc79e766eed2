package org.trammel.calc.metrology;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Points of a frame in space, from a measuring arm or a probe, in any axes: only how they lie to each other counts.
 *
 * @param driveFace three points or more of the shell's face on the drive side
 * @param nonDriveFace three points or more of the other
 * @param shellBore three points or more round the bore or thread of the shell; empty if its axis is not needed
 * @param headTube its axis from the lower to the upper end
 * @param seatTube its axis from the lower to the upper end
 * @param driveDropout points of the inner face; three or more tell its direction too and, with the axle's ends, where
 *     the axle passes it
 * @param nonDriveDropout points of the inner face
 * @param driveAxleEnd centre of the axle at the drive-side dropout, or null
 * @param nonDriveAxleEnd centre of the axle at the other, or null
 * @param headTubeTop centre of the upper end of the head tube, or null
 * @param drawnAxle place of the rear axle on the drawing, or null
 */
public record PointReadings(
        List<ProbedPoint> driveFace,
        List<ProbedPoint> nonDriveFace,
        List<ProbedPoint> shellBore,
        List<AxisPoint> headTube,
        List<AxisPoint> seatTube,
        List<ProbedPoint> driveDropout,
        List<ProbedPoint> nonDriveDropout,
        @Nullable ProbedPoint driveAxleEnd,
        @Nullable ProbedPoint nonDriveAxleEnd,
        @Nullable ProbedPoint headTubeTop,
        @Nullable DrawnAxle drawnAxle)
        implements AlignmentReadings {

    public PointReadings {
        driveFace = List.copyOf(driveFace);
        nonDriveFace = List.copyOf(nonDriveFace);
        shellBore = List.copyOf(shellBore);
        headTube = List.copyOf(headTube);
        seatTube = List.copyOf(seatTube);
        driveDropout = List.copyOf(driveDropout);
        nonDriveDropout = List.copyOf(nonDriveDropout);
    }

    /**
     * A point.
     *
     * @param name once in a measurement
     * @param gauge id of the arm or probe
     * @param contributions causes of doubt about each coordinate, mm; a shared one acts on x, on y and on z of all points
     *     that name it, on the three independently
     */
    public record ProbedPoint(
            String name, double x_mm, double y_mm, double z_mm, String gauge, List<Contribution> contributions) {

        public ProbedPoint {
            contributions = List.copyOf(contributions);
        }

        double ownVariance_mm2() {
            return new RawReading(name, 0, gauge, contributions).ownVariance_mm2();
        }
    }

    /**
     * A point of an axis.
     *
     * @param first a point on the axis, or on the surface
     * @param opposite the point of the surface right across, so that the axis lies midway; null if the first is on it
     */
    public record AxisPoint(ProbedPoint first, @Nullable ProbedPoint opposite) {

        double ownVariance_mm2() {
            double one = first.ownVariance_mm2();
            return opposite == null ? one : (one + opposite.ownVariance_mm2()) / 4;
        }
    }

    /**
     * Place of the rear axle on the drawing.
     *
     * @param x_mm ahead of the shell's axis, negative
     * @param y_mm above it
     */
    public record DrawnAxle(double x_mm, double y_mm) {}
}
