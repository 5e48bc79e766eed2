package org.trammel.calc.geometry;

import org.trammel.calc.units.Answer;

/**
 * Another fork, lower headset or wheels on a frame that is built. The frame stays as it is and pitches about the rear
 * axle until both wheels stand on the ground:
 *
 * <pre>
 * F = front axle from the rear axle, on the frame as drawn, with the new parts
 * |F| sin(pitch + angle of F) = front radius − rear radius
 * </pre>
 *
 * Solved exactly; asin(longer by · sin HA / wheelbase) is its first order, good to a hundredth of a degree for 20 mm.
 * Source: plane trigonometry. Validity: rigid frame, fork as long as it stands under the same load.
 *
 * @param before as it was drawn
 * @param after the same frame with the new parts, on level ground
 * @param pitch_rad nose up; the head and the seat angle lessen by it
 */
public record Substitution(FrameGeometry before, FrameGeometry after, double pitch_rad) {

    /**
     * What is put on.
     *
     * @param lowerStack_mm between head tube and crown
     * @param forkLength_mm axle to crown along the steering axis
     * @param forkOffset_mm axle ahead of the steering axis
     * @param frontWheelRadius_mm with tyre
     * @param rearWheelRadius_mm with tyre
     */
    public record Parts(
            double lowerStack_mm,
            double forkLength_mm,
            double forkOffset_mm,
            double frontWheelRadius_mm,
            double rearWheelRadius_mm) {

        /** Those of a layout. */
        public static Parts of(Layout layout) {
            return new Parts(
                    layout.lowerStack_mm(),
                    layout.forkLength_mm(),
                    layout.forkOffset_mm(),
                    layout.frontWheelRadius_mm(),
                    layout.rearWheelRadius_mm());
        }

        /** The same with a fork so much longer. */
        public Parts withForkLongerBy(double longer_mm) {
            return new Parts(
                    lowerStack_mm, forkLength_mm + longer_mm, forkOffset_mm, frontWheelRadius_mm, rearWheelRadius_mm);
        }
    }

    /** How much higher the shell stands. */
    public double shellRise_mm() {
        return after.shellHeight_mm() - before.shellHeight_mm();
    }

    /** Computes it; without an answer where a part cannot be, or the axles cannot stand so. */
    public static Answer<Substitution> of(FrameGeometry before, Parts parts) {
        double[] values = {
            parts.lowerStack_mm(),
            parts.forkLength_mm(),
            parts.forkOffset_mm(),
            parts.frontWheelRadius_mm(),
            parts.rearWheelRadius_mm()
        };
        Dimension[] dimensions = {
            Dimension.LOWER_STACK,
            Dimension.FORK_LENGTH,
            Dimension.FORK_OFFSET,
            Dimension.FRONT_WHEEL_RADIUS,
            Dimension.REAR_WHEEL_RADIUS
        };
        for (int i = 0; i < values.length; i++) {
            if (!dimensions[i].allows(values[i])) {
                return Answer.none(
                        dimensions[i].input(),
                        "The " + dimensions[i].words() + " of " + dimensions[i].written(values[i]) + " cannot be.");
            }
        }
        Layout drawn = before.layout();
        Point down = before.down();
        Point ahead = new Point(-down.y_mm(), down.x_mm());
        Point front = before.headTubeBottom()
                .plus(down.times(parts.lowerStack_mm() + parts.forkLength_mm()))
                .plus(ahead.times(parts.forkOffset_mm()))
                .minus(before.rearAxle());
        double rise = parts.frontWheelRadius_mm() - parts.rearWheelRadius_mm();
        if (!(Math.abs(rise) < front.length_mm())) {
            return Answer.none(
                    "frontWheelRadius",
                    "The wheels differ by " + Written.mm(Math.abs(rise)) + ", more than the axles are apart.");
        }
        double pitch = Math.asin(rise / front.length_mm()) - Math.atan2(front.y_mm(), front.x_mm());
        Point shell = turned(before.rearAxle().times(-1), pitch);
        Point top = turned(before.headTubeTop(), pitch);
        double drop = parts.frontWheelRadius_mm() - (parts.rearWheelRadius_mm() + shell.y_mm());
        return FrameGeometry.of(new Layout(
                        drawn.headAngle_rad() - pitch,
                        drawn.seatAngle_rad() - pitch,
                        top.x_mm(),
                        drawn.headTube_mm(),
                        parts.lowerStack_mm(),
                        parts.forkLength_mm(),
                        parts.forkOffset_mm(),
                        drop,
                        drawn.chainstay_mm(),
                        drawn.seatTube_mm(),
                        drawn.seatTubeOffset_mm(),
                        parts.frontWheelRadius_mm(),
                        parts.rearWheelRadius_mm()))
                .then(after -> Answer.of(new Substitution(before, after, pitch)));
    }

    private static Point turned(Point point, double angle_rad) {
        double cos = Math.cos(angle_rad);
        double sin = Math.sin(angle_rad);
        return new Point(cos * point.x_mm() - sin * point.y_mm(), sin * point.x_mm() + cos * point.y_mm());
    }
}
