package org.trammel.shop.people;

import java.text.Normalizer;
import java.util.Locale;
import org.trammel.shop.records.Refusal;

/**
 * What a PIN or a password must be when it is chosen. There are no rules about kinds of characters and none about
 * changing it from time to time: both make people write it down (NIST SP 800-63B-4, section 3.1.1, from memory).
 */
final class SecretRules {

    static final int PIN_DIGITS = 6;
    static final int PASSWORD_LENGTH = 12;

    private SecretRules() {}

    static void checkPin(String field, String pin) {
        if (!pin.matches("[0-9]{" + PIN_DIGITS + ",12}")) {
            throw Refusal.input(
                    field,
                    "The PIN was not taken.",
                    "A PIN has 6 to 12 digits and nothing else.",
                    "Choose another one.");
        }
        if (stepsEvenly(pin)) {
            throw Refusal.input(
                    field,
                    "The PIN was not taken.",
                    "Equal digits, and digits that count up or down, are guessed first.",
                    "Choose another one.");
        }
    }

    static void checkPassword(String field, String password, String initials, String name) {
        String plain = normal(password);
        int length = plain.codePointCount(0, plain.length());
        if (length < PASSWORD_LENGTH || length > 200) {
            throw Refusal.input(
                    field,
                    "The password was not taken.",
                    "It has " + length + " characters; 12 to 200 are needed.",
                    "Choose a longer one: four or five words that do not belong together are easy to keep.");
        }
        String low = plain.toLowerCase(Locale.ROOT);
        boolean named = !name.isBlank() && low.contains(name.toLowerCase(Locale.ROOT));
        if (named || low.chars().distinct().count() < 5) {
            throw Refusal.input(
                    field,
                    "The password was not taken.",
                    named ? "It contains the name of " + initials + "." : "It is made of fewer than 5 characters.",
                    "Choose another one.");
        }
    }

    /** One spelling for the same characters, however a keyboard composes them. */
    static String normal(String password) {
        return Normalizer.normalize(password, Normalizer.Form.NFKC);
    }

    /** Equal digits, or a run up or down; 0 follows 9. */
    static boolean stepsEvenly(String pin) {
        int step = Math.floorMod(pin.charAt(1) - pin.charAt(0), 10);
        if (step != 0 && step != 1 && step != 9) {
            return false;
        }
        for (int i = 2; i < pin.length(); i++) {
            if (Math.floorMod(pin.charAt(i) - pin.charAt(i - 1), 10) != step) {
                return false;
            }
        }
        return true;
    }
}
