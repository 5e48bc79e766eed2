package org.trammel.shop.materials;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;

/** Reads a line of text that was typed. */
final class Said {

    private static final Map<String, String> NAMES =
            Map.of("certificateType", "type of certificate", "materialClass", "class", "receivedOn", "received on");

    private Said() {}

    static String line(String field, String not, @Nullable String typed, int least, int most) {
        String text = typed == null ? "" : typed.strip();
        String name = NAMES.getOrDefault(field, field);
        if (text.length() < least) {
            throw Refusal.input(field, not, "The field " + name + " is empty.", "Fill it in.");
        }
        if (text.length() > most) {
            throw Refusal.input(
                    field,
                    not,
                    "The field " + name + " has " + text.length() + " characters; " + most + " fit.",
                    "Shorten it.");
        }
        if (text.chars().anyMatch(c -> Character.isISOControl(c) && c != '\n' && c != '\r' && c != '\t')) {
            throw Refusal.input(
                    field, not, "The field " + name + " holds a character that cannot be printed.", "Type it again.");
        }
        return text;
    }
}
