package org.trammel.calc.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.drawing.Stretch.Kind;

/**
 * Dimensions: extension lines that stop short of the part, closed arrowheads, the figure above its line and readable from
 * below or from the right. Of the places a dimension may have, the clearest is taken. Source: ISO 129-1, from memory.
 */
final class Dimensions {

    /** Of a figure, ISO 3098. */
    static final double LETTERS_MM = 3.5;

    private static final double ARROW_MM = 3;
    private static final double HALF_ARROW_MM = 0.5;
    private static final double GAP_MM = 1;
    private static final double BEYOND_MM = 1.8;
    private static final double ABOVE_MM = 1;
    private static final double TAIL_MM = 2.2 * ARROW_MM;
    private static final double[] SHARES = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8};

    private final Board board;

    Dimensions(Board board) {
        this.board = board;
    }

    /**
     * Where a dimension could stand.
     *
     * @param from where its line begins
     * @param to where its line ends
     * @param one the tip of an arrow
     * @param two that of the other
     * @param middle of the figure's base line
     */
    private record Place(
            double cost,
            List<Stretch> extensions,
            Stretch line,
            At one,
            At two,
            boolean pointingIn,
            At middle,
            double turn_rad) {}

    /** Along a line between two points, so far to its left; below 0 to its right. */
    void aside(At from, At to, String figure, double... offsets) {
        At along = to.minus(from).unit();
        double base = from.dot(along.left());
        linear(
                from,
                to,
                along,
                figure,
                DoubleStream.of(offsets).map(each -> base + each).toArray());
    }

    /** A level one, at the heights it may have. */
    void level(At from, At to, String figure, double... heights) {
        linear(from, to, new At(1, 0), figure, heights);
    }

    /** An upright one, at the places it may have from the left edge of the sheet. */
    void upright(At from, At to, String figure, double... places) {
        linear(
                from,
                to,
                new At(0, 1),
                figure,
                DoubleStream.of(places).map(each -> -each).toArray());
    }

    /** A length measured along a direction; its line may run so far to the left of that direction through the corner. */
    private void linear(At from, At to, At along, String figure, double[] across) {
        double width = board.lettering().width_mm(figure, LETTERS_MM, false);
        Place best = null;
        for (int i = 0; i < across.length; i++) {
            At base = new At(0, 0).plus(along.left(), across[i]);
            At one = base.plus(along, from.dot(along));
            At two = base.plus(along, to.dot(along));
            if (two.minus(one).length() > 0.05) {
                best = better(best, placed(from, to, one, two, width, 6.0 * i));
            }
        }
        if (best != null) {
            draw(best, figure);
        }
    }

    private static Place better(@Nullable Place one, Place other) {
        return one == null || other.cost() < one.cost() ? other : one;
    }

    private Place placed(At from, At to, At one, At two, double width, double worse) {
        double length = two.minus(one).length();
        At run = two.minus(one).unit();
        List<Stretch> extensions = new ArrayList<>();
        extend(extensions, from, one);
        extend(extensions, to, two);
        double fixed = worse;
        for (Stretch extension : extensions) {
            fixed += board.cost(extension, true);
        }
        boolean pointingIn = length < 3.4 * ARROW_MM;
        double tail = pointingIn ? TAIL_MM : 0;
        Place best = null;
        if (width < length - 0.6) {
            Stretch line = new Stretch(one.plus(run, -tail), two.plus(run, tail), Kind.DIMENSION);
            double lines = fixed + board.cost(line, false);
            for (int i = 0; i < SHARES.length; i++) {
                double slack = (length - width) / 2;
                double aside = Math.max(-slack, Math.min(slack, (SHARES[i] - 0.5) * length));
                At middle = one.plus(run, length / 2 + aside);
                best = better(best, with(lines + 4.0 * i, extensions, line, one, two, pointingIn, middle, width));
            }
            return best;
        }
        double beyond = TAIL_MM + width + 1;
        for (boolean behind : new boolean[] {false, true}) {
            Stretch line = new Stretch(
                    one.plus(run, behind ? -beyond : -TAIL_MM),
                    two.plus(run, behind ? TAIL_MM : beyond),
                    Kind.DIMENSION);
            double middle = behind ? -TAIL_MM - width / 2 : length + TAIL_MM + width / 2;
            best = better(
                    best,
                    with(
                            fixed + board.cost(line, false) + 5,
                            extensions,
                            line,
                            one,
                            two,
                            true,
                            one.plus(run, middle),
                            width));
        }
        return best;
    }

    private Place with(
            double cost,
            List<Stretch> extensions,
            Stretch line,
            At one,
            At two,
            boolean pointingIn,
            At onLine,
            double width) {
        At run = line.to().minus(line.from()).unit();
        double turn = readable(Math.atan2(run.y(), run.x()));
        At reading = At.towards(turn);
        At middle = onLine.plus(reading.left(), ABOVE_MM);
        return new Place(
                cost + board.cost(Board.box(middle, reading, width, LETTERS_MM)),
                extensions,
                line,
                one,
                two,
                pointingIn,
                middle,
                turn);
    }

    /** Upright from below, or from the right. */
    private static double readable(double turn_rad) {
        double turn = turn_rad;
        while (turn > Math.PI / 2 + 0.01) {
            turn -= Math.PI;
        }
        while (turn <= -Math.PI / 2 + 0.01) {
            turn += Math.PI;
        }
        return turn;
    }

    private static void extend(List<Stretch> extensions, At from, At to) {
        double length = to.minus(from).length();
        if (length > GAP_MM + 0.2) {
            At run = to.minus(from).unit();
            extensions.add(new Stretch(from.plus(run, GAP_MM), to.plus(run, BEYOND_MM), Kind.DIMENSION));
        }
    }

    private void draw(Place place, String figure) {
        place.extensions().forEach(each -> board.line(each.from(), each.to(), Pen.NARROW, Kind.DIMENSION));
        board.line(place.line().from(), place.line().to(), Pen.NARROW, Kind.DIMENSION);
        At run = place.two().minus(place.one()).unit();
        arrow(place.one(), place.pointingIn() ? run : run.times(-1));
        arrow(place.two(), place.pointingIn() ? run.times(-1) : run);
        board.figure(place.middle(), place.turn_rad(), figure, LETTERS_MM);
    }

    /** Its tip, and where it points. */
    void arrow(At tip, At points) {
        At back = tip.plus(points, -ARROW_MM);
        board.filled(List.of(tip, back.plus(points.left(), HALF_ARROW_MM), back.plus(points.left(), -HALF_ARROW_MM)));
    }

    /**
     * The angle from one direction anticlockwise to another about a point.
     *
     * @param level which of them has no line of its own and is drawn
     */
    void angle(At about, double from_rad, double to_rad, double level_rad, String figure, double... radii) {
        double width = board.lettering().width_mm(figure, LETTERS_MM, false);
        double least = Double.POSITIVE_INFINITY;
        double bestRadius = radii[0];
        At bestMiddle = about;
        for (int i = 0; i < radii.length; i++) {
            List<At> arc = arc(about, radii[i], from_rad, to_rad);
            double lines = 8.0 * i;
            for (int k = 1; k < arc.size(); k++) {
                lines += board.cost(new Stretch(arc.get(k - 1), arc.get(k), Kind.DIMENSION), false);
            }
            for (double share : SHARES) {
                At out = At.towards(from_rad + (to_rad - from_rad) * share);
                for (boolean within : new boolean[] {false, true}) {
                    At middle = beside(about, out, within ? radii[i] - 1 : radii[i] + 1, within ? -1 : 1, width);
                    double cost = lines
                            + Math.abs(share - 0.5) * 20
                            + (within ? 12 : 0)
                            + board.cost(Board.box(middle, new At(1, 0), width, LETTERS_MM));
                    if (cost < least) {
                        least = cost;
                        bestRadius = radii[i];
                        bestMiddle = middle;
                    }
                }
            }
        }
        At level = At.towards(level_rad);
        board.line(about, about.plus(level, bestRadius + 2 * ARROW_MM), Pen.NARROW, Kind.DIMENSION);
        board.path(arc(about, bestRadius, from_rad, to_rad), Pen.NARROW, Kind.DIMENSION);
        arrow(
                about.plus(At.towards(from_rad), bestRadius),
                At.towards(from_rad).left().times(-1));
        arrow(about.plus(At.towards(to_rad), bestRadius), At.towards(to_rad).left());
        board.figure(bestMiddle, 0, figure, LETTERS_MM);
    }

    private static List<At> arc(At about, double radius, double from_rad, double to_rad) {
        int steps = 24;
        List<At> arc = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            arc.add(about.plus(At.towards(from_rad + (to_rad - from_rad) * i / steps), radius));
        }
        return arc;
    }

    /** The middle of a level text's base line, clear of a circle on the side a direction points to. */
    private static At beside(At about, At out, double radius, int side, double width) {
        double half = Board.capitals(LETTERS_MM) / 2;
        double reach = Math.abs(out.x()) * width / 2 + Math.abs(out.y()) * half;
        At centre = about.plus(out, radius + side * reach);
        return new At(centre.x(), centre.y() - half);
    }

    /** A note with a leader to what it is about; its words stand on a line of their own. */
    void note(At about, String words, double... lengths) {
        note(about, words, LETTERS_MM, lengths);
    }

    /** The same in letters of another size. */
    void note(At about, String words, double size, double[] lengths) {
        double width = board.lettering().width_mm(words, size, false);
        double least = Double.POSITIVE_INFINITY;
        At knee = about;
        boolean ahead = true;
        for (int i = 0; i < lengths.length; i++) {
            for (double degrees : new double[] {50, 130, -50, -130, 30, 150, -30, -150, 75, 105, -75, -105}) {
                At tryKnee = about.plus(At.towards(Math.toRadians(degrees)), lengths[i]);
                boolean tryAhead = Math.abs(degrees) < 90;
                At end = tryKnee.plus(new At(tryAhead ? 1 : -1, 0), width);
                double cost = 5.0 * i
                        + board.cost(Board.box(above(tryKnee, end), new At(1, 0), width, size))
                        + board.cost(new Stretch(about, tryKnee, Kind.DIMENSION), true)
                        + board.cost(new Stretch(tryKnee, end, Kind.DIMENSION), false);
                if (cost < least) {
                    least = cost;
                    knee = tryKnee;
                    ahead = tryAhead;
                }
            }
        }
        At end = knee.plus(new At(ahead ? 1 : -1, 0), width);
        board.line(about, knee, Pen.NARROW, Kind.DIMENSION);
        board.line(knee, end, Pen.NARROW, Kind.DIMENSION);
        arrow(about, about.minus(knee).unit());
        board.figure(above(knee, end), 0, words, size);
    }

    private static At above(At one, At two) {
        return new At((one.x() + two.x()) / 2, one.y() + ABOVE_MM);
    }
}
