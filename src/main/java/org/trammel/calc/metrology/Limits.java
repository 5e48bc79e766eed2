package org.trammel.calc.metrology;

import java.math.BigDecimal;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.DecimalSign;

/**
 * Limits of a characteristic, in its unit. One side may be open, not both.
 *
 * @param lower lower limit, or null if that side is open
 * @param upper upper limit, or null if that side is open
 */
public record Limits(@Nullable BigDecimal lower, @Nullable BigDecimal upper) {

    public Limits {
        if (lower == null && upper == null) {
            throw new IllegalArgumentException("Limits need at least one side");
        }
        if (lower != null && upper != null && lower.compareTo(upper) > 0) {
            throw new IllegalArgumentException("The lower limit " + lower + " lies above the upper " + upper);
        }
    }

    public static Limits between(BigDecimal lower, BigDecimal upper) {
        return new Limits(lower, upper);
    }

    public static Limits atLeast(BigDecimal lower) {
        return new Limits(lower, null);
    }

    public static Limits atMost(BigDecimal upper) {
        return new Limits(null, upper);
    }

    /** Whether the value lies within, both limits included. */
    public boolean include(BigDecimal value) {
        return (lower == null || value.compareTo(lower) >= 0) && (upper == null || value.compareTo(upper) <= 0);
    }

    /**
     * Whether the size of a deviation is what they limit: from a nominal of zero, with an upper limit alone. Such a
     * characteristic asks how far something lies off, to whatever side, so a deviation to the other side is no less of one.
     */
    public boolean ofSize(@Nullable BigDecimal nominal) {
        return nominal != null && nominal.signum() == 0 && lower == null;
    }

    /** How far inside the nearer limit the value lies; negative outside. */
    BigDecimal margin(BigDecimal value) {
        BigDecimal below = lower == null ? null : value.subtract(lower);
        BigDecimal above = upper == null ? null : upper.subtract(value);
        if (below == null) {
            return Objects.requireNonNull(above);
        }
        return above == null ? below : below.min(above);
    }

    /**
     * The width of the zone they leave; of one limit twice its distance from the nominal, as if the other lay as far off.
     *
     * @return null where one side is open and no nominal, or one on the limit, says how far it lies
     */
    @Nullable
    BigDecimal zone(@Nullable BigDecimal nominal) {
        if (lower != null && upper != null) {
            return upper.subtract(lower);
        }
        BigDecimal limit = Objects.requireNonNull(lower == null ? upper : lower);
        BigDecimal half =
                nominal == null ? BigDecimal.ZERO : limit.subtract(nominal).abs();
        return half.signum() == 0 ? null : half.add(half);
    }

    /** True if one side is open. */
    boolean oneSided() {
        return lower == null || upper == null;
    }

    /** For a sentence: "−0,30 to 0,30", "at least 95", "at most 0,5". */
    public String words(DecimalSign sign) {
        if (lower == null) {
            return "at most " + sign.write(Objects.requireNonNull(upper));
        }
        return upper == null ? "at least " + sign.write(lower) : sign.write(lower) + " to " + sign.write(upper);
    }
}
