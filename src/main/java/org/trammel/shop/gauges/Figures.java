package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** Figures of the register: which are kept, and how the shop writes them, no digit dropped. */
final class Figures {

    /** Why one is not kept. */
    static final String NOT_KEPT = "A figure of a gauge lies within ±1 000 000 000 and has six decimals at most.";

    private static final BigDecimal GREATEST = new BigDecimal("1e9");
    private static final int DECIMALS = 6;

    private Figures() {}

    static boolean kept(BigDecimal number) {
        return number.abs().compareTo(GREATEST) <= 0
                && number.stripTrailingZeros().scale() <= DECIMALS;
    }

    static String of(BigDecimal number, Locale locale) {
        BigDecimal stripped = number.stripTrailingZeros();
        String plain = (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
        return plain.replace('.', DecimalFormatSymbols.getInstance(locale).getDecimalSeparator())
                .replace('-', '\u2212');
    }
}
