package org.trammel.calc.metrology;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** From binary figures to decimal ones. */
final class Figure {

    /**
     * Decimals of a computed value that is judged, in mm or degrees: a thousandth of what any gauge tells, and coarse
     * enough to lay a value on the limit again that binary arithmetic moved off it by a hair.
     */
    private static final int JUDGED = 9;

    /** Digits of an uncertainty; two would be enough to state it. */
    private static final MathContext STATED = new MathContext(4, RoundingMode.UP);

    private Figure() {}

    static BigDecimal judged(double value) {
        return plain(BigDecimal.valueOf(value).setScale(JUDGED, RoundingMode.HALF_EVEN));
    }

    /** Never rounded down; JCGM 100:2008, 7.2.6. */
    static BigDecimal uncertainty(double u) {
        return plain(BigDecimal.valueOf(u).round(STATED));
    }

    static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
    }

    /** For a sentence: to a thousandth, without zeros that say nothing. */
    static String written(double value) {
        return Double.isFinite(value) ? plain(rounded(value, 3)).toPlainString().replace('-', '\u2212') : "no number";
    }

    private static BigDecimal plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0, RoundingMode.UNNECESSARY) : stripped;
    }
}
