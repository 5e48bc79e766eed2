package org.trammel.calc.metrology;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Where everything stands on the drawn tolerance scale, as shares of its length: 0 at the left end, 1 at the right.
 *
 * <p>The axis reaches beyond the outer bounds by a third of the distance between them, and by the whole distance where a
 * side is open. A reading beyond the axis stands at its end and says
 * so; it never shrinks the scale, because one slip of the pen would make all other lines fall together.
 *
 * @param lowerLimit left tick, if that side is not open
 * @param upperLimit right tick, if that side is not open
 * @param nominal the nominal, if there is one on the axis
 * @param conforming the field of conforming values
 * @param lowerBand hatched ± g about the lower limit, if there is one
 * @param upperBand hatched ± g about the upper limit, if there is one
 * @param point the reading, if there is one
 */
public record ToleranceScale(
        Optional<Double> lowerLimit,
        Optional<Double> upperLimit,
        Optional<Double> nominal,
        Optional<Field> conforming,
        Optional<Field> lowerBand,
        Optional<Field> upperBand,
        Optional<Point> point) {

    private static final double MARGIN = 1.0 / 3;

    /** A stretch of the axis. */
    public record Field(double from, double to) {}

    /**
     * The reading on the axis.
     *
     * @param at its place, clamped to the axis
     * @param beyond −1 if it lies off the left end, 1 off the right, 0 on the axis
     */
    public record Point(double at, int beyond) {}

    /**
     * Lays out a scale.
     *
     * @param guardBand g, zero under the plain rule
     * @param value the reading, or null before one is taken
     */
    public static ToleranceScale of(
            Limits limits, @Nullable BigDecimal nominal, BigDecimal guardBand, @Nullable BigDecimal value) {
        Axis axis = Axis.of(limits, nominal, guardBand.doubleValue());
        double g = guardBand.doubleValue();
        Optional<Double> lower = Optional.ofNullable(limits.lower()).map(BigDecimal::doubleValue);
        Optional<Double> upper = Optional.ofNullable(limits.upper()).map(BigDecimal::doubleValue);
        double from = lower.map(l -> axis.place(l + g)).orElse(0.0);
        double to = upper.map(l -> axis.place(l - g)).orElse(1.0);
        return new ToleranceScale(
                lower.map(axis::place),
                upper.map(axis::place),
                Optional.ofNullable(nominal)
                        .map(n -> axis.place(n.doubleValue()))
                        .filter(p -> p >= 0 && p <= 1),
                from <= to ? Optional.of(new Field(from, to)) : Optional.empty(),
                g > 0 ? lower.map(l -> axis.field(l - g, l + g)) : Optional.empty(),
                g > 0 ? upper.map(l -> axis.field(l - g, l + g)) : Optional.empty(),
                Optional.ofNullable(value).map(v -> axis.point(v.doubleValue())));
    }

    private record Axis(double from, double length) {

        static Axis of(Limits limits, @Nullable BigDecimal nominal, double g) {
            double[] lines = Stream.of(limits.lower(), limits.upper(), nominal)
                    .flatMap(Stream::ofNullable)
                    .mapToDouble(BigDecimal::doubleValue)
                    .flatMap(line -> DoubleStream.of(line - g, line + g))
                    .sorted()
                    .toArray();
            double least = lines[0];
            double greatest = lines[lines.length - 1];
            double reach = greatest - least > 2 * g ? greatest - least : ofOneLine(lines[0] + g, g);
            boolean openBelow = limits.lower() == null;
            boolean openAbove = limits.upper() == null;
            double from = least - (openBelow ? reach : reach * MARGIN);
            double to = greatest + (openAbove ? reach : reach * MARGIN);
            return new Axis(from, to - from);
        }

        /** A single limit says nothing about how far values spread; its own size is the best guess. */
        private static double ofOneLine(double line, double g) {
            return Math.max(line == 0 ? 1 : Math.abs(line), 3 * g);
        }

        double place(double value) {
            return (value - from) / length;
        }

        Field field(double left, double right) {
            return new Field(place(left), place(right));
        }

        Point point(double value) {
            double at = place(value);
            if (at < 0) {
                return new Point(0, -1);
            }
            return at > 1 ? new Point(1, 1) : new Point(at, 0);
        }
    }
}
