package org.trammel.shop.alignment;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.geometry.SideView;
import org.trammel.shop.designs.DrawnFrames;

/**
 * Where the stations of a frame lie in its side view, mm from the shell's axis, or from the pivot of a swing arm.
 *
 * @param drawn whether they come from the frame's own drawing; else from a plain frame in proportion, which is good enough
 *     for what is told from heights alone
 * @param seatFoot where distances up the seat tube count from
 * @param seatUp direction up the seat tube, of length 1
 * @param headMiddle middle of the head tube
 * @param headUp direction up the head tube, of length 1
 * @param faceRadius_mm of the circle on which a face of the shell is read
 */
record Places(
        boolean drawn, Point seatFoot, Point seatUp, Point headMiddle, Point headUp, Point axle, double faceRadius_mm) {

    private static final double FACE_RADIUS_MM = 19;

    /** A frame in proportion: seat tube 74°, head tube 68°. */
    private static final Places PLAIN = new Places(
            false, FrameGeometry.SHELL, up(74), new Point(440, 560), up(68), new Point(-430, 60), FACE_RADIUS_MM);

    private static Point up(double angle_deg) {
        double rad = Math.toRadians(angle_deg);
        return new Point(-Math.cos(rad), Math.sin(rad));
    }

    static Places of(DrawnFrames.@Nullable Drawn frame, boolean swingArm) {
        if (frame == null) {
            return PLAIN;
        }
        FrameGeometry g = frame.side().geometry();
        Point from = swingArm ? hub(frame.side(), SideView.Part.PIVOT) : FrameGeometry.SHELL;
        return new Places(
                true,
                g.seatTubeFoot().minus(from),
                unit(g.seatTubeTop().minus(g.seatTubeFoot())),
                g.headTubeTop().plus(g.headTubeBottom()).times(0.5).minus(from),
                unit(g.headTubeTop().minus(g.headTubeBottom())),
                g.rearAxle().minus(from),
                faceRadius(frame.side(), swingArm ? SideView.Part.PIVOT : SideView.Part.SHELL));
    }

    private static Point hub(SideView side, SideView.Part part) {
        return side.hubs().stream()
                .filter(hub -> hub.part() == part)
                .map(SideView.Hub::centre)
                .findFirst()
                .orElse(FrameGeometry.SHELL);
    }

    private static double faceRadius(SideView side, SideView.Part part) {
        List<SideView.Hub> hubs =
                side.hubs().stream().filter(hub -> hub.part() == part).toList();
        return hubs.isEmpty() || hubs.get(0).bore_mm() <= 0
                ? FACE_RADIUS_MM
                : (hubs.get(0).outside_mm() + hubs.get(0).bore_mm()) / 4;
    }

    private static Point unit(Point along) {
        return along.times(1 / Math.hypot(along.x_mm(), along.y_mm()));
    }

    Point onSeatTube(double along_mm) {
        return seatFoot.plus(seatUp.times(along_mm));
    }

    /** A station of the head tube or mandrel, so far above its middle. */
    Point onHeadTube(double above_mm) {
        return headMiddle.plus(headUp.times(above_mm));
    }
}
