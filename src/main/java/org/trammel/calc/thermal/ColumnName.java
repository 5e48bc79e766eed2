package org.trammel.calc.thermal;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What the name of a column tells.
 *
 * @param name without the unit
 * @param unit as it is written, or empty
 */
record ColumnName(String name, String unit) {

    private static final Pattern WITH_UNIT = Pattern.compile(
            "(.*?)[\\s_,/]*[\\[(]\\s*([^\\[\\]()]*?)\\s*[\\])]\\s*|(.*?)[\\s_,/]*((?:°|º|\uFFFD|deg\\.? ?)[CF])\\s*",
            Pattern.CASE_INSENSITIVE);

    private static final Set<String> NO_TEMPERATURES = Set.of(
            "comment",
            "comments",
            "remark",
            "remarks",
            "note",
            "notes",
            "event",
            "events",
            "status",
            "state",
            "alarm",
            "alarms",
            "battery",
            "humidity",
            "rh",
            "rel. humidity",
            "door",
            "power",
            "output",
            "pressure",
            "no",
            "no.",
            "nr",
            "nr.",
            "number",
            "index",
            "record",
            "sample",
            "id",
            "#",
            "row",
            "user",
            "recipe");

    private static final Set<String> OTHER_UNITS = Set.of(
            "%",
            "%rh", "rh", "v", "mv", "µv", "a", "ma", "w", "kw", "pa", "kpa", "hpa", "mbar", "bar", "psi", "rpm", "hz",
            "m/s", "k/min", "°c/min", "ohm", "ω", "ppm");

    private static final Set<String> FAHRENHEIT = Set.of("°f", "ºf", "\uFFFDf", "f", "degf", "deg f", "deg. f");
    private static final Set<String> CELSIUS = Set.of("°c", "ºc", "\uFFFDc", "c", "degc", "deg c", "deg. c", "celsius");

    static ColumnName of(String written) {
        Matcher parts = WITH_UNIT.matcher(written);
        if (parts.matches()) {
            boolean bracketed = parts.group(2) != null;
            String name = bracketed ? parts.group(1) : parts.group(3);
            String unit = bracketed ? parts.group(2) : parts.group(4);
            return new ColumnName(name.isBlank() ? written.strip() : name.strip(), unit.strip());
        }
        return new ColumnName(written.strip(), "");
    }

    /** The same with the unit that a line of units gives it, where the name has none. */
    ColumnName withUnit(String below) {
        return unit.isEmpty() ? new ColumnName(name, of("x (" + below.replaceAll("[\\[\\]()]", "") + ")").unit) : this;
    }

    boolean fahrenheit() {
        return FAHRENHEIT.contains(lower(unit));
    }

    boolean otherThanTemperature() {
        return OTHER_UNITS.contains(lower(unit)) || NO_TEMPERATURES.contains(lower(name)) || name.contains("%");
    }

    /** Milliseconds of one step of a column that counts from the start of the record; null if it tells none. */
    @Nullable
    Long elapsed_ms() {
        String told = unit.isEmpty() ? lastWord(name) : lower(unit);
        return switch (told) {
            case "s", "sec", "secs", "second", "seconds" -> 1000L;
            case "min", "mins", "minute", "minutes" -> 60_000L;
            case "h", "hr", "hrs", "hour", "hours" -> 3_600_000L;
            case "ms" -> 1L;
            default -> null;
        };
    }

    boolean epoch() {
        return lower(name).matches(".*(epoch|unix|timestamp).*");
    }

    /** Whether a field of a line of units could be one. */
    static boolean isUnit(String field) {
        String bare = lower(field.replaceAll("[\\[\\]()]", ""));
        return bare.isEmpty()
                || CELSIUS.contains(bare)
                || FAHRENHEIT.contains(bare)
                || OTHER_UNITS.contains(bare)
                || new ColumnName("x", bare).elapsed_ms() != null
                || bare.matches("[dmyhs:./ -]{2,24}|-");
    }

    private static String lastWord(String text) {
        String[] words = lower(text).split("[\\s_]+");
        return words[words.length - 1];
    }

    private static String lower(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }
}
