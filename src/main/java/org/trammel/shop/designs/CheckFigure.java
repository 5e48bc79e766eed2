package org.trammel.shop.designs;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.Clearance;
import org.trammel.calc.units.DecimalSign;
import org.trammel.shop.settings.Setting;

/**
 * A computed figure of a check of the gate: a number against a limit, or a word against the word wanted.
 *
 * @param label what it is
 * @param value in the unit; null where it is a word, or not for the reader
 * @param bound which side of the limit it must be on
 * @param limit null for information, and where it is not for the reader
 * @param said the word; null where it is a number
 * @param wanted the word it should be; null for information
 * @param met whether the limit is kept; null for information
 * @param personal value and limit tell something about the rider
 * @param setting id of the very setting the limit came from
 * @param source of that setting
 */
@Embeddable
record CheckFigure(
        String label,
        String unit,
        int decimals,
        @Column(name = "amount") @Nullable BigDecimal value,

        @Enumerated(EnumType.STRING) @JdbcTypeCode(SqlTypes.VARCHAR)
        Clearance.Bound bound,

        @Column(name = "limit_amount") @Nullable BigDecimal limit,
        @Nullable String said,
        @Nullable String wanted,
        @Nullable Boolean met,
        boolean personal,
        @Column(name = "setting_id") @Nullable Long setting,
        @Nullable String source) {

    /** What a computation rounds off; a figure on its limit keeps it. */
    private static final double ROUNDED_OFF = 1e-6;

    private static final int MOST_DECIMALS = 4;

    static CheckFigure information(String label, double value_mm) {
        return of(label, "mm", 1, value_mm, Clearance.Bound.INFORMATION, null);
    }

    static CheckFigure atLeast(String label, double value_mm, Setting limit) {
        return of(label, "mm", 1, value_mm, Clearance.Bound.AT_LEAST, Double.parseDouble(limit.value()))
                .by(limit);
    }

    static CheckFigure atLeast(String label, double value_mm, double limit_mm) {
        return of(label, "mm", 1, value_mm, Clearance.Bound.AT_LEAST, limit_mm);
    }

    static CheckFigure atMost(String label, double value_mm, Setting limit) {
        return of(label, "mm", 1, value_mm, Clearance.Bound.AT_MOST, Double.parseDouble(limit.value()))
                .by(limit);
    }

    static CheckFigure atMost(String label, double value, double limit, String unit) {
        return of(label, unit, 1, value, Clearance.Bound.AT_MOST, limit);
    }

    /** How many of something there are, and how many there may be. */
    static CheckFigure count(String label, long count, long most) {
        return of(label, "", 0, count, Clearance.Bound.AT_MOST, (double) most);
    }

    /** A word, and what it should be; null where nothing is wanted of it. */
    static CheckFigure word(String label, String said, @Nullable String wanted) {
        return new CheckFigure(
                label,
                "",
                0,
                null,
                Clearance.Bound.INFORMATION,
                null,
                said,
                wanted,
                wanted == null ? null : said.equals(wanted),
                false,
                null,
                null);
    }

    private static CheckFigure of(
            String label, String unit, int decimals, double value, Clearance.Bound bound, @Nullable Double limit) {
        Boolean met = limit == null
                ? null
                : Boolean.valueOf((bound == Clearance.Bound.AT_LEAST ? value - limit : limit - value) >= -ROUNDED_OFF);
        return new CheckFigure(
                label,
                unit,
                decimals,
                kept(value),
                bound,
                limit == null ? null : kept(limit),
                null,
                null,
                met,
                false,
                null,
                null);
    }

    private static BigDecimal kept(double amount) {
        return Nominal.plain(BigDecimal.valueOf(amount).setScale(MOST_DECIMALS, RoundingMode.HALF_EVEN));
    }

    CheckFigure by(Setting from) {
        return new CheckFigure(
                label, unit, decimals, value, bound, limit, said, wanted, met, personal, from.id(), from.source());
    }

    /** The same with the source of a limit that is no setting. */
    CheckFigure from(String where) {
        return new CheckFigure(label, unit, decimals, value, bound, limit, said, wanted, met, personal, setting, where);
    }

    CheckFigure aboutTheRider() {
        return new CheckFigure(label, unit, decimals, value, bound, limit, said, wanted, met, true, setting, source);
    }

    /** As it may be kept for good, and shown to everybody: whether it is met, and nothing that tells of the rider. */
    CheckFigure withoutTheRider() {
        return personal
                ? new CheckFigure(label, unit, decimals, null, bound, null, null, null, met, true, setting, source)
                : this;
    }

    /** What is left to the limit, below 0 where it is not kept; null for information. */
    public @Nullable BigDecimal margin() {
        return limit == null || value == null
                ? null
                : bound == Clearance.Bound.AT_LEAST ? value.subtract(limit) : limit.subtract(value);
    }

    public boolean red() {
        return Boolean.FALSE.equals(met);
    }

    /** So many decimals that a figure beside its limit is not shown as if it were on it. */
    public int shownDecimals() {
        BigDecimal margin = margin();
        int shown = decimals;
        while (margin != null
                && !unit.isEmpty()
                && red()
                && shown < MOST_DECIMALS
                && margin.abs().doubleValue() < 0.5 * Math.pow(10, -shown)) {
            shown++;
        }
        return shown;
    }

    /** Value, limit and margin in words. */
    String words() {
        if (said != null) {
            return label + " " + said + (wanted == null ? "" : ", wanted " + wanted);
        }
        BigDecimal margin = margin();
        if (value == null) {
            return label + (met == null ? "" : met ? " kept" : " not kept");
        }
        if (margin == null || limit == null) {
            return label + " " + with(value);
        }
        return label + " " + with(value) + ", limit " + with(limit)
                + (bound == Clearance.Bound.AT_LEAST ? " or more" : " or less") + ", margin " + with(margin);
    }

    private String with(BigDecimal amount) {
        return DecimalSign.COMMA.write(amount.setScale(shownDecimals(), RoundingMode.HALF_EVEN))
                + (unit.isEmpty() ? "" : unit.equals("°") ? unit : " " + unit);
    }
}
