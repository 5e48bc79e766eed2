package org.trammel.calc.units;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A number as somebody typed or pasted it.
 *
 * <p>Reads a decimal comma or point, a leading plus, the hyphen, the true minus U+2212 and the dashes word processors
 * put in its place, and ignores spaces of any kind (also U+00A0, U+202F) before, after, and between sign and digits. The
 * decimals typed are kept: "0,30" is read with two.
 *
 * <p>Refuses whatever could mean two numbers, above all signs between thousands: "1.234,5" is 1234.5 to one reader and
 * 1.2345 to another, and a wrong thousandth scraps a frame. Also refused are exponents, hexadecimal digits, digits of
 * other scripts, units, and more than {@value #WHOLE_DIGITS} digits before or {@value #DECIMALS} after the decimal sign,
 * which no gauge of a workshop shows.
 */
public sealed interface TypedNumber {

    /** Digits allowed before the decimal sign. */
    int WHOLE_DIGITS = 9;

    /** Digits allowed after the decimal sign. */
    int DECIMALS = 6;

    /** The number that was typed, with the decimals that were typed. */
    record Read(BigDecimal value) implements TypedNumber {}

    /** What was typed is not one number. */
    record Unreadable(String reason) implements TypedNumber {}

    /**
     * Reads what was typed.
     *
     * @param typed the text of the field; null stands for a field that was not sent
     */
    static TypedNumber of(@Nullable String typed) {
        if (typed == null) {
            return new Unreadable("Nothing was typed. An empty field is not zero.");
        }
        String text = withoutOuterSpaces(typed);
        if (text.isEmpty()) {
            return new Unreadable("Nothing was typed. An empty field is not zero.");
        }
        boolean negative = isMinus(text.charAt(0));
        if (negative || text.charAt(0) == '+') {
            text = withoutOuterSpaces(text.substring(1));
        }
        return unsigned(text, negative);
    }

    private static TypedNumber unsigned(String text, boolean negative) {
        int commas = count(text, ',');
        int points = count(text, '.');
        if (commas > 0 && points > 0) {
            return new Unreadable(
                    "A comma and a point in one number can be read two ways. Type the decimal sign only.");
        }
        if (commas + points > 1) {
            return new Unreadable("There is more than one decimal sign. Type one number.");
        }
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (isSpace(c)) {
                return new Unreadable("There is a space inside the number. Type it without.");
            }
            if (isMinus(c) || c == '+') {
                return new Unreadable("There is a sign inside the number. A sign stands in front.");
            }
            if (!isDigit(c) && c != ',' && c != '.') {
                return new Unreadable(
                        "Only digits, one decimal sign and a sign in front are read; no unit, no letters.");
            }
        }
        int sign = Math.max(text.indexOf(','), text.indexOf('.'));
        String whole = sign < 0 ? text : text.substring(0, sign);
        String decimals = sign < 0 ? "" : text.substring(sign + 1);
        if (sign >= 0 && decimals.isEmpty()) {
            return new Unreadable("No digit follows the decimal sign.");
        }
        if (whole.isEmpty() && decimals.isEmpty()) {
            return new Unreadable("There is a sign but no digit.");
        }
        String significant = whole.replaceFirst("^0+", "");
        if (whole.length() > 2 * WHOLE_DIGITS || significant.length() > WHOLE_DIGITS || decimals.length() > DECIMALS) {
            return new Unreadable("The number has more digits than are read: at most " + WHOLE_DIGITS
                    + " before the decimal sign and " + DECIMALS + " after it.");
        }
        BigDecimal value = new BigDecimal((whole.isEmpty() ? "0" : whole) + (decimals.isEmpty() ? "" : "." + decimals));
        return new Read(negative ? value.negate() : value);
    }

    private static String withoutOuterSpaces(String text) {
        int from = 0;
        int to = text.length();
        while (from < to && isSpace(text.charAt(from))) {
            from++;
        }
        while (to > from && isSpace(text.charAt(to - 1))) {
            to--;
        }
        return text.substring(from, to);
    }

    private static int count(String text, char wanted) {
        return (int) text.chars().filter(c -> c == wanted).count();
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isMinus(char c) {
        return c == '-' || c == '\u2212' || c == '\u2010' || c == '\u2011' || c == '\u2012' || c == '\u2013';
    }

    /** Spaces, no-break spaces, tabs, line ends and the marks of no width that come along with pasted text. */
    private static boolean isSpace(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c) || c == '\u200B' || c == '\u2060' || c == '\uFEFF';
    }
}
