package org.trammel.calc.metrology;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A length as it is at 20 °C, the reference temperature of lengths (ISO 1:2022), from what was read on a part that was warmer
 * or colder.
 *
 * <p>With the part at Tp and the gauge at Ts, and αp and αs their coefficients of linear expansion:
 *
 * <pre>
 * L20 = Lm · (1 + αs (Ts − 20)) / (1 + αp (Tp − 20))
 * </pre>
 *
 * The doubt that temperature brings to it, as in the end gauge of JCGM 100:2008, H.1, where part and gauge are read apart:
 *
 * <pre>
 * u² = L² · ((αp u(Tp))² + ((Tp − 20) u(αp))² + (αs u(Ts))² + ((Ts − 20) u(αs))²)
 * </pre>
 *
 * @param factor by which what was read is multiplied
 * @param uPerLength standard uncertainty that temperature brings, for each unit of length
 */
public record AtTwenty(BigDecimal factor, BigDecimal uPerLength) {

    private static final BigDecimal REFERENCE_DEG_C = BigDecimal.valueOf(20);
    private static final MathContext DIGITS = new MathContext(16, RoundingMode.HALF_EVEN);

    /** Decimals of a corrected length, those that a reading keeps. */
    private static final int KEPT = 6;

    /** Digits of the doubt, never rounded down. */
    private static final MathContext STATED = new MathContext(3, RoundingMode.UP);

    /**
     * Something that expands.
     *
     * @param degC its temperature
     * @param uDegC standard uncertainty of that
     * @param expansionPerK coefficient of linear expansion, such as 23.6e-6
     * @param uExpansionPerK standard uncertainty of that
     */
    public record Expanding(BigDecimal degC, BigDecimal uDegC, BigDecimal expansionPerK, BigDecimal uExpansionPerK) {

        private BigDecimal off() {
            return degC.subtract(REFERENCE_DEG_C);
        }

        private BigDecimal grown() {
            return BigDecimal.ONE.add(expansionPerK.multiply(off()));
        }

        private BigDecimal variance() {
            BigDecimal byTemperature = expansionPerK.multiply(uDegC);
            BigDecimal byExpansion = off().multiply(uExpansionPerK);
            return byTemperature.pow(2).add(byExpansion.pow(2));
        }
    }

    public static AtTwenty of(Expanding part, Expanding gauge) {
        return new AtTwenty(
                gauge.grown().divide(part.grown(), DIGITS),
                part.variance().add(gauge.variance()).sqrt(DIGITS));
    }

    /** A length of the part at 20 °C. */
    public BigDecimal length(BigDecimal read) {
        return read.multiply(factor).setScale(KEPT, RoundingMode.HALF_EVEN);
    }

    /** The doubt of such a length: what the gauge brings, and what temperature brings. */
    public BigDecimal u(BigDecimal gaugeU, BigDecimal length) {
        BigDecimal byTemperature = uPerLength.multiply(length);
        return gaugeU.pow(2).add(byTemperature.pow(2)).sqrt(DIGITS).round(STATED);
    }
}
