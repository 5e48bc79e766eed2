package org.trammel.calc.geometry;

import java.util.Set;
import org.trammel.calc.units.Answer;

/**
 * Which dimensions say something that others do not. Each is told by how it changes with the thirteen numbers of a
 * layout, at one frame without any round figure: what depends on others there does so on every frame.
 *
 * <p>Source: Gram and Schmidt's orthogonal rows; the changes are central differences. Singular frames, such as one of fork offset 0
 * whose straight fork length is given, show only when they are closed.
 */
final class Independence {

    private static final int NUMBERS = 13;

    /** Angles count per radian, lengths per so many millimetres, which makes the changes alike in size. */
    private static final double LENGTH_mm = 500;

    private static final double NOTHING = 1e-6;

    private static final double[] FRAME = {
        1.1537, 1.2941, 433.17, 113.71, 11.37, 517.93, 43.19, 57.43, 437.81, 441.23, 17.29, 367.39, 358.61
    };

    private static final double[][] CHANGES = changes();

    private final double[][] taken = new double[NUMBERS][];
    private int count;
    private int used;

    private Independence() {}

    /** Takes dimensions in their order, those that say something new. */
    static Independence of(Set<Dimension> dimensions) {
        Independence independence = new Independence();
        for (Dimension dimension : dimensions) {
            double[] rest = independence.rest(dimension);
            double length = length(rest);
            if (length > NOTHING) {
                for (int i = 0; i < NUMBERS; i++) {
                    rest[i] /= length;
                }
                independence.taken[independence.count++] = rest;
                independence.used |= 1 << dimension.ordinal();
            }
        }
        return independence;
    }

    /** The ones taken, as bits. */
    int used() {
        return used;
    }

    /** Whether they make a frame. */
    boolean isComplete() {
        return count == NUMBERS;
    }

    /** Whether a dimension would say something new. */
    boolean lacks(Dimension dimension) {
        return length(rest(dimension)) > NOTHING;
    }

    /** What a dimension says beyond those taken. */
    private double[] rest(Dimension dimension) {
        double[] rest = CHANGES[dimension.ordinal()].clone();
        for (int row = 0; row < count; row++) {
            double share = 0;
            for (int i = 0; i < NUMBERS; i++) {
                share += rest[i] * taken[row][i];
            }
            for (int i = 0; i < NUMBERS; i++) {
                rest[i] -= share * taken[row][i];
            }
        }
        return rest;
    }

    private static double length(double[] row) {
        double square = 0;
        for (double entry : row) {
            square += entry * entry;
        }
        return Math.sqrt(square);
    }

    private static double[][] changes() {
        double[][] changes = new double[Dimension.count()][NUMBERS];
        for (int number = 0; number < NUMBERS; number++) {
            boolean angle = Dimension.at(number).isAngle();
            double step = angle ? 1e-5 : 0.01;
            FrameGeometry less = frame(number, -step);
            FrameGeometry more = frame(number, step);
            for (int place = 0; place < changes.length; place++) {
                Dimension dimension = Dimension.at(place);
                double change = (dimension.of(more) - dimension.of(less)) / (2 * step);
                changes[place][number] = angle ? change / LENGTH_mm : change;
            }
        }
        for (double[] row : changes) {
            double length = length(row);
            for (int i = 0; i < NUMBERS; i++) {
                row[i] /= length;
            }
        }
        return changes;
    }

    private static FrameGeometry frame(int number, double change) {
        Figures figures = new Figures();
        for (int i = 0; i < NUMBERS; i++) {
            figures.put(i, FRAME[i] + (i == number ? change : 0));
        }
        return ((Answer.Determined<FrameGeometry>) FrameGeometry.of(figures.layout())).value();
    }
}
