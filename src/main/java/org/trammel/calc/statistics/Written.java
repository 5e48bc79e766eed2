package org.trammel.calc.statistics;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Arrays;
import org.trammel.calc.units.DecimalSign;

/** Figures as a sentence has them. */
final class Written {

    private static final int MOST_DECIMALS = 12;

    private Written() {}

    /**
     * With as many decimals as tell a hundredth of the scale apart.
     *
     * @param scale what the figure is compared with, such as the standard deviation; above 0
     */
    static String to(double figure, double scale) {
        return decimals(figure, toldApart(scale));
    }

    /** How many decimals figures of one sentence want, all alike, and no more than tell a hundredth of the scale apart. */
    static int fewest(double scale, double... figures) {
        int most = toldApart(scale);
        return Arrays.stream(figures)
                .mapToInt(figure -> BigDecimal.valueOf(figure)
                        .setScale(most, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .scale())
                .reduce(0, Math::max);
    }

    private static int toldApart(double scale) {
        return Math.max(0, Math.min(MOST_DECIMALS, 2 - (int) Math.floor(Math.log10(scale))));
    }

    static String decimals(double figure, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(figure).setScale(decimals, RoundingMode.HALF_UP);
        return DecimalSign.POINT.write(rounded);
    }

    /** Four digits, nothing after the point that says nothing. */
    static String plain(double figure) {
        BigDecimal rounded = new BigDecimal(figure).round(new MathContext(4)).stripTrailingZeros();
        return rounded.precision() - rounded.scale() > MOST_DECIMALS || rounded.scale() > MOST_DECIMALS
                ? rounded.toString()
                : DecimalSign.POINT.write(rounded.signum() == 0 ? BigDecimal.ZERO : rounded);
    }

    static String percent(double share) {
        return decimals(100 * share, 0) + " %";
    }
}
