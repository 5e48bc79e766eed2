package org.trammel.calc.geometry;

/** A value for each dimension while a frame is being closed, and the length from the head tube's top to the axle. */
final class Figures {

    /** The place of the length along the steering axis, beyond those of the dimensions. */
    static final int ALONG = Dimension.count();

    private final double[] values;

    Figures() {
        this(new double[ALONG + 1]);
    }

    private Figures(double[] values) {
        this.values = values;
    }

    Figures copy() {
        return new Figures(values.clone());
    }

    double at(int place) {
        return values[place];
    }

    void put(int place, double value) {
        values[place] = value;
    }

    double of(Dimension dimension) {
        return values[dimension.ordinal()];
    }

    double along() {
        return values[ALONG];
    }

    double square(Dimension dimension) {
        double value = of(dimension);
        return value * value;
    }

    double sin(Dimension angle) {
        return Math.sin(of(angle));
    }

    double cos(Dimension angle) {
        return Math.cos(of(angle));
    }

    /** Whether a place can have its value at all. */
    boolean allowsAt(int place) {
        return place == ALONG
                ? Math.abs(along()) <= Dimension.LONGEST_mm
                : Dimension.at(place).allows(values[place]);
    }

    Layout layout() {
        return new Layout(
                of(Dimension.HEAD_ANGLE),
                of(Dimension.SEAT_ANGLE),
                of(Dimension.REACH),
                of(Dimension.HEAD_TUBE),
                of(Dimension.LOWER_STACK),
                of(Dimension.FORK_LENGTH),
                of(Dimension.FORK_OFFSET),
                of(Dimension.SHELL_DROP),
                of(Dimension.CHAINSTAY),
                of(Dimension.SEAT_TUBE),
                of(Dimension.SEAT_TUBE_OFFSET),
                of(Dimension.FRONT_WHEEL_RADIUS),
                of(Dimension.REAR_WHEEL_RADIUS));
    }
}
