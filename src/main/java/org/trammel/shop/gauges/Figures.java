package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** Figures as the shop writes them, no digit dropped. */
final class Figures {

    private Figures() {}

    static String of(BigDecimal number, Locale locale) {
        BigDecimal stripped = number.stripTrailingZeros();
        String plain = (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
        return plain.replace('.', DecimalFormatSymbols.getInstance(locale).getDecimalSeparator())
                .replace('-', '\u2212');
    }
}
