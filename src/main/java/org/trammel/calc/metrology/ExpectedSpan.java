package org.trammel.calc.metrology;

import java.math.BigDecimal;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Where values of a characteristic are expected. A two-sided one has its nominal (or the middle of its limits) and the
 * wider half; with one side open, the distance from nominal to limit stands for both sides, and without a nominal the
 * size of the limit itself.
 */
public record ExpectedSpan(BigDecimal middle, BigDecimal tolerance) {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    public static ExpectedSpan of(@Nullable BigDecimal nominal, Limits limits) {
        BigDecimal lower = limits.lower();
        BigDecimal upper = limits.upper();
        if (lower != null && upper != null) {
            BigDecimal middle = nominal == null ? lower.add(upper).divide(TWO) : nominal;
            return new ExpectedSpan(
                    middle,
                    middle.subtract(lower).abs().max(upper.subtract(middle).abs()));
        }
        BigDecimal limit = lower == null ? Objects.requireNonNull(upper) : lower;
        return nominal == null || nominal.compareTo(limit) == 0
                ? new ExpectedSpan(limit, limit.abs())
                : new ExpectedSpan(nominal, limit.subtract(nominal).abs());
    }

    /** Whether somebody can have meant the value: within two tolerances. */
    boolean reaches(BigDecimal value) {
        return reaches(value, TWO);
    }

    /** Whether the value lies within so many tolerances of the middle, the last of them included. */
    public boolean reaches(BigDecimal value, BigDecimal tolerances) {
        return value.subtract(middle).abs().compareTo(tolerance.multiply(tolerances)) <= 0;
    }
}
