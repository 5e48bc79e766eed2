package org.trammel.calc.geometry;

import org.trammel.calc.units.Answer;

/**
 * Where the bar's middle stands to the head tube of a frame.
 *
 * <pre>
 * tip = (−setback, H sin SA)      bar = tip + (√(D² − V²), −V)
 * above = (bar − top) · u         ahead = (bar − top) · n       u = (−cos HA, sin HA), n = (sin HA, cos HA)
 * </pre>
 *
 * H, D, V saddle height, saddle to bar and saddle over bar of the fit sheet; top of the head tube. Source: plane
 * trigonometry. Accuracy that of double precision.
 *
 * @param saddleTip of the saddle
 * @param bar its middle
 * @param above_mm above the top of the head tube, along the steering axis
 * @param ahead_mm ahead of the steering axis, at right angles to it
 */
public record BarFit(Point saddleTip, Point bar, double above_mm, double ahead_mm) {

    /** Places saddle and bar; without an answer where a number of the sheet cannot be. */
    public static Answer<BarFit> of(FrameGeometry frame, FitSheet sheet) {
        return sheet.check().orElse(() -> {
            Point tip = tip(frame, sheet);
            double level = Math.sqrt(sheet.saddleToBar_mm() * sheet.saddleToBar_mm()
                    - sheet.saddleOverBar_mm() * sheet.saddleOverBar_mm());
            Point bar = new Point(tip.x_mm() + level, tip.y_mm() - sheet.saddleOverBar_mm());
            Point from = bar.minus(frame.headTubeTop());
            return Answer.of(new BarFit(tip, bar, -from.dot(frame.down()), from.dot(ahead(frame))));
        });
    }

    /**
     * What holds a bar on a steerer.
     *
     * @param upperStack_mm of the headset, above the head tube
     * @param spacers_mm between headset and stem
     * @param stemHeight_mm of the stem on the steerer, in whose middle it springs
     * @param stem_mm from the steerer's axis to the bar's middle, along the stem
     * @param rise_rad of the stem against the square to the steerer, above 0 upward
     */
    public record Parts(
            double upperStack_mm, double spacers_mm, double stemHeight_mm, double stem_mm, double rise_rad) {

        Objections check() {
            return new Objections()
                    .lengthOrNone("upperStack", "upper headset stack", upperStack_mm)
                    .distance("spacers", "height of the spacers", spacers_mm)
                    .lengthOrNone("stemHeight", "stem's height on the steerer", stemHeight_mm)
                    .lengthOrNone("stem", "stem's length", stem_mm)
                    .unless(
                            Math.abs(rise_rad) < Math.PI / 2,
                            "rise",
                            () -> "The stem's rise of " + Objections.shownDegrees(rise_rad)
                                    + " is not between -90° and 90°.");
        }

        double above_mm() {
            return upperStack_mm + spacers_mm + stemHeight_mm / 2 + stem_mm * Math.sin(rise_rad);
        }

        double ahead_mm() {
            return stem_mm * Math.cos(rise_rad);
        }
    }

    /**
     * Where parts bring the bar beside where it was wanted.
     *
     * @param bar its middle by the parts
     * @param saddleToBar_mm from the saddle's tip to it
     * @param saddleOverBar_mm the saddle above it
     * @param spacers_mm that would bring it as high as wanted, below 0 where the stem stands too high without any
     */
    public record ByParts(Point bar, double saddleToBar_mm, double saddleOverBar_mm, double spacers_mm) {}

    /** Where these parts bring the bar; without an answer where a size of them cannot be. */
    public Answer<ByParts> by(FrameGeometry frame, Parts parts) {
        return parts.check().orElse(() -> {
            Point bar = frame.headTubeTop()
                    .minus(frame.down().times(parts.above_mm()))
                    .plus(ahead(frame).times(parts.ahead_mm()));
            return Answer.of(new ByParts(
                    bar,
                    bar.distance_mm(saddleTip),
                    saddleTip.y_mm() - bar.y_mm(),
                    parts.spacers_mm() + above_mm - parts.above_mm()));
        });
    }

    private static Point tip(FrameGeometry frame, FitSheet sheet) {
        return new Point(-sheet.saddleSetback_mm(), SaddleFit.level_mm(frame, sheet.saddleHeight_mm()));
    }

    private static Point ahead(FrameGeometry frame) {
        return new Point(-frame.down().y_mm(), frame.down().x_mm());
    }
}
