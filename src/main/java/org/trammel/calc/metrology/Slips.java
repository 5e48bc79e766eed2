package org.trammel.calc.metrology;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.metrology.Plausibility.Slip;

/** Values that somebody may have meant who typed another, the likelier first. */
final class Slips {

    private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");
    private static final int FURTHEST_SHIFT = 3;

    private Slips() {}

    static List<Slip> of(BigDecimal typed, String unit) {
        List<Slip> slips = new ArrayList<>();
        for (int places = 1; places <= FURTHEST_SHIFT; places++) {
            slips.add(new Slip(Slip.Kind.DECIMAL_SIGN, plain(typed.movePointLeft(places))));
            slips.add(new Slip(Slip.Kind.DECIMAL_SIGN, plain(typed.movePointRight(places))));
        }
        swapped(typed).forEach(meant -> slips.add(new Slip(Slip.Kind.SWAPPED_DIGITS, meant)));
        slips.add(new Slip(Slip.Kind.DROPPED_SIGN, typed.negate()));
        if (unit.equals("mm")) {
            slips.add(new Slip(Slip.Kind.INCHES, plain(typed.multiply(MM_PER_INCH))));
        }
        if (unit.equals("°C")) {
            BigDecimal celsius = typed.subtract(BigDecimal.valueOf(32))
                    .multiply(BigDecimal.valueOf(5))
                    .divide(BigDecimal.valueOf(9), 1, RoundingMode.HALF_EVEN);
            slips.add(new Slip(Slip.Kind.FAHRENHEIT, celsius));
        }
        return slips;
    }

    private static List<BigDecimal> swapped(BigDecimal typed) {
        String digits = typed.unscaledValue().abs().toString();
        List<BigDecimal> values = new ArrayList<>();
        for (int i = 0; i + 1 < digits.length(); i++) {
            char[] other = digits.toCharArray();
            other[i] = digits.charAt(i + 1);
            other[i + 1] = digits.charAt(i);
            BigDecimal value = new BigDecimal(new BigInteger(new String(other)), typed.scale());
            values.add(typed.signum() < 0 ? value.negate() : value);
        }
        return values;
    }

    private static BigDecimal plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0, RoundingMode.UNNECESSARY) : stripped;
    }
}
