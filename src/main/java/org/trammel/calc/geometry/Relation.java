package org.trammel.calc.geometry;

import static org.trammel.calc.geometry.Dimension.CHAINSTAY;
import static org.trammel.calc.geometry.Dimension.EFFECTIVE_TOP_TUBE;
import static org.trammel.calc.geometry.Dimension.FLOP;
import static org.trammel.calc.geometry.Dimension.FORK_LENGTH;
import static org.trammel.calc.geometry.Dimension.FORK_OFFSET;
import static org.trammel.calc.geometry.Dimension.FORK_STRAIGHT;
import static org.trammel.calc.geometry.Dimension.FRONT_CENTRE;
import static org.trammel.calc.geometry.Dimension.FRONT_CENTRE_LEVEL;
import static org.trammel.calc.geometry.Dimension.FRONT_WHEEL_RADIUS;
import static org.trammel.calc.geometry.Dimension.HEAD_ANGLE;
import static org.trammel.calc.geometry.Dimension.HEAD_TUBE;
import static org.trammel.calc.geometry.Dimension.LOWER_STACK;
import static org.trammel.calc.geometry.Dimension.MECHANICAL_TRAIL;
import static org.trammel.calc.geometry.Dimension.REACH;
import static org.trammel.calc.geometry.Dimension.REAR_CENTRE_LEVEL;
import static org.trammel.calc.geometry.Dimension.REAR_SHELL_DROP;
import static org.trammel.calc.geometry.Dimension.REAR_WHEEL_RADIUS;
import static org.trammel.calc.geometry.Dimension.SEAT_ANGLE;
import static org.trammel.calc.geometry.Dimension.SEAT_TUBE_OFFSET;
import static org.trammel.calc.geometry.Dimension.SHELL_DROP;
import static org.trammel.calc.geometry.Dimension.SHELL_HEIGHT;
import static org.trammel.calc.geometry.Dimension.STACK;
import static org.trammel.calc.geometry.Dimension.TRAIL;
import static org.trammel.calc.geometry.Dimension.WHEELBASE;

/**
 * The equations between the dimensions, each as a difference that is 0. Every one is linear, a right triangle, or
 * a sin x + b cos x + c in whichever of its dimensions is sought, so that each is solved in closed form. The
 * length along the steering axis from the top of the head tube to the axle is a figure between the first three.
 */
enum Relation {
    STEERING(
            Shape.LINEAR,
            v -> v.of(HEAD_TUBE) + v.of(LOWER_STACK) + v.of(FORK_LENGTH) - v.along(),
            HEAD_TUBE,
            LOWER_STACK,
            FORK_LENGTH),
    HEIGHTS(
            Shape.LINEAR,
            v -> v.of(STACK) - v.of(SHELL_DROP) - v.along() * v.sin(HEAD_ANGLE) + v.of(FORK_OFFSET) * v.cos(HEAD_ANGLE),
            STACK,
            SHELL_DROP,
            FORK_OFFSET,
            HEAD_ANGLE),
    LENGTHS(
            Shape.LINEAR,
            v -> v.of(FRONT_CENTRE_LEVEL)
                    - v.of(REACH)
                    - v.along() * v.cos(HEAD_ANGLE)
                    - v.of(FORK_OFFSET) * v.sin(HEAD_ANGLE),
            FRONT_CENTRE_LEVEL,
            REACH,
            FORK_OFFSET,
            HEAD_ANGLE),
    FRONT_TRIANGLE(
            Shape.SQUARES,
            v -> v.square(FRONT_CENTRE_LEVEL) + v.square(SHELL_DROP) - v.square(FRONT_CENTRE),
            FRONT_CENTRE,
            FRONT_CENTRE_LEVEL,
            SHELL_DROP),
    BASE(
            Shape.LINEAR,
            v -> v.of(FRONT_CENTRE_LEVEL) + v.of(REAR_CENTRE_LEVEL) - v.of(WHEELBASE),
            WHEELBASE,
            FRONT_CENTRE_LEVEL,
            REAR_CENTRE_LEVEL),
    REAR_TRIANGLE(
            Shape.SQUARES,
            v -> v.square(REAR_CENTRE_LEVEL) + v.square(REAR_SHELL_DROP) - v.square(CHAINSTAY),
            CHAINSTAY,
            REAR_CENTRE_LEVEL,
            REAR_SHELL_DROP),
    REAR_DROP(
            Shape.LINEAR,
            v -> v.of(REAR_WHEEL_RADIUS) - v.of(SHELL_HEIGHT) - v.of(REAR_SHELL_DROP),
            REAR_SHELL_DROP,
            REAR_WHEEL_RADIUS,
            SHELL_HEIGHT),
    SHELL(
            Shape.LINEAR,
            v -> v.of(FRONT_WHEEL_RADIUS) - v.of(SHELL_DROP) - v.of(SHELL_HEIGHT),
            SHELL_HEIGHT,
            FRONT_WHEEL_RADIUS,
            SHELL_DROP),
    TRAIL_ON_GROUND(
            Shape.LINEAR,
            v -> v.of(FRONT_WHEEL_RADIUS) * v.cos(HEAD_ANGLE) - v.of(FORK_OFFSET) - v.of(TRAIL) * v.sin(HEAD_ANGLE),
            TRAIL,
            FRONT_WHEEL_RADIUS,
            FORK_OFFSET,
            HEAD_ANGLE),
    /** Where the steering axis meets the ground; follows from the ones above and stands in for the last of them. */
    STEERING_AXIS(
            Shape.LINEAR,
            v -> (v.of(STACK) + v.of(SHELL_HEIGHT)) * v.cos(HEAD_ANGLE)
                    - (v.of(FRONT_CENTRE_LEVEL) + v.of(TRAIL) - v.of(REACH)) * v.sin(HEAD_ANGLE),
            TRAIL,
            STACK,
            SHELL_HEIGHT,
            FRONT_CENTRE_LEVEL,
            REACH,
            HEAD_ANGLE),
    TRAIL_SQUARE(
            Shape.LINEAR,
            v -> v.of(TRAIL) * v.sin(HEAD_ANGLE) - v.of(MECHANICAL_TRAIL),
            MECHANICAL_TRAIL,
            TRAIL,
            HEAD_ANGLE),
    SINKING(
            Shape.LINEAR,
            v -> v.of(MECHANICAL_TRAIL) * v.cos(HEAD_ANGLE) - v.of(FLOP),
            FLOP,
            MECHANICAL_TRAIL,
            HEAD_ANGLE),
    FORK(
            Shape.SQUARES,
            v -> v.square(FORK_LENGTH) + v.square(FORK_OFFSET) - v.square(FORK_STRAIGHT),
            FORK_STRAIGHT,
            FORK_LENGTH,
            FORK_OFFSET),
    TOP_TUBE(
            Shape.LINEAR,
            v -> (v.of(REACH) - v.of(EFFECTIVE_TOP_TUBE)) * v.sin(SEAT_ANGLE)
                    - v.of(SEAT_TUBE_OFFSET)
                    + v.of(STACK) * v.cos(SEAT_ANGLE),
            EFFECTIVE_TOP_TUBE,
            REACH,
            STACK,
            SEAT_TUBE_OFFSET,
            SEAT_ANGLE);

    private enum Shape {
        LINEAR,
        SQUARES
    }

    private interface Difference {
        double of(Figures values);
    }

    private static final double FAR = 1024;
    private static final double ROUNDING = 1e-12;

    private final Shape shape;
    private final Difference difference;
    private final Dimension[] dimensions;
    private final int mask;

    Relation(Shape shape, Difference difference, Dimension... dimensions) {
        this.shape = shape;
        this.difference = difference;
        this.dimensions = dimensions;
        int places = 0;
        for (Dimension dimension : dimensions) {
            places |= 1 << dimension.ordinal();
        }
        this.mask = places;
    }

    /** The places it ties together, as bits. */
    int mask() {
        return this == STEERING || this == HEIGHTS || this == LENGTHS ? mask | 1 << Figures.ALONG : mask;
    }

    /** Its dimensions, the one that a frame is told by first. */
    Dimension[] dimensions() {
        return dimensions;
    }

    boolean isTriangle() {
        return shape == Shape.SQUARES;
    }

    /** How far the values are from fulfilling it, in millimetres. */
    double misfit_mm(Figures values) {
        double misfit = difference.of(values);
        return isTriangle() ? misfit / (2 * values.of(dimensions[0])) : misfit;
    }

    /** How many values of a place may fulfil it. */
    int branches(int place) {
        if (place == Figures.ALONG) {
            return 1;
        }
        Dimension.Kind kind = Dimension.at(place).kind();
        return kind == Dimension.Kind.ANGLE || isTriangle() && kind == Dimension.Kind.EITHER_SIGN ? 2 : 1;
    }

    /** The value of a place by the others, which it leaves alone; not a number where there is none. */
    double solve(int place, Figures values, int branch) {
        double kept = values.at(place);
        double found;
        if (place != Figures.ALONG && Dimension.at(place).isAngle()) {
            found = angle(place, values, branch);
        } else {
            values.put(place, 0);
            double at0 = difference.of(values);
            values.put(place, FAR);
            double atFar = difference.of(values);
            found = isTriangle() ? side(at0, atFar, branch) : -at0 * FAR / (atFar - at0);
        }
        values.put(place, kept);
        return found;
    }

    private static double side(double at0, double atFar, int branch) {
        double square = atFar > at0 ? -at0 : at0;
        double side = Math.sqrt(square > -ROUNDING * FAR * FAR ? Math.max(0, square) : square);
        return branch == 0 ? side : -side;
    }

    /** a sin x + b cos x + c = 0. */
    private double angle(int place, Figures values, int branch) {
        values.put(place, 0);
        double at0 = difference.of(values);
        values.put(place, Math.PI);
        double atHalfTurn = difference.of(values);
        values.put(place, Math.PI / 2);
        double c = (at0 + atHalfTurn) / 2;
        double b = (at0 - atHalfTurn) / 2;
        double a = difference.of(values) - c;
        double sine = -c / Math.hypot(a, b);
        if (Math.abs(sine) > 1 && Math.abs(sine) < 1 + ROUNDING) {
            sine = Math.signum(sine);
        }
        double turned = Math.asin(sine);
        double angle = (branch == 0 ? turned : Math.PI - turned) - Math.atan2(b, a);
        return Math.IEEEremainder(angle, 2 * Math.PI);
    }
}
