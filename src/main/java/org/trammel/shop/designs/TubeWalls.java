package org.trammel.shop.designs;

import java.util.stream.Stream;
import org.trammel.calc.geometry.FrameTube;

/**
 * The inputs that tell the outside and the wall of a tube. A plain tube has the first two; of a butted one the wall is
 * that of the butt at its first end, and at its second end too if no other is given.
 */
record TubeWalls(
        GeometryInput outside,
        GeometryInput wall,
        GeometryInput length,
        GeometryInput buttOne,
        GeometryInput middle,
        GeometryInput buttTwo,
        GeometryInput wallTwo) {

    static TubeWalls of(FrameTube tube) {
        return switch (tube) {
            case DOWN_TUBE -> of(tube, "HEAD", "SHELL");
            case TOP_TUBE -> of(tube, "HEAD", "SEAT");
            case SEAT_TUBE -> of(tube, "SHELL", "TOP");
            case CHAINSTAY -> of(tube, "SHELL", "DROPOUT");
            case SEATSTAY -> of(tube, "SEAT", "DROPOUT");
        };
    }

    private static TubeWalls of(FrameTube tube, String one, String two) {
        return new TubeWalls(
                input(tube, "OUTSIDE"),
                input(tube, "WALL"),
                input(tube, "LENGTH"),
                input(tube, "BUTT_AT_" + one),
                input(tube, "MIDDLE_WALL"),
                input(tube, "BUTT_AT_" + two),
                input(tube, "WALL_AT_" + two));
    }

    private static GeometryInput input(FrameTube tube, String what) {
        return GeometryInput.valueOf(tube.name() + "_" + what);
    }

    /** Those that only a butted tube has. */
    Stream<GeometryInput> butting() {
        return Stream.of(length, buttOne, middle, buttTwo, wallTwo);
    }
}
