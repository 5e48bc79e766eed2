package org.trammel.calc.geometry;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.trammel.calc.units.Answer;

/** Frames nobody drew: every number by itself within what upright bicycles have, and a little beyond; of a fixed seed. */
public final class RandomFrames {

    private RandomFrames() {}

    static Layout layout(Random random) {
        double front = between(random, 250, 390);
        boolean mixed = random.nextInt(4) == 0;
        return new Layout(
                Math.toRadians(between(random, 58, 78)),
                Math.toRadians(between(random, 62, 82)),
                between(random, 320, 560),
                between(random, 75, 260),
                random.nextInt(5) == 0 ? 0 : between(random, 0, 25),
                between(random, 340, 610),
                between(random, -20, 70),
                between(random, -40, 90),
                between(random, 380, 520),
                between(random, 250, 680),
                random.nextInt(3) == 0 ? between(random, -20, 45) : 0,
                front,
                mixed ? between(random, 250, 390) : front);
    }

    static FrameGeometry frame(Random random) {
        return ((Answer.Determined<FrameGeometry>) FrameGeometry.of(layout(random))).value();
    }

    static TubeAxes axes(Random random) {
        FrameGeometry frame = frame(random);
        Layout layout = frame.layout();
        JointPlaces places = new JointPlaces(
                layout.headTube_mm() * between(random, 0, 0.4),
                layout.headTube_mm() * between(random, 0, 0.4),
                layout.seatTube_mm() * between(random, 0, 0.3));
        return ((Answer.Determined<TubeAxes>) TubeAxes.of(frame, places)).value();
    }

    static List<FrameGeometry> frames(int count, long seed) {
        Random random = new Random(seed);
        return Stream.generate(() -> frame(random)).limit(count).toList();
    }

    /** So many frames with the places of their tubes. */
    public static List<TubeAxes> axes(int count, long seed) {
        Random random = new Random(seed);
        return Stream.generate(() -> axes(random)).limit(count).toList();
    }

    static double between(Random random, double from, double to) {
        return from + (to - from) * random.nextDouble();
    }
}
