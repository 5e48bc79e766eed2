package org.trammel.calc.drawing;

import java.util.List;

/**
 * The room that a text takes: a rectangle, perhaps on a slant.
 *
 * @param centre its middle
 * @param along the direction of the text, of length 1
 * @param halfLength along the text
 * @param halfHeight across
 */
record Box(At centre, At along, double halfLength, double halfHeight) {

    static Box between(double left, double bottom, double right, double top) {
        return new Box(
                new At((left + right) / 2, (bottom + top) / 2), new At(1, 0), (right - left) / 2, (top - bottom) / 2);
    }

    Box wider(double by) {
        return new Box(centre, along, halfLength + by, halfHeight + by);
    }

    List<At> corners() {
        At across = along.left();
        return List.of(
                centre.plus(along, halfLength).plus(across, halfHeight),
                centre.plus(along, -halfLength).plus(across, halfHeight),
                centre.plus(along, -halfLength).plus(across, -halfHeight),
                centre.plus(along, halfLength).plus(across, -halfHeight));
    }

    boolean within(Box outer) {
        return corners().stream()
                .map(corner -> corner.minus(outer.centre))
                .allMatch(corner -> Math.abs(corner.dot(outer.along)) <= outer.halfLength
                        && Math.abs(corner.dot(outer.along.left())) <= outer.halfHeight);
    }

    /** Two rectangles lie apart where a side of one of them parts them. */
    boolean meets(Box other) {
        double near = reach() + other.reach();
        return Math.abs(other.centre.x() - centre.x()) <= near
                && Math.abs(other.centre.y() - centre.y()) <= near
                && !apart(other)
                && !other.apart(this);
    }

    /** No corner lies farther from the middle, however the text is turned. */
    private double reach() {
        return halfLength + halfHeight;
    }

    private boolean apart(Box other) {
        return beyond(other, along, halfLength) || beyond(other, along.left(), halfHeight);
    }

    private boolean beyond(Box other, At axis, double half) {
        double distance = Math.abs(other.centre.minus(centre).dot(axis));
        double reach = other.halfLength * Math.abs(other.along.dot(axis))
                + other.halfHeight * Math.abs(other.along.left().dot(axis));
        return distance > half + reach;
    }

    boolean meets(Stretch line) {
        if (beside(line.from().x(), line.to().x(), centre.x())
                || beside(line.from().y(), line.to().y(), centre.y())) {
            return false;
        }
        At from = seen(line.from());
        At to = seen(line.to());
        double enters = 0;
        double leaves = 1;
        double[] starts = {from.x(), from.y()};
        double[] runs = {to.x() - from.x(), to.y() - from.y()};
        double[] halves = {halfLength, halfHeight};
        for (int i = 0; i < 2; i++) {
            if (Math.abs(runs[i]) < 1e-12) {
                if (Math.abs(starts[i]) > halves[i]) {
                    return false;
                }
            } else {
                double one = (-halves[i] - starts[i]) / runs[i];
                double two = (halves[i] - starts[i]) / runs[i];
                enters = Math.max(enters, Math.min(one, two));
                leaves = Math.min(leaves, Math.max(one, two));
            }
        }
        return enters <= leaves;
    }

    /** Most lines of a sheet lie wholly to one side of a text, which is known without turning them into its direction. */
    private boolean beside(double from, double to, double middle) {
        return Math.max(from, to) < middle - reach() || Math.min(from, to) > middle + reach();
    }

    private At seen(At place) {
        At from = place.minus(centre);
        return new At(from.dot(along), from.dot(along.left()));
    }
}
