package org.trammel.calc.welding;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * One line of a table of limits.
 *
 * <pre>
 * limit = offset + factor · size, at most the cap;   walls above {@code over} and up to {@code upTo}
 * </pre>
 *
 * @param of which size of the weld the factor is of
 * @param offset in mm, or mm² where the imperfection is an area
 * @param factor 0 where the limit is the offset alone; both 0 where nothing is allowed
 * @param most null where there is no cap
 * @param shortOnly whether only short ones are allowed, as the table's standard says what is short
 * @param over walls above this, mm; null from the thinnest
 * @param upTo walls up to this one, mm; null without an end
 */
public record WeldLimit(
        String level,
        Imperfection imperfection,
        @Nullable BigDecimal over,
        @Nullable BigDecimal upTo,
        BigDecimal offset,
        BigDecimal factor,
        Size of,
        @Nullable BigDecimal most,
        boolean shortOnly) {

    /** A size of the weld. */
    public enum Size {
        WALL("t", "wall"),
        WIDTH("b", "width of the weld"),
        THROAT("a", "throat of the fillet");

        private final String sign;
        private final String word;

        Size(String sign, String word) {
            this.sign = sign;
            this.word = word;
        }

        public String sign() {
            return sign;
        }

        public String word() {
            return word;
        }
    }

    /** Whether it speaks of walls of this thickness. */
    public boolean covers(BigDecimal wall_mm) {
        return (over == null || wall_mm.compareTo(over) > 0) && (upTo == null || wall_mm.compareTo(upTo) <= 0);
    }

    public boolean allowsNone() {
        return offset.signum() == 0 && factor.signum() == 0;
    }

    /** The limit for a weld of these sizes, in the unit of the imperfection; exact. */
    public Answer<BigDecimal> at(WeldSizes sizes) {
        if (!covers(sizes.wall())) {
            return Answer.none("wall", "The line does not speak of walls of " + said(sizes.wall()) + " mm.");
        }
        if (factor.signum() == 0) {
            return Answer.of(capped(offset));
        }
        BigDecimal size = size(sizes);
        return size == null
                ? Answer.none(of.name().toLowerCase(java.util.Locale.ROOT), "The " + of.word() + " was not measured.")
                : Answer.of(capped(offset.add(factor.multiply(size))));
    }

    private @Nullable BigDecimal size(WeldSizes sizes) {
        return switch (of) {
            case WALL -> sizes.wall();
            case WIDTH -> sizes.width();
            case THROAT -> sizes.throat();
        };
    }

    private BigDecimal capped(BigDecimal limit) {
        return most != null && limit.compareTo(most) > 0 ? most : limit;
    }

    /** The line as a sheet prints it: 0.2 t, at most 1 mm. */
    public String words() {
        if (allowsNone()) {
            return "none";
        }
        String sum = factor.signum() == 0
                ? said(offset)
                : (offset.signum() == 0 ? "" : said(offset) + " + ") + said(factor) + " " + of.sign();
        return (shortOnly ? "short ones, " : "") + sum + (most == null ? "" : ", at most " + said(most)) + " "
                + imperfection.unit();
    }

    static String said(BigDecimal figure) {
        return figure.signum() == 0 ? "0" : figure.stripTrailingZeros().toPlainString();
    }
}
