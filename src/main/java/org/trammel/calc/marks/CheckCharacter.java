package org.trammel.calc.marks;

/**
 * Check character of a string of digits and letters by ISO/IEC 7064:2003, hybrid system MOD 37,36.
 *
 * <p>With a(1) … a(n) the values of the characters (0–9 as they are, A = 10 … Z = 35) and P(1) = 36:
 *
 * <pre>
 * S(j) = P(j) + a(j)
 * P(j+1) = 2 · (S(j) mod 36, or 36 where that is 0) mod 37
 * check value c with (P(n+1) + c) mod 36 = 1
 * </pre>
 *
 * It finds every single wrong character and nearly every swap of two neighbours. Lower-case letters are read as capital
 * letters. Letters that look like digits are not exchanged here, since the system knows O and 0, I and 1 as different
 * characters; {@link SerialNumber} does that where the place decides which is meant.
 */
public final class CheckCharacter {

    private static final String CHARACTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private static final int MODULUS = 36;

    private CheckCharacter() {}

    /** A check character, or why there is none. */
    public sealed interface Result {

        /** The check character that belongs to the string. */
        record Determined(char character) implements Result {}

        /** The string has characters the system does not know, or none at all. */
        record NotDeterminable(String reason) implements Result {}
    }

    /**
     * Computes the check character.
     *
     * @param text digits and letters A–Z, without separators
     */
    public static Result of(String text) {
        if (text.isEmpty()) {
            return new Result.NotDeterminable("There is nothing to compute a check character from.");
        }
        int product = MODULUS;
        for (char c : capitals(text).toCharArray()) {
            int value = CHARACTERS.indexOf(c);
            if (value < 0) {
                return new Result.NotDeterminable("Only digits and the letters A to Z have a check character.");
            }
            product = next(product, value);
        }
        return new Result.Determined(CHARACTERS.charAt(Math.floorMod(1 - product, MODULUS)));
    }

    /**
     * Whether the last character is the check character of those before it.
     *
     * @param text digits and letters A–Z with the check character at the end
     */
    public static boolean verifies(String text) {
        return text.length() > 1
                && of(text.substring(0, text.length() - 1)) instanceof Result.Determined determined
                && determined.character() == capitals(text).charAt(text.length() - 1);
    }

    /** Letters a to z as capitals; nothing else changes, so that no letter of another alphabet becomes one of ours. */
    static String capitals(String text) {
        StringBuilder capitals = new StringBuilder(text);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= 'a' && c <= 'z') {
                capitals.setCharAt(i, (char) (c - 'a' + 'A'));
            }
        }
        return capitals.toString();
    }

    private static int next(int product, int value) {
        int sum = (product + value) % MODULUS;
        return (sum == 0 ? MODULUS : sum) * 2 % (MODULUS + 1);
    }
}
