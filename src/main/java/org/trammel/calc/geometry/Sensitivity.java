package org.trammel.calc.geometry;

import org.trammel.calc.units.Answer;

/**
 * What becomes of a frame when one number of its layout changes and the others, reach among them, are held. Differences
 * of two closed frames, not slopes: exact for the step.
 *
 * @param changed the number
 * @param step by how much, in millimetres or radians
 * @param stack_mm change of the stack
 * @param reach_mm change of the reach; 0 unless reach is what changes
 * @param trail_mm change of the trail
 * @param wheelbase_mm change of the wheelbase
 * @param frontCentre_mm change of the front centre
 */
public record Sensitivity(
        Dimension changed,
        double step,
        double stack_mm,
        double reach_mm,
        double trail_mm,
        double wheelbase_mm,
        double frontCentre_mm) {

    /**
     * Computes it.
     *
     * @param layout the frame as it is
     * @param changed one of the thirteen numbers of a layout
     * @param step in millimetres or radians
     */
    public static Answer<Sensitivity> of(Layout layout, Dimension changed, double step) {
        if (changed.compareTo(Dimension.STACK) >= 0) {
            return Answer.none(
                    changed.input(), "The " + changed.words() + " follows from others and is not changed by itself.");
        }
        return FrameGeometry.of(layout).then(before -> {
            Figures figures = new Figures();
            for (int place = 0; place < Dimension.STACK.ordinal(); place++) {
                figures.put(place, Dimension.at(place).of(before));
            }
            figures.put(changed.ordinal(), figures.of(changed) + step);
            if (!figures.allowsAt(changed.ordinal())) {
                return Answer.none(
                        changed.input(),
                        "The " + changed.words() + " would become " + changed.written(figures.of(changed))
                                + ", which cannot be.");
            }
            return FrameGeometry.of(figures.layout()).then(after -> Answer.of(between(changed, step, before, after)));
        });
    }

    private static Sensitivity between(Dimension changed, double step, FrameGeometry before, FrameGeometry after) {
        return new Sensitivity(
                changed,
                step,
                after.stack_mm() - before.stack_mm(),
                after.layout().reach_mm() - before.layout().reach_mm(),
                after.trail_mm() - before.trail_mm(),
                after.wheelbase_mm() - before.wheelbase_mm(),
                after.frontCentre_mm() - before.frontCentre_mm());
    }
}
