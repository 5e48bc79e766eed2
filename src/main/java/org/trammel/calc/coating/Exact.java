package org.trammel.calc.coating;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * A mean that is not rounded.
 *
 * @param sum of what is averaged, or a multiple of it
 * @param count how many, or the same multiple; above 0
 */
record Exact(BigDecimal sum, BigDecimal count) {

    static Exact mean(List<BigDecimal> values) {
        return new Exact(values.stream().reduce(BigDecimal.ZERO, BigDecimal::add), BigDecimal.valueOf(values.size()));
    }

    /** The mean of means, each weighing the same. */
    static Exact meanOf(List<Exact> means) {
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal denominator = BigDecimal.ONE;
        for (Exact mean : means) {
            sum = sum.multiply(mean.count).add(mean.sum.multiply(denominator));
            denominator = denominator.multiply(mean.count);
        }
        return new Exact(sum, denominator.multiply(BigDecimal.valueOf(means.size())));
    }

    int compareTo(BigDecimal limit) {
        return sum.compareTo(limit.multiply(count));
    }

    /** To a thousandth. */
    BigDecimal rounded() {
        return sum.divide(count, 3, RoundingMode.HALF_UP);
    }

    /** As a sentence has it, to a thousandth. */
    String said() {
        return FilmVerdict.said(rounded());
    }
}
