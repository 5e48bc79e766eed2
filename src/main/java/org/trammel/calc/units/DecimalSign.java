package org.trammel.calc.units;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** How a number is written for a reader: its decimal sign, a true minus (U+2212), no sign between thousands. */
public enum DecimalSign {
    COMMA(','),
    POINT('.');

    private static final char TRUE_MINUS = '\u2212';

    private final char sign;

    DecimalSign(char sign) {
        this.sign = sign;
    }

    /** The sign a locale writes. */
    public static DecimalSign of(Locale locale) {
        return DecimalFormatSymbols.getInstance(locale).getDecimalSeparator() == ',' ? COMMA : POINT;
    }

    /**
     * Writes a number with all the decimals it carries.
     *
     * @param number any number; its scale says how many decimals are written
     * @return for example −0,30
     */
    public String write(BigDecimal number) {
        return number.toPlainString().replace('-', TRUE_MINUS).replace('.', sign);
    }
}
