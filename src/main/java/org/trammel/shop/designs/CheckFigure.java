package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.Clearance;
import org.trammel.calc.units.DecimalSign;

/**
 * A computed figure of a check of the gate.
 *
 * @param label what it is
 * @param value in the unit
 * @param bound which side of the limit it must be on
 * @param limit null for information
 */
record CheckFigure(
        String label,
        String unit,
        int decimals,
        double value,
        Clearance.Bound bound,
        @Nullable Double limit) {

    /** What a computation rounds off; a figure on its limit keeps it. */
    private static final double ROUNDED_OFF = 1e-6;

    private static final int MOST_DECIMALS = 4;

    static CheckFigure information(String label, double value_mm) {
        return new CheckFigure(label, "mm", 1, value_mm, Clearance.Bound.INFORMATION, null);
    }

    static CheckFigure atLeast(String label, double value_mm, double limit_mm) {
        return new CheckFigure(label, "mm", 1, value_mm, Clearance.Bound.AT_LEAST, limit_mm);
    }

    static CheckFigure atMost(String label, double value_mm, double limit_mm) {
        return new CheckFigure(label, "mm", 1, value_mm, Clearance.Bound.AT_MOST, limit_mm);
    }

    /** How many of something there are, and how many there may be. */
    static CheckFigure count(String label, long count, long most) {
        return new CheckFigure(label, "", 0, count, Clearance.Bound.AT_MOST, (double) most);
    }

    /** What is left to the limit, below 0 where it is not kept; null for information. */
    public @Nullable Double margin() {
        return limit == null ? null : bound == Clearance.Bound.AT_LEAST ? value - limit : limit - value;
    }

    /** Whether the limit is kept; null for information. */
    public @Nullable Boolean met() {
        Double margin = margin();
        return margin == null ? null : margin >= -ROUNDED_OFF;
    }

    public boolean red() {
        return Boolean.FALSE.equals(met());
    }

    /** So many decimals that a figure beside its limit is not shown as if it were on it. */
    public int shownDecimals() {
        Double margin = margin();
        if (margin == null || unit.isEmpty()) {
            return decimals;
        }
        int shown = decimals;
        while (shown < MOST_DECIMALS && red() && Math.abs(margin) < 0.5 * Math.pow(10, -shown)) {
            shown++;
        }
        return shown;
    }

    /** Value, limit and margin in words. */
    String words() {
        Double margin = margin();
        if (margin == null || limit == null) {
            return label + " " + with(value);
        }
        return label + " " + with(value) + ", limit " + with(limit)
                + (bound == Clearance.Bound.AT_LEAST ? " or more" : " or less") + ", margin " + with(margin);
    }

    private String with(double amount) {
        return DecimalSign.COMMA.write(BigDecimal.valueOf(amount).setScale(shownDecimals(), RoundingMode.HALF_EVEN))
                + (unit.isEmpty() ? "" : unit.equals("°") ? unit : " " + unit);
    }
}
