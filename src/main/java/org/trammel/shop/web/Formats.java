package org.trammel.shop.web;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAccessor;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * How figures, times and marks are written on every sheet: decimal sign of the shop's locale, true minus, no thousands
 * separator, times in the shop's zone. Templates know it as {@code @fmt}.
 */
@Component("fmt")
public class Formats {

    private static final String NO_BREAK = "\u00a0";
    private static final String MINUS = "\u2212";
    private static final String HYPHEN = "\u2011";

    private static final Pattern FIGURE_OR_QUOTE = Pattern.compile("“[^”]*”|(?<=\\d)\\.(?=\\d)");

    private final House house;
    private final Clock clock;

    Formats(House house, Clock clock) {
        this.house = house;
        this.clock = clock;
    }

    /** A figure with this many decimals, rounded half up; empty if there is none. Never judge what this shows. */
    public String number(@Nullable Number value, int decimals) {
        return value == null
                ? ""
                : written(
                        decimal(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString());
    }

    /** A figure with the decimals it has; empty if there is none. */
    public String number(@Nullable Number value) {
        return value == null ? "" : written(decimal(value).toPlainString());
    }

    /** A figure that says its sign, such as a deviation from the nominal; zero has none. */
    public String signed(@Nullable Number value, int decimals) {
        String text = number(value, decimals);
        boolean above = value != null
                && decimal(value).setScale(decimals, RoundingMode.HALF_UP).signum() > 0;
        return above ? "+" + text : text;
    }

    /** Figures that say their sign. */
    public List<String> signedAll(List<? extends Number> values, int decimals) {
        return values.stream().map(value -> signed(value, decimals)).toList();
    }

    /** A figure and its unit: no space before °, a space that does not break before any other. */
    public String with(@Nullable Number value, int decimals, @Nullable String unit) {
        return value == null ? "" : joined(number(value, decimals), unit);
    }

    /** A sentence of a computation, whose figures have a point, with the decimal sign of the shop; quotes stay as typed. */
    public String sentence(String words) {
        return FIGURE_OR_QUOTE
                .matcher(words)
                .replaceAll(found -> found.group().length() > 1
                        ? Matcher.quoteReplacement(found.group())
                        : Matcher.quoteReplacement(decimalSign()));
    }

    /** A figure as it stands in a field to be typed over; text stays as it is. */
    public String plain(@Nullable Object value) {
        return value instanceof Number number ? number(number) : value == null ? "" : value.toString();
    }

    /** An amount of money: whole if it is, else with the currency's decimals. */
    public String money(@Nullable Number amount) {
        if (amount == null) {
            return "";
        }
        BigDecimal exact = decimal(amount);
        boolean whole = exact.stripTrailingZeros().scale() <= 0;
        int decimals = whole ? 0 : house.currency().getDefaultFractionDigits();
        return number(exact, decimals) + NO_BREAK + house.currency().getCurrencyCode();
    }

    /** Hour and minute in the shop, such as 08:30. */
    public String time(@Nullable Instant at) {
        return shown(at, "HH:mm");
    }

    /** Day without the year, such as Wed 18 Mar. */
    public String day(@Nullable TemporalAccessor at) {
        return shown(at, "EEE d MMM");
    }

    /** Day with the year, such as 18 Mar 2026. */
    public String date(@Nullable TemporalAccessor at) {
        return shown(at, "d MMM yyyy");
    }

    /** Hour and minute, and the day unless it is today. */
    public String moment(@Nullable Instant at) {
        if (at == null) {
            return "";
        }
        LocalDate day = at.atZone(house.zone()).toLocalDate();
        if (day.equals(today())) {
            return time(at);
        }
        return shown(at, day.getYear() == today().getYear() ? "EEE d MMM HH:mm" : "d MMM yyyy HH:mm");
    }

    /** A stamp that sorts and that nobody misreads, for records: 2026-03-18 08:30:05. */
    public String stamp(@Nullable Instant at) {
        return shown(at, "yyyy-MM-dd HH:mm:ss");
    }

    /** What is left until a moment, in words; "no time" once it has come. */
    public String left(@Nullable Instant until) {
        return until == null ? "" : span(Duration.between(clock.instant(), until));
    }

    /** Whether a moment is still to come. */
    public boolean ahead(@Nullable Instant moment) {
        return moment != null && moment.isAfter(clock.instant());
    }

    /** How long ago something was, in words. */
    public String ago(@Nullable Instant since) {
        return since == null ? "" : span(Duration.between(since, clock.instant()));
    }

    /** A length of time in words: 35 min, 2 h 10 min, 3 days. Whole minutes, cut off, so that no time is promised. */
    public String span(Duration length) {
        if (length.isNegative() || length.toSeconds() < 1) {
            return "no time";
        }
        long minutes = length.toMinutes();
        if (minutes < 1) {
            return length.toSeconds() + NO_BREAK + "s";
        }
        if (minutes < 60) {
            return minutes + NO_BREAK + "min";
        }
        long hours = minutes / 60;
        if (hours < 48) {
            String rest = minutes % 60 == 0 ? "" : NO_BREAK + minutes % 60 + NO_BREAK + "min";
            return hours + NO_BREAK + "h" + rest;
        }
        long days = hours / 24;
        String rest = days < 7 && hours % 24 != 0 ? NO_BREAK + hours % 24 + NO_BREAK + "h" : "";
        return days + NO_BREAK + "days" + rest;
    }

    /** A length of time as hours and minutes, such as 2:10. */
    public String hoursAndMinutes(Duration length) {
        Duration whole = length.isNegative() ? Duration.ZERO : length;
        return whole.toHours() + ":" + String.format(Locale.ROOT, "%02d", whole.toMinutesPart());
    }

    /** Calendar days from today, with their sign: +3, 0, −12. */
    public String days(@Nullable LocalDate day) {
        return day == null ? "" : signed(ChronoUnit.DAYS.between(today(), day), 0);
    }

    /** The decimal sign the shop writes. */
    public String decimalSign() {
        return String.valueOf(DecimalFormatSymbols.getInstance(house.locale()).getDecimalSeparator());
    }

    /** A metal in words, by its code; a code that is not known stays as it is. */
    public String metal(@Nullable String code) {
        if (code == null) {
            return "";
        }
        return switch (code) {
            case "AL6061" -> "aluminium 6061";
            case "AL7005" -> "aluminium 7005";
            case "STEEL" -> "steel";
            case "TI" -> "titanium";
            default -> code;
        };
    }

    /** The name of a station; its code if there is none, empty for work at no station. */
    public String station(@Nullable String code) {
        return code == null || code.isEmpty() ? "" : house.station(code);
    }

    /** The number on a frame's tag, such as 042‑3 of AB270423 or of its children. */
    public String mark(@Nullable String serial) {
        if (serial == null) {
            return "";
        }
        String frame = body(serial);
        int end = frame.length();
        return end < 4 ? frame : frame.substring(end - 4, end - 1) + HYPHEN + frame.substring(end - 1);
    }

    /** A serial as it is read, such as AB27‑042‑3. */
    public String serial(@Nullable String serial) {
        if (serial == null) {
            return "";
        }
        String frame = body(serial);
        int end = frame.length();
        String part = serial.length() > end ? serial.substring(end).replace("-", HYPHEN) : "";
        return end < 5 ? serial : frame.substring(0, end - 4) + HYPHEN + mark(frame) + part;
    }

    private static String body(String serial) {
        int dash = serial.indexOf('-');
        return dash < 0 ? serial : serial.substring(0, dash);
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), house.zone());
    }

    private String shown(@Nullable TemporalAccessor at, String pattern) {
        return at == null
                ? ""
                : DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH)
                        .withZone(house.zone())
                        .format(at);
    }

    private String written(String plain) {
        String text = plain.replace(".", decimalSign());
        boolean nothing = text.chars().noneMatch(digit -> digit >= '1' && digit <= '9');
        return text.startsWith("-") ? (nothing ? "" : MINUS) + text.substring(1) : text;
    }

    static String joined(String figure, @Nullable String unit) {
        if (unit == null || unit.isEmpty()) {
            return figure;
        }
        return unit.startsWith("°") && unit.length() == 1 ? figure + unit : figure + NO_BREAK + unit;
    }

    private static BigDecimal decimal(Number value) {
        return value instanceof BigDecimal exact ? exact : new BigDecimal(value.toString());
    }
}
