package org.trammel.calc.marks;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Serial of a frame: the shop's two letters, two digits of the year, three digits counted within the year, the check
 * character over these seven ({@link CheckCharacter}), and for a sub-assembly the letters of its part. Shown
 * AB27-042-3-FT, stored AB270423-FT.
 *
 * @param shop two letters of the shop, such as AV
 * @param year year of the frame within its century, 0 to 99
 * @param number number within the year, 0 to 999
 * @param check the check character
 * @param part letters of the sub-assembly: FT front triangle, SA swing arm; null for the frame itself
 */
public record SerialNumber(
        String shop,
        int year,
        int number,
        char check,
        @Nullable String part) {

    private static final Pattern WHOLE = Pattern.compile("([A-Z]{2})([0-9OIL]{2})([0-9OIL]{3})([0-9A-Z])(FT|SA)?");
    private static final Pattern TAG = Pattern.compile("([0-9OIL]{3})([0-9A-Z])(FT|SA)?");
    private static final Pattern BETWEEN = Pattern.compile("[\\s\\p{Z}\\-\\u2010-\\u2013\\u2212./]+");
    private static final int LONGEST = 40;

    /** What was typed or scanned. */
    public sealed interface Result {

        /** A whole serial whose check character is right. */
        record Whole(SerialNumber serial) implements Result {}

        /**
         * Last three digits, check character and perhaps a part, as on the tag. The check character can only be judged
         * against the frames it might mean.
         */
        record Tag(int number, char check, @Nullable String part) implements Result {

            /** Whether the tag is that of the serial: number, check character and part. */
            public boolean isOf(SerialNumber serial) {
                return number == serial.number
                        && looksLike(check, serial.check)
                        && (part == null ? serial.part == null : part.equals(serial.part));
            }
        }

        /** Looks like a serial, but its check character belongs to another number. */
        record WrongCheck(String reason) implements Result {}

        /** Not a serial. */
        record Unreadable(String reason) implements Result {}
    }

    public SerialNumber {
        boolean fits = shop.matches("[A-Z]{2}") && year >= 0 && year <= 99 && number >= 0 && number <= 999;
        if (!fits || checkOf(digits(shop, year, number)) != check) {
            throw new IllegalArgumentException("Not a serial: " + shop + " " + year + " " + number + " " + check);
        }
        if (part != null && !part.equals("FT") && !part.equals("SA")) {
            throw new IllegalArgumentException("A part is FT or SA, not " + part);
        }
    }

    /**
     * Makes the serial of a new frame.
     *
     * @throws IllegalArgumentException if the letters or numbers do not fit a serial
     */
    public static SerialNumber of(String shop, int year, int number) {
        return new SerialNumber(shop, year, number, checkOf(digits(shop, year, number)), null);
    }

    /**
     * Reads a serial or the end of one, in capital or small letters, with hyphens, points, slashes, spaces or nothing
     * between. Where only a digit can stand, O is read as 0 and I or L as 1; as check character O and 0, I and 1 are
     * taken for each other, because at most one of the two is ever right.
     */
    public static Result read(@Nullable String typed) {
        String text = typed == null ? "" : typed;
        if (text.length() > LONGEST) {
            return new Result.Unreadable("This is longer than a serial.");
        }
        text = CheckCharacter.capitals(BETWEEN.matcher(text).replaceAll(""));
        if (text.isEmpty()) {
            return new Result.Unreadable("Nothing was typed.");
        }
        Matcher whole = WHOLE.matcher(text);
        if (whole.matches()) {
            return whole(whole);
        }
        Matcher tag = TAG.matcher(text);
        if (tag.matches()) {
            return new Result.Tag(number(tag.group(1)), tag.group(2).charAt(0), tag.group(3));
        }
        return new Result.Unreadable(
                "A serial has two letters, two digits of the year, three digits and a check character, as in AB27-042-3;"
                        + " the last three digits and the check character are enough.");
    }

    private static Result whole(Matcher text) {
        SerialNumber right = of(text.group(1), number(text.group(2)), number(text.group(3)));
        char typed = text.group(4).charAt(0);
        if (!looksLike(typed, right.check)) {
            return new Result.WrongCheck("The check character " + typed + " does not belong to "
                    + right.shop + two(right.year) + "-" + three(right.number)
                    + ": one character was misread or two were swapped. Read the tag again.");
        }
        return new Result.Whole(text.group(5) == null ? right : right.part(text.group(5)));
    }

    /** Serial of a sub-assembly of this frame. */
    public SerialNumber part(String letters) {
        return new SerialNumber(shop, year, number, check, letters);
    }

    /** Serial of the frame a sub-assembly belongs to; of a frame, itself. */
    public SerialNumber frame() {
        return new SerialNumber(shop, year, number, check, null);
    }

    /** As it is shown: AB27-042-3, AB27-042-3-FT. */
    public String shown() {
        return shop + two(year) + "-" + tag();
    }

    /** As it is stored: AB270423, AB270423-FT. */
    public String stored() {
        return digits(shop, year, number) + check + suffix();
    }

    /** The headline of the tag: last three digits and check character, 042-3, 042-3-FT. */
    public String tag() {
        return three(number) + "-" + check + suffix();
    }

    private String suffix() {
        return part == null ? "" : "-" + part;
    }

    private static String digits(String shop, int year, int number) {
        return shop + two(year) + three(number);
    }

    private static char checkOf(String seven) {
        if (CheckCharacter.of(seven) instanceof CheckCharacter.Result.Determined determined) {
            return determined.character();
        }
        throw new IllegalArgumentException("No check character for " + seven);
    }

    private static boolean looksLike(char typed, char right) {
        return typed == right || plain(typed) == plain(right);
    }

    private static char plain(char c) {
        return c == 'O' ? '0' : c == 'I' ? '1' : c;
    }

    private static int number(String digits) {
        return Integer.parseInt(digits.replace('O', '0').replace('I', '1').replace('L', '1'));
    }

    private static String two(int number) {
        return String.format(Locale.ROOT, "%02d", number);
    }

    private static String three(int number) {
        return String.format(Locale.ROOT, "%03d", number);
    }
}
