package org.trammel.calc.thermal;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Set;

/**
 * Reads the figures of a logger's file to a thousandth. All figures of a file have one decimal sign: the first that has
 * any says which. Signs between thousands are not read, as 1.234,5 could be two numbers.
 */
final class LogFigure {

    /** No figure and no word for a missing one. */
    static final long NONE = Long.MIN_VALUE;

    /** A word, or nothing, for a reading that is missing. */
    static final long MISSING = Long.MIN_VALUE + 1;

    private static final long GREATEST = 99_999_999_999_999L;

    private static final Set<String> WORDS = Set.of(
            "open",
            "ol",
            "o.l",
            "o.l.",
            "over",
            "overrange",
            "over range",
            "under",
            "underrange",
            "under range",
            "err",
            "error",
            "fault",
            "fail",
            "nan",
            "n/a",
            "#n/a",
            "na",
            "null",
            "none",
            "burnout",
            "break",
            "-",
            "--",
            "---",
            "----",
            "-----",
            "*",
            "***",
            "****",
            "*****",
            "inf",
            "+inf",
            "-inf",
            "1.#qnan",
            "1.#inf",
            "?");

    private char decimalSign;
    private int decimals;

    /** A comma or a point; 0 while no figure had any. */
    char decimalSign() {
        return decimalSign;
    }

    /** Decimals of the figure read last. */
    int decimals() {
        return decimals;
    }

    /** Forgets the decimal sign. */
    void forget() {
        decimalSign = 0;
    }

    /** Thousandths, {@link #MISSING} or {@link #NONE}. */
    long thousandths(char[] text, int from, int end) {
        decimals = 0;
        int to = withoutUnit(text, from, end);
        if (from >= to) {
            return from >= end ? MISSING : NONE;
        }
        int i = from;
        char first = text[i];
        boolean negative = first == '-' || first == '\u2212' || first == '\u2013';
        if (negative || first == '+') {
            i++;
        }
        long value = 0;
        int digits = 0;
        char sign = 0;
        int kept = 0;
        boolean up = false;
        for (; i < to; i++) {
            char c = text[i];
            if (c >= '0' && c <= '9') {
                digits++;
                if (sign == 0 || kept < 3) {
                    value = value * 10 + (c - '0');
                    kept += sign == 0 ? 0 : 1;
                    if (value > GREATEST) {
                        return NONE;
                    }
                } else if (decimals == 3) {
                    up = c >= '5';
                }
                decimals += sign == 0 ? 0 : 1;
            } else if ((c == '.' || c == ',') && sign == 0 && digits > 0) {
                sign = c;
            } else if ((c == 'e' || c == 'E') && digits > 0) {
                return scientific(text, from, to, sign);
            } else {
                return word(text, from, end);
            }
        }
        if (digits == 0 || sign != 0 && decimals == 0) {
            return word(text, from, end);
        }
        if (sign != 0 && !agrees(sign)) {
            return NONE;
        }
        while (kept++ < 3) {
            value *= 10;
        }
        value += up ? 1 : 0;
        return negative ? -value : value;
    }

    private boolean agrees(char sign) {
        if (decimalSign == 0) {
            decimalSign = sign;
        }
        return decimalSign == sign;
    }

    private long scientific(char[] text, int from, int to, char sign) {
        String written =
                new String(text, from, to - from).replace('\u2212', '-').replace(',', '.');
        if (!written.matches("[-+]?\\d{1,12}(\\.\\d{1,20})?[eE][-+]?\\d{1,2}") || sign != 0 && !agrees(sign)) {
            return NONE;
        }
        BigDecimal value = new BigDecimal(written);
        if (value.abs().compareTo(new BigDecimal(GREATEST / 1000)) > 0) {
            return NONE;
        }
        return value.movePointRight(3).setScale(0, RoundingMode.HALF_UP).longValueExact();
    }

    private static long word(char[] text, int from, int to) {
        if (to - from > 12) {
            return NONE;
        }
        return WORDS.contains(new String(text, from, to - from).toLowerCase(Locale.ROOT)) ? MISSING : NONE;
    }

    /** Some loggers write °C behind each figure. */
    private static int withoutUnit(char[] text, int from, int to) {
        int end = to;
        if (end - from >= 3 && (text[end - 1] == 'C' || text[end - 1] == 'c')) {
            int before = end - 1;
            if (text[before - 1] == '°' || text[before - 1] == 'º') {
                before--;
            } else if (!LogFields.blank(text[before - 1])) {
                return end;
            }
            while (before > from && LogFields.blank(text[before - 1])) {
                before--;
            }
            end = before;
        }
        return end;
    }
}
