package org.trammel.shop.records;

import org.jspecify.annotations.Nullable;

/**
 * Text as somebody typed or pasted it, before it is kept. Any script and any sign of it is kept as it is, markup and
 * formulas too, since text is never read as either. Refused are control characters and the marks that turn the order
 * of the text around them.
 */
public final class TypedText {

    /** Longest free text that is kept. */
    public static final int LONGEST = 4000;

    private TypedText() {}

    /**
     * One line that must be there.
     *
     * @param field name of the input field
     * @param label what it is called, such as Description
     * @param deed what is not done otherwise, as a sentence
     */
    public static String line(String field, String label, String deed, @Nullable String typed, int longest) {
        String text = lineOrNone(field, label, deed, typed, longest);
        if (text == null) {
            throw empty(field, label, deed);
        }
        return text;
    }

    /** One line that may be left empty; null if it was. */
    public static @Nullable String lineOrNone(
            String field, String label, String deed, @Nullable String typed, int longest) {
        String text = typed == null ? "" : typed.strip();
        if (text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0) {
            throw Refusal.input(field, deed, label + " has more than one line.", "Write it on one line.");
        }
        return checked(field, label, deed, text, longest);
    }

    /** Free text of several lines that must be there. */
    public static String words(String field, String label, String deed, @Nullable String typed) {
        return words(field, label, deed, typed, LONGEST);
    }

    /** The same, of which fewer characters are kept. */
    public static String words(String field, String label, String deed, @Nullable String typed, int longest) {
        String text = wordsOrNone(field, label, deed, typed, longest);
        if (text == null) {
            throw empty(field, label, deed);
        }
        return text;
    }

    /** Free text of several lines that may be left empty; null if it was. */
    public static @Nullable String wordsOrNone(String field, String label, String deed, @Nullable String typed) {
        return wordsOrNone(field, label, deed, typed, LONGEST);
    }

    /** The same, of which fewer characters are kept. */
    public static @Nullable String wordsOrNone(
            String field, String label, String deed, @Nullable String typed, int longest) {
        String text = typed == null ? "" : typed.strip().replace("\r\n", "\n").replace('\r', '\n');
        return checked(field, label, deed, text, longest);
    }

    private static @Nullable String checked(String field, String label, String deed, String text, int longest) {
        if (text.isEmpty()) {
            return null;
        }
        if (text.length() > longest) {
            throw Refusal.input(
                    field,
                    deed,
                    label + " has " + text.length() + " characters; " + longest + " are kept.",
                    "Shorten it; a long text can be added as a file or a note.");
        }
        if (text.codePoints().anyMatch(TypedText::unseen)) {
            throw Refusal.input(
                    field,
                    deed,
                    label + " carries signs that cannot be seen (control characters or turning marks).",
                    "Type it by hand instead of pasting it.");
        }
        return text;
    }

    private static boolean unseen(int sign) {
        boolean control = Character.isISOControl(sign) && sign != '\n' && sign != '\t';
        boolean turning = sign >= 0x202A && sign <= 0x202E || sign >= 0x2066 && sign <= 0x2069;
        boolean half = sign >= Character.MIN_SURROGATE && sign <= Character.MAX_SURROGATE;
        return control || turning || half;
    }

    private static Refusal empty(String field, String label, String deed) {
        return Refusal.input(field, deed, label + " is empty.", "Fill it in.");
    }
}
