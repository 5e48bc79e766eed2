package org.trammel.calc.geometry;

import org.trammel.calc.units.Answer;

/**
 * How high a saddle stands on a frame.
 *
 * <pre>
 * level = H sin SA        clamp = (level − stack − foot) / sin SA        out = clamp − seat tube
 * </pre>
 *
 * H saddle height, from the shell's centre along the line of the seat tube to the saddle's top; SA seat angle; foot the
 * height of the seat tube's foot over the shell's centre. The saddle's top is level and the post has no setback along the
 * tube. Source: plane trigonometry; how a saddle height is measured is common practice. Accuracy that of double precision.
 *
 * @param level_mm the saddle's top above the shell's centre
 * @param clamp_mm the saddle's clamp above the foot of the seat tube, along its axis
 * @param out_mm seatpost between the seat tube's top and the saddle's clamp
 */
public record SaddleFit(double level_mm, double clamp_mm, double out_mm) {

    /**
     * Places the saddle; without an answer where its clamp would stand inside the seat tube.
     *
     * @param height_mm H
     * @param stack_mm from the clamp up to the saddle's top
     */
    public static Answer<SaddleFit> of(FrameGeometry frame, double height_mm, double stack_mm) {
        return new Objections()
                .length("saddleHeight", "saddle height", height_mm)
                .lengthOrNone("saddleStack", "saddle's top above its clamp", stack_mm)
                .orElse(() -> {
                    double sine = Math.sin(frame.layout().seatAngle_rad());
                    double level = level_mm(frame, height_mm);
                    double clamp = (level - stack_mm - frame.seatTubeFoot().y_mm()) / sine;
                    double out = clamp - frame.layout().seatTube_mm();
                    return new Objections()
                            .unless(
                                    out >= 0,
                                    "saddleHeight",
                                    () -> "The saddle's clamp at " + Written.mm(clamp)
                                            + " would stand below the seat tube's top at "
                                            + Written.mm(frame.layout().seatTube_mm()) + ".")
                            .orElse(() -> Answer.of(new SaddleFit(level, clamp, out)));
                });
    }

    /** The saddle's top above the shell's centre. */
    static double level_mm(FrameGeometry frame, double height_mm) {
        return height_mm * Math.sin(frame.layout().seatAngle_rad());
    }
}
