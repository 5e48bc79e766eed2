package org.trammel.calc.metrology;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A frame lying on the surface plate, its shell on a post, read with a height gauge at named stations.
 *
 * @param datum what the middle plane is taken from
 * @param driveSideUp whether the drive side is the upper one
 * @param headTube stations from the lower to the upper end; empty if not read
 * @param seatTube stations from the lower to the upper end; empty if not read
 * @param axle heights at the dropouts, or null
 * @param stays lengths of the stays, or null
 * @param gaps between the dropouts, or null
 * @param side positions in the side view, or null
 */
public record PlateReadings(
        PlateDatum datum,
        boolean driveSideUp,
        List<AxisStation> headTube,
        List<AxisStation> seatTube,
        @Nullable AxleReadings axle,
        @Nullable StayReadings stays,
        @Nullable GapReadings gaps,
        @Nullable SideReadings side)
        implements AlignmentReadings {

    public PlateReadings {
        headTube = List.copyOf(headTube);
        seatTube = List.copyOf(seatTube);
    }

    /** The two tubes alone. */
    public static PlateReadings ofTubes(PlateDatum datum, List<AxisStation> headTube, List<AxisStation> seatTube) {
        return new PlateReadings(datum, true, headTube, seatTube, null, null, null, null);
    }

    /** With other stations of the head tube. */
    public PlateReadings withHeadTube(List<AxisStation> stations) {
        return new PlateReadings(datum, driveSideUp, stations, seatTube, axle, stays, gaps, side);
    }

    /** With other stations of the seat tube. */
    public PlateReadings withSeatTube(List<AxisStation> stations) {
        return new PlateReadings(datum, driveSideUp, headTube, stations, axle, stays, gaps, side);
    }

    /** With readings at the dropouts. */
    public PlateReadings withAxle(AxleReadings at) {
        return new PlateReadings(datum, driveSideUp, headTube, seatTube, at, stays, gaps, side);
    }

    /** What the middle plane of the frame is taken from. */
    public sealed interface PlateDatum {

        /**
         * From the shell's faces: however the shell stands, its tilt is taken out.
         *
         * @param drive three points or more, spread round the face
         * @param nonDrive three points or more, spread round the face
         */
        record Faces(List<FacePoint> drive, List<FacePoint> nonDrive) implements PlateDatum {

            public Faces {
                drive = List.copyOf(drive);
                nonDrive = List.copyOf(nonDrive);
            }
        }

        /**
         * From the plate: the shell is taken to sit truly on its post.
         *
         * @param centre height of the shell's middle
         * @param tilt_rad standard uncertainty of how truly, in each of two directions; 0 if it is counted elsewhere,
         *     such as with the clamping
         */
        record Post(CentreHeight centre, double tilt_rad) implements PlateDatum {}
    }

    /**
     * A point of a face of the shell.
     *
     * @param x_mm ahead of the shell's axis
     * @param y_mm above it
     */
    public record FacePoint(double x_mm, double y_mm, RawReading height) {}

    /**
     * Heights of the dropouts' inner faces where the axle lies, or of the shoulders of a dummy axle.
     *
     * @param x_mm ahead of the shell's axis, as the drawing has it; negative
     * @param y_mm above it
     * @param driveFace one or more, averaged
     * @param nonDriveFace one or more, averaged
     * @param insideWidths calliper between the faces, averaged; empty if the heights tell the width
     */
    public record AxleReadings(
            double x_mm,
            double y_mm,
            List<RawReading> driveFace,
            List<RawReading> nonDriveFace,
            List<RawReading> insideWidths) {

        public AxleReadings {
            driveFace = List.copyOf(driveFace);
            nonDriveFace = List.copyOf(nonDriveFace);
            insideWidths = List.copyOf(insideWidths);
        }
    }

    /** From a pin in the shell to pins in the dropouts, both the same way. */
    public record StayReadings(RawReading drive, RawReading nonDrive) {}

    /**
     * Gap between the dropouts, or between a pair of gauges in them.
     *
     * @param span_mm between fore and aft, and between up and down
     */
    public record GapReadings(RawReading fore, RawReading aft, RawReading up, RawReading down, double span_mm) {}

    /**
     * Positions in the side view: heights in two settings of the frame, a quarter turn apart, however it is turned in the
     * first.
     */
    public record SidePoint(CentreHeight first, CentreHeight second) {}

    /**
     * The side view as it was built.
     *
     * @param shell axis of the shell
     * @param rearAxle middle of the rear axle
     * @param headTube centres from the lower to the upper end, the last in the plane of the upper end
     * @param seatTube centres from the lower to the upper end; empty if not read
     * @param drawnAxleX_mm place of the rear axle on the drawing, ahead of the shell, negative
     * @param drawnAxleY_mm the same, above the shell
     */
    public record SideReadings(
            SidePoint shell,
            SidePoint rearAxle,
            List<SidePoint> headTube,
            List<SidePoint> seatTube,
            double drawnAxleX_mm,
            double drawnAxleY_mm) {

        public SideReadings {
            headTube = List.copyOf(headTube);
            seatTube = List.copyOf(seatTube);
        }
    }
}
