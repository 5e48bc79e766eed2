package org.trammel.calc.metrology;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How the raw values of a characteristic become the one that is judged. */
public enum Reduction {
    /** The one value there is. */
    SINGLE,
    /** Arithmetic mean. */
    MEAN,
    /** The value with the least margin to the limits, the first of equals. */
    WORST,
    /** Greatest less least, for run-out, parallelism and out-of-round. */
    SPAN,
    GREATEST,
    LEAST,
    /**
     * The value that all but a fifth of the readings reach. It reaches a lower limit exactly if at most a fifth of the
     * readings, counted down to whole ones, lie below it: the 80/20 rule of film thickness in its common form.
     */
    ALL_BUT_FIFTH,
    /** The same where fewer than a fifth of the readings may lie below: the strict form. */
    ALL_BUT_UNDER_FIFTH,
    /**
     * Twice the distance of an axis from its datum axis, read across and along: a coaxiality is the diameter of the cylinder
     * in which the axis lies (ISO 1101:2017, coaxiality).
     */
    COAXIAL;

    private static final int FIFTH = 5;

    private static final BigDecimal ROOT_OF_TWO = new BigDecimal("1.41421356");

    /** Digits of the uncertainty of a span; two would be enough to state it, and it is never rounded down. */
    private static final MathContext STATED = new MathContext(3, RoundingMode.UP);

    /**
     * Decimals of a mean. A mean that is not on a limit lies at least 1/n of the last stored digit off it, so for fewer
     * than a million values of six decimals or less this rounding never changes a verdict.
     */
    static final int MEAN_DECIMALS = 12;

    private static final int DIAMETER_DECIMALS = 6;

    /** The reduced value, or why there is none. */
    public sealed interface Result {

        record Reduced(BigDecimal value) implements Result {}

        record NotReducible(String reason) implements Result {}
    }

    /**
     * Reduces raw values.
     *
     * @param raw values in the order of their sample points, all in one unit
     * @param limits limits of the characteristic, which say what is worst
     */
    public Result of(List<BigDecimal> raw, Limits limits) {
        if (raw.isEmpty()) {
            return new Result.NotReducible("There is no reading.");
        }
        if (this == SINGLE && raw.size() > 1) {
            return new Result.NotReducible("One reading is asked for and " + raw.size() + " were given.");
        }
        if (this == SPAN && raw.size() == 1) {
            return new Result.NotReducible("A span needs two readings or more.");
        }
        if (this == COAXIAL && raw.size() != 2) {
            return new Result.NotReducible("A coaxiality needs two readings, square to each other.");
        }
        return new Result.Reduced(
                switch (this) {
                    case SINGLE -> raw.get(0);
                    case MEAN -> mean(raw);
                    case WORST -> Collections.min(raw, Comparator.comparing(limits::margin));
                    case SPAN -> Collections.max(raw).subtract(Collections.min(raw));
                    case GREATEST -> Collections.max(raw);
                    case LEAST -> Collections.min(raw);
                    case ALL_BUT_FIFTH -> fromLeast(raw, raw.size() / FIFTH);
                    case ALL_BUT_UNDER_FIFTH -> fromLeast(raw, (raw.size() - 1) / FIFTH);
                    case COAXIAL -> diameter(raw.get(0), raw.get(1));
                });
    }

    /**
     * Reduces raw values of which the limits ask the size ({@link Limits#ofSize}): the one that lies farthest off counts,
     * to whichever side it lies. A mean is of the values with their signs, and then of its size; a span and a diameter have
     * no sign.
     */
    public Result ofSizes(List<BigDecimal> raw, Limits limits) {
        if (this == SPAN || this == COAXIAL) {
            return of(raw, limits);
        }
        if (this == MEAN) {
            return of(raw, limits) instanceof Result.Reduced mean
                    ? new Result.Reduced(mean.value().abs())
                    : of(raw, limits);
        }
        return of(raw.stream().map(BigDecimal::abs).toList(), limits);
    }

    /**
     * Standard uncertainty of the reduced value. A span is the difference of two readings and carries both of theirs,
     * √2 u: what the two have in common would make it less, and is not known. A diameter is twice a distance, whose
     * uncertainty is that of a reading in the direction it lies: 2 u. For all others it is that of one reading,
     * a mean included, since its readings may share all of it.
     *
     * <p>Source: JCGM 100:2008, 5.1.2 (uncorrelated input quantities), 7.2.6 (rounding up).
     *
     * @param u standard uncertainty of one reading, in its unit; null for an aid without one
     */
    public @Nullable BigDecimal uncertainty(@Nullable BigDecimal u) {
        if (u == null) {
            return null;
        }
        return switch (this) {
            case SPAN -> u.multiply(ROOT_OF_TWO).round(STATED);
            case COAXIAL -> u.add(u);
            default -> u;
        };
    }

    /** Rounded up, so that no axis outside the cylinder is taken to lie on it. */
    private static BigDecimal diameter(BigDecimal across, BigDecimal along) {
        BigDecimal square = across.pow(2).add(along.pow(2));
        return square.sqrt(MathContext.DECIMAL128)
                .multiply(BigDecimal.valueOf(2))
                .setScale(DIAMETER_DECIMALS, RoundingMode.CEILING);
    }

    /** The value that is left as the least once so many of the least are set aside. */
    private static BigDecimal fromLeast(List<BigDecimal> raw, int aside) {
        return raw.stream().sorted().skip(aside).findFirst().orElseThrow();
    }

    private static BigDecimal mean(List<BigDecimal> raw) {
        BigDecimal sum = raw.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal mean = sum.divide(BigDecimal.valueOf(raw.size()), MEAN_DECIMALS, RoundingMode.HALF_EVEN);
        int kept = Math.max(sum.scale(), mean.stripTrailingZeros().scale());
        return mean.setScale(Math.min(MEAN_DECIMALS, kept), RoundingMode.UNNECESSARY);
    }
}
