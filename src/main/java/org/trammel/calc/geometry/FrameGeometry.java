package org.trammel.calc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.units.Answer;

/**
 * Axles, ends of the head tube and seat tube and what is told of a frame by them.
 *
 * <pre>
 * d = (cos HA, −sin HA)   n = (sin HA, cos HA)   L = head tube + lower stack + fork
 * stack = drop + L sin HA − offset cos HA        front axle x = reach + L cos HA + offset sin HA
 * rear axle x = −√(chainstay² − rear drop²)      trail = (front radius cos HA − offset) / sin HA
 * </pre>
 *
 * Source: plane trigonometry of the side view; trail as in Meijaard et
 * al., Proc. R. Soc. A 463 (2007) 1955. Accuracy that of double precision.
 *
 * @param layout what it follows from
 * @param headTubeTop upper end of the head tube, on the steering axis
 * @param headTubeBottom lower end
 * @param frontAxle centre of the front axle
 * @param rearAxle centre of the rear axle
 * @param seatTubeFoot the point of the seat tube's axis next to the shell's centre
 * @param seatTubeTop upper end of the seat tube
 */
public record FrameGeometry(
        Layout layout,
        Point headTubeTop,
        Point headTubeBottom,
        Point frontAxle,
        Point rearAxle,
        Point seatTubeFoot,
        Point seatTubeTop) {

    /** The shell's centre. */
    public static final Point SHELL = new Point(0, 0);

    /** Computes the nodes; without an answer where an angle is flat or overhangs, or a stay does not reach its axle. */
    public static Answer<FrameGeometry> of(Layout layout) {
        List<Answer.Gap> gaps = gaps(layout);
        if (!gaps.isEmpty()) {
            return new Answer.NotDeterminable<>(gaps);
        }
        Point down = down(layout);
        Point ahead = new Point(-down.y_mm(), down.x_mm());
        double stack = layout.shellDrop_mm()
                + layout.steering_mm() * Math.sin(layout.headAngle_rad())
                - layout.forkOffset_mm() * Math.cos(layout.headAngle_rad());
        Point top = new Point(layout.reach_mm(), stack);
        double rearDrop = layout.rearDrop_mm();
        Point up = seatTubeUp(layout);
        Point foot = new Point(up.y_mm(), -up.x_mm()).times(layout.seatTubeOffset_mm());
        return Answer.of(new FrameGeometry(
                layout,
                top,
                top.plus(down.times(layout.headTube_mm())),
                top.plus(down.times(layout.steering_mm())).plus(ahead.times(layout.forkOffset_mm())),
                new Point(-Math.sqrt(layout.chainstay_mm() * layout.chainstay_mm() - rearDrop * rearDrop), rearDrop),
                foot,
                foot.plus(up.times(layout.seatTube_mm()))));
    }

    private static List<Answer.Gap> gaps(Layout layout) {
        List<Answer.Gap> gaps = new ArrayList<>();
        angle(gaps, "headAngle", "head angle", layout.headAngle_rad());
        angle(gaps, "seatAngle", "seat angle", layout.seatAngle_rad());
        if (!(layout.chainstay_mm() > Math.abs(layout.rearDrop_mm()))) {
            gaps.add(new Answer.Gap(
                    "chainstay",
                    "The chainstay of " + Written.mm(layout.chainstay_mm())
                            + " does not reach the rear axle, which lies " + Written.mm(Math.abs(layout.rearDrop_mm()))
                            + (layout.rearDrop_mm() < 0 ? " below" : " above") + " the shell."));
        }
        return gaps;
    }

    private static void angle(List<Answer.Gap> gaps, String input, String name, double angle_rad) {
        if (!(angle_rad > 0 && angle_rad < Math.PI / 2)) {
            gaps.add(new Answer.Gap(
                    input, "The " + name + " of " + Written.degrees(angle_rad) + " is not between 0° and 90°."));
        }
    }

    private static Point down(Layout layout) {
        return Point.at(-layout.headAngle_rad());
    }

    private static Point seatTubeUp(Layout layout) {
        return Point.at(Math.PI - layout.seatAngle_rad());
    }

    /** Along the steering axis towards the ground, of length 1. */
    public Point down() {
        return down(layout);
    }

    /** The point of the steering axis so far below the top of the head tube. */
    public Point onSteeringAxis(double belowTop_mm) {
        return headTubeTop.plus(down().times(belowTop_mm));
    }

    /** The point of the seat tube's axis so far below the top of the seat tube. */
    public Point onSeatTube(double belowTop_mm) {
        return seatTubeTop.minus(seatTubeUp().times(belowTop_mm));
    }

    /** Along the seat tube towards the saddle, of length 1. */
    public Point seatTubeUp() {
        return seatTubeUp(layout);
    }

    /** Top of the head tube above the shell. */
    public double stack_mm() {
        return headTubeTop.y_mm();
    }

    /** Axle to axle along the ground. */
    public double wheelbase_mm() {
        return frontAxle.x_mm() - rearAxle.x_mm();
    }

    /** Shell to front axle. */
    public double frontCentre_mm() {
        return frontAxle.distance_mm(SHELL);
    }

    /** From the front tyre's contact ahead to where the steering axis meets the ground. */
    public double trail_mm() {
        return (layout.frontWheelRadius_mm() * Math.cos(layout.headAngle_rad()) - layout.forkOffset_mm())
                / Math.sin(layout.headAngle_rad());
    }

    /** From the front tyre's contact to the steering axis, at right angles to it: trail · sin HA. */
    public double mechanicalTrail_mm() {
        return layout.frontWheelRadius_mm() * Math.cos(layout.headAngle_rad()) - layout.forkOffset_mm();
    }

    /** Front axle to crown in a straight line: √(length² + offset²). */
    public double forkStraight_mm() {
        return Math.hypot(layout.forkLength_mm(), layout.forkOffset_mm());
    }

    /** How far the steering axis would sink if the wheel were turned by a radian: trail · sin HA · cos HA. */
    public double flop_mm() {
        return trail_mm() * Math.sin(layout.headAngle_rad()) * Math.cos(layout.headAngle_rad());
    }

    /** Shell above the ground. */
    public double shellHeight_mm() {
        return layout.frontWheelRadius_mm() - layout.shellDrop_mm();
    }

    /** From the top of the head tube level to the seat tube's axis, or its prolongation. */
    public double effectiveTopTube_mm() {
        double along = (stack_mm() - seatTubeFoot.y_mm()) / Math.sin(layout.seatAngle_rad());
        return headTubeTop.x_mm() - seatTubeFoot.plus(seatTubeUp().times(along)).x_mm();
    }
}
