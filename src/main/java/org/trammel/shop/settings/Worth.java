package org.trammel.shop.settings;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Currency;
import java.util.IllformedLocaleException;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.TypedNumber;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** Reads what a person typed as the value of a setting and refuses what its definition does not allow. */
final class Worth {

    private static final int DECIMALS = 4;
    private static final int LONGEST_TEXT = 200;

    private static final Set<String> LANGUAGES = Set.of(Locale.getISOLanguages());
    private static final Set<String> REGIONS = Set.of(Locale.getISOCountries());

    private Worth() {}

    static String of(Definition definition, String typed) {
        String value = typed.strip();
        return switch (definition.kind()) {
            case NUMBER, WHOLE -> figure(definition, value);
            case TEXT -> text(definition, value);
            case ZONE -> zone(definition, value);
            case LOCALE -> locale(definition, value);
            case CURRENCY -> currency(definition, value);
        };
    }

    /** A source or a reason: somebody must have said something. */
    static String said(String field, String name, @Nullable String typed) {
        String label = field.equals("source") ? "Source" : "Reason";
        return TypedText.words(field, label, name + " was not changed.", typed);
    }

    private static String figure(Definition definition, String value) {
        BigDecimal number = read(definition, value);
        String plain = plain(number);
        if (number.stripTrailingZeros().scale() > DECIMALS) {
            throw refused(definition, "It is kept with " + DECIMALS + " decimals.", "Round it.");
        }
        if (definition.kind() == Definition.Kind.WHOLE
                && number.stripTrailingZeros().scale() > 0) {
            throw refused(definition, "It is counted in whole " + definition.unit() + ".", "Enter a whole figure.");
        }
        BigDecimal lowest = definition.lowest();
        BigDecimal highest = definition.highest();
        if (lowest != null && number.compareTo(lowest) < 0 || highest != null && number.compareTo(highest) > 0) {
            throw refused(
                    definition,
                    plain + " is outside " + plain(lowest) + " to " + plain(highest) + ".",
                    "Enter a value inside it.");
        }
        return plain;
    }

    private static BigDecimal read(Definition definition, String typed) {
        TypedNumber number = TypedNumber.of(typed);
        if (number instanceof TypedNumber.Read read) {
            return read.value();
        }
        throw refused(definition, ((TypedNumber.Unreadable) number).reason(), "Enter one figure.");
    }

    private static String plain(@Nullable BigDecimal number) {
        if (number == null) {
            return "any";
        }
        BigDecimal stripped = number.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }

    private static String text(Definition definition, String value) {
        return TypedText.line("value", definition.name(), definition.name() + " was not changed.", value, LONGEST_TEXT);
    }

    private static String zone(Definition definition, String value) {
        try {
            String zone = ZoneId.of(value).getId();
            // An offset such as -1 is no place: its clocks never change in spring and autumn.
            if (ZoneId.getAvailableZoneIds().contains(zone)) {
                return zone;
            }
        } catch (DateTimeException e) {
            // Said below, together with the offsets.
        }
        throw refused(
                definition, "\"" + shown(value) + "\" is not a known zone.", "Enter one such as Europe/Stockholm.");
    }

    private static String locale(Definition definition, String value) {
        try {
            Locale locale = new Locale.Builder().setLanguageTag(value).build();
            String region = locale.getCountry();
            if (LANGUAGES.contains(locale.getLanguage()) && (region.isEmpty() || REGIONS.contains(region))) {
                return locale.toLanguageTag();
            }
        } catch (IllformedLocaleException e) {
            // Said below, together with the empty one.
        }
        throw refused(
                definition, "\"" + shown(value) + "\" is not a language tag.", "Enter one such as sv-SE or en-IE.");
    }

    private static String currency(Definition definition, String value) {
        try {
            Currency currency = Currency.getInstance(value.toUpperCase(Locale.ROOT));
            // Codes without decimals of their own are metals, funds, tests and no currency at all.
            if (currency.getDefaultFractionDigits() >= 0) {
                return currency.getCurrencyCode();
            }
        } catch (IllegalArgumentException e) {
            // Said below, together with what nobody pays with.
        }
        throw refused(
                definition, "\"" + shown(value) + "\" is not a currency code.", "Enter one of ISO 4217, such as EUR.");
    }

    private static String shown(String value) {
        return value.length() <= 40 ? value : value.substring(0, 40) + "…";
    }

    private static Refusal refused(Definition definition, String why, String instead) {
        return Refusal.input("value", definition.name() + " was not changed.", why, instead);
    }
}
