package org.trammel.calc.drawing;

/**
 * A straight line that was drawn, for what comes after it to keep clear of.
 *
 * @param kind what it is
 */
record Stretch(At from, At to, Kind kind) {

    /** Sine of the greatest angle between lines that are taken for parallel. */
    private static final double PARALLEL = 0.12;

    /** What is crossed by a text, and how much that matters. */
    enum Kind {
        OUTLINE,
        DIMENSION,
        THIN
    }

    boolean crosses(Stretch other) {
        At one = to.minus(from);
        At two = other.to.minus(other.from);
        double turn = one.cross(two);
        if (Math.abs(turn) < 1e-9) {
            return false;
        }
        At between = other.from.minus(from);
        double along = between.cross(two) / turn;
        double beside = between.cross(one) / turn;
        return along > 0 && along < 1 && beside > 0 && beside < 1;
    }

    /** Whether it runs beside another one, nearer than so much, over a part of its length. */
    boolean runsBeside(Stretch other, double nearer_mm) {
        At run = to.minus(from);
        At otherRun = other.to.minus(other.from);
        double squares = run.dot(run) * otherRun.dot(otherRun);
        double turn = run.cross(otherRun);
        if (squares < 1e-36 || turn * turn > PARALLEL * PARALLEL * squares) {
            return false;
        }
        double length = run.length();
        At along = run.unit();
        double one = other.from.minus(from).dot(along);
        double two = other.to.minus(from).dot(along);
        return Math.min(one, two) < length - 0.5
                && Math.max(one, two) > 0.5
                && Math.abs(other.from.minus(from).cross(along)) < nearer_mm;
    }
}
