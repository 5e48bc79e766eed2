package org.trammel.calc.fastening;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/**
 * How tolerances add up along a chain of parts.
 *
 * <pre>
 * worst = Σ |tᵢ|        rss = √ Σ tᵢ²
 * </pre>
 *
 * The worst case is certain; the root of the sum of squares holds where the parts err independently and each is centred.
 * Source: common practice of tolerance analysis.
 *
 * @param worst all of them at their limit at once
 * @param rss to a hundredth, rounded up
 */
public record StackUp(BigDecimal worst, BigDecimal rss) {

    /** @param tolerances half widths, all in one unit */
    public static StackUp of(List<BigDecimal> tolerances) {
        BigDecimal worst = tolerances.stream().map(BigDecimal::abs).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal squares = tolerances.stream().map(t -> t.multiply(t)).reduce(BigDecimal.ZERO, BigDecimal::add);
        return new StackUp(worst, squares.sqrt(MathContext.DECIMAL64).setScale(2, RoundingMode.CEILING));
    }
}
