package org.trammel.calc.geometry;

import org.jspecify.annotations.Nullable;

/**
 * What is cut off a butted tube, and how much of each butt stays behind its weld.
 *
 * <pre>
 * over = length as bought − blank = cut off one + cut off two
 * left = butt − cut off − (longest setback − setback of the blank's end)
 * </pre>
 *
 * Of two mitred ends both lose so much that as much is left on either, as far as one can; of one, the other loses all.
 * Common practice.
 *
 * @param cutOffOne_mm from the end one as bought, to the blank
 * @param cutOffTwo_mm from the end two
 * @param leftOne_mm butt beyond the deepest point of the cut at end one; below 0 the cut is past the butt
 * @param leftTwo_mm the same at end two
 */
public record ButtFit(double cutOffOne_mm, double cutOffTwo_mm, double leftOne_mm, double leftTwo_mm) {

    /**
     * Divides what is over.
     *
     * @param over_mm 0 or more
     * @param lostOne_mm from the blank's end to the deepest point of the cut, or null where end one is not welded
     * @param lostTwo_mm the same at end two
     */
    static ButtFit of(
            WallProfile.Butted tube, double over_mm, @Nullable Double lostOne_mm, @Nullable Double lostTwo_mm) {
        double one = tube.endOne().length_mm() - (lostOne_mm == null ? 0 : lostOne_mm);
        double two = tube.endTwo().length_mm() - (lostTwo_mm == null ? 0 : lostTwo_mm);
        double cutOffOne;
        if (lostOne_mm != null && lostTwo_mm == null) {
            cutOffOne = 0;
        } else if (lostOne_mm == null && lostTwo_mm != null) {
            cutOffOne = over_mm;
        } else {
            cutOffOne = Math.max(0, Math.min(over_mm, (one - two + over_mm) / 2));
        }
        double cutOffTwo = over_mm - cutOffOne;
        return new ButtFit(cutOffOne, cutOffTwo, one - cutOffOne, two - cutOffTwo);
    }
}
