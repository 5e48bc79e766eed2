package org.trammel.shop.routes;

import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** Reads what somebody entered into a route and refuses what cannot be kept. */
final class Said {

    static final String UNCHANGED = "The draft was not changed.";

    private static final Pattern OPERATION = Pattern.compile("[0-9]{3}[A-Za-z]?(\\.[0-9]{1,2})?");
    private static final Pattern CHARACTERISTIC = Pattern.compile("[0-9]{3}[A-Za-z0-9.]{0,6}-[0-9]{1,3}[a-z]?");
    private static final Pattern WORD = Pattern.compile("[A-Z0-9][A-Z0-9:._-]{0,29}");

    private Said() {}

    static String line(String field, String label, @Nullable String typed, int longest) {
        return TypedText.line(field, label, UNCHANGED, typed, longest);
    }

    static String orEmpty(String field, String label, @Nullable String typed, int longest) {
        String line = TypedText.lineOrNone(field, label, UNCHANGED, typed, longest);
        return line == null ? "" : line;
    }

    static @Nullable String orNone(String field, String label, @Nullable String typed, int longest) {
        return TypedText.lineOrNone(field, label, UNCHANGED, typed, longest);
    }

    static String operation(@Nullable String typed) {
        String code = line("code", "Code", typed, 12);
        if (!OPERATION.matcher(code).matches()) {
            throw refused(
                    "code",
                    "An operation's code is three digits, a letter if need be, and a point with digits for a part of it; "
                            + code + " is not.",
                    "Enter a code such as 080, 090a or 150.3.");
        }
        return code;
    }

    static String characteristic(@Nullable String typed) {
        String code = line("code", "Code", typed, 20);
        if (!CHARACTERISTIC.matcher(code).matches()) {
            throw refused(
                    "code",
                    "A characteristic's code is its operation, a hyphen and a number; " + code + " is not.",
                    "Enter a code such as 080-4 or 060-3a.");
        }
        return code;
    }

    /** A code word in capitals, such as a clock's, a gauge kind's or a qualification's. */
    static String word(String field, String label, @Nullable String typed) {
        String word = line(field, label, typed, 30);
        if (!WORD.matcher(word).matches()) {
            throw refused(
                    field,
                    label + " is capitals, digits, hyphens, colons and points; " + word + " is not.",
                    "Choose it from the list, or write it in capitals.");
        }
        return word;
    }

    static @Nullable String wordOrNone(String field, String label, @Nullable String typed) {
        return typed == null || typed.isBlank() ? null : word(field, label, typed);
    }

    static int within(String field, String label, int number, int least, int most) {
        if (number < least || number > most) {
            throw refused(
                    field,
                    label + " is " + number + "; it is from " + least + " to " + most + ".",
                    "Enter a number in that range.");
        }
        return number;
    }

    /** Labels of sample points: short lines, at least one, none twice. */
    static List<String> points(List<String> typed) {
        List<String> points = typed.stream()
                .map(String::strip)
                .filter(point -> !point.isEmpty())
                .map(point -> line("points", "A sample point", point, 60))
                .toList();
        if (points.isEmpty()) {
            throw refused("points", "There is no sample point.", "Name at least one place to measure.");
        }
        if (points.stream().distinct().count() < points.size() || points.size() > 30) {
            throw refused(
                    "points",
                    "Sample points have names of their own, and there are 30 at most.",
                    "Name each place once.");
        }
        return points;
    }

    static Refusal refused(String field, String why, String instead) {
        return Refusal.input(field, UNCHANGED, why, instead);
    }
}
