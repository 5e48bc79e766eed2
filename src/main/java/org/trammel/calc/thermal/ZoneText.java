package org.trammel.calc.thermal;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Zones as they stand behind a time. Of the letters only those are read that mean one zone to everybody: CST, IST, BST
 * and their like are two or three.
 */
final class ZoneText {

    private static final Map<String, Integer> LETTERS = Map.ofEntries(
            Map.entry("Z", 0),
            Map.entry("UTC", 0),
            Map.entry("GMT", 0),
            Map.entry("WET", 0),
            Map.entry("WEST", 1),
            Map.entry("CET", 1),
            Map.entry("CEST", 2),
            Map.entry("EET", 2),
            Map.entry("EEST", 3),
            Map.entry("MEZ", 1),
            Map.entry("MESZ", 2));

    private static final Pattern OFFSET = Pattern.compile("(?:UTC|GMT)?([+\\-\u2212])(\\d{1,2})(?::?([0-5]\\d))?");

    private static final Pattern IN_A_NAME =
            Pattern.compile("\\b(?:UTC|GMT)(?:\\s*[+\\-\u2212]\\s*\\d{1,2}(?::?[0-5]\\d)?)?\\b|\\bCES?T\\b");

    private ZoneText() {}

    /** Seconds ahead of UTC, or null if it is no zone that is known. */
    static @Nullable Integer offset_s(String text) {
        String written = text.strip().toUpperCase(Locale.ROOT).replace(" ", "");
        Integer hours = LETTERS.get(written);
        if (hours != null) {
            return hours * 3600;
        }
        Matcher offset = OFFSET.matcher(written);
        if (!offset.matches()) {
            return null;
        }
        int minutes = Integer.parseInt(offset.group(2)) * 60
                + (offset.group(3) == null ? 0 : Integer.parseInt(offset.group(3)));
        if (minutes > 18 * 60) {
            return null;
        }
        return 60 * (offset.group(1).equals("+") ? minutes : -minutes);
    }

    /** The zone that the name of a column tells, such as Time (UTC+1); null if it tells none. */
    static @Nullable Integer named_s(String name) {
        Matcher zone = IN_A_NAME.matcher(name.toUpperCase(Locale.ROOT));
        return zone.find() ? offset_s(zone.group()) : null;
    }
}
