package org.trammel.calc.thermal;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures as a sentence has them, without zeros that say nothing. */
final class Said {

    private Said() {}

    static String degC(double degC) {
        return figure(degC, 1) + " °C";
    }

    static String hours(double hours) {
        return figure(hours, 2) + " h";
    }

    static String kelvins(double kelvins) {
        return figure(kelvins, 1) + " K";
    }

    static String percent(double share) {
        return figure(100 * share, 1) + " %";
    }

    static String figure(double figure, int decimals) {
        if (!Double.isFinite(figure)) {
            return "no number";
        }
        BigDecimal rounded = BigDecimal.valueOf(figure).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0
                ? "0"
                : rounded.stripTrailingZeros().toPlainString().replace('-', '\u2212');
    }
}
