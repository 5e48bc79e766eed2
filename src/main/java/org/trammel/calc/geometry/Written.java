package org.trammel.calc.geometry;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures as a sentence has them: with unit, a tenth of a millimetre or of a degree, nothing after the point that says nothing. */
final class Written {

    private Written() {}

    static String mm(double length_mm) {
        return withUnit(length_mm, " mm");
    }

    static String degrees(double angle_rad) {
        return withUnit(Math.toDegrees(angle_rad), "°");
    }

    private static String withUnit(double figure, String unit) {
        if (!Double.isFinite(figure)) {
            return "no number";
        }
        // A hundredth that was typed is not nothing.
        return figure(figure, Math.abs(figure) < 0.05 ? 2 : 1) + unit;
    }

    /** A finite figure. */
    static String figure(double figure, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(figure).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
