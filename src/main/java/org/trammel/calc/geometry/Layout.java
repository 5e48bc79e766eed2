package org.trammel.calc.geometry;

/**
 * The thirteen numbers from which every node of a frame follows. Each is possible by itself; {@link FrameGeometry#of}
 * tells whether they are together.
 *
 * @param headAngle_rad of the steering axis
 * @param seatAngle_rad of the seat tube's axis
 * @param reach_mm top of the head tube ahead of the shell
 * @param headTube_mm length of the head tube
 * @param lowerStack_mm between head tube and crown
 * @param forkLength_mm axle to crown along the steering axis, as the frame is drawn
 * @param forkOffset_mm axle ahead of the steering axis, at right angles to it
 * @param shellDrop_mm shell below the front axle; below 0 where it lies above
 * @param chainstay_mm shell to rear axle, in the middle plane
 * @param seatTube_mm from the foot to the top, along the axis
 * @param seatTubeOffset_mm seat tube's axis ahead of the shell's centre, at right angles to the axis
 * @param frontWheelRadius_mm with tyre
 * @param rearWheelRadius_mm with tyre
 */
public record Layout(
        double headAngle_rad,
        double seatAngle_rad,
        double reach_mm,
        double headTube_mm,
        double lowerStack_mm,
        double forkLength_mm,
        double forkOffset_mm,
        double shellDrop_mm,
        double chainstay_mm,
        double seatTube_mm,
        double seatTubeOffset_mm,
        double frontWheelRadius_mm,
        double rearWheelRadius_mm) {

    /** How far the shell lies below the rear axle: the two axles differ by the wheels. */
    public double rearDrop_mm() {
        return shellDrop_mm - (frontWheelRadius_mm - rearWheelRadius_mm);
    }

    /** From the top of the head tube to the crown's far end, along the steering axis. */
    double steering_mm() {
        return headTube_mm + lowerStack_mm + forkLength_mm;
    }
}
