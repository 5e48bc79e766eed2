package org.trammel.calc.geometry;

/** The wall of a tube along its length. */
public sealed interface WallProfile {

    /**
     * The same all along, sold in bars.
     *
     * @param wall_mm thickness
     */
    record Plain(double wall_mm) implements WallProfile {

        @Override
        public double wallAtOne_mm() {
            return wall_mm;
        }

        @Override
        public double wallAtTwo_mm() {
            return wall_mm;
        }
    }

    /**
     * Thicker at the ends, sold in one length. The order of the butts says how the tube is turned in the frame.
     *
     * @param makersLength_mm as bought
     * @param endOne the butt at the tube's first end in the frame
     * @param middleWall_mm thickness between the butts
     * @param endTwo the butt at its second end
     */
    record Butted(double makersLength_mm, Butt endOne, double middleWall_mm, Butt endTwo) implements WallProfile {

        @Override
        public double wallAtOne_mm() {
            return endOne.wall_mm;
        }

        @Override
        public double wallAtTwo_mm() {
            return endTwo.wall_mm;
        }
    }

    /**
     * The thick end of a tube.
     *
     * @param wall_mm thickness
     * @param length_mm from the end as bought to where the wall begins to thin
     */
    record Butt(double wall_mm, double length_mm) {}

    /** Thickness where the first end is cut. */
    double wallAtOne_mm();

    /** Thickness where the second end is cut. */
    double wallAtTwo_mm();
}
