package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.TypedDay;
import org.trammel.calc.units.TypedNumber;
import org.trammel.shop.records.Refusal;

/** The fields of a form of the ovens as they were typed. */
record Typed(Map<String, String> fields, String deed) {

    String text(String field) {
        return fields.getOrDefault(field, "").strip();
    }

    boolean ticked(String field) {
        return text(field).equals("true");
    }

    @Nullable
    BigDecimal figure(String field) {
        if (text(field).isEmpty()) {
            return null;
        }
        TypedNumber number = TypedNumber.of(text(field));
        if (number instanceof TypedNumber.Read read) {
            return read.value();
        }
        throw Refusal.input(field, deed, ((TypedNumber.Unreadable) number).reason(), "Type it again.");
    }

    @Nullable
    LocalDate day(String field) {
        if (text(field).isEmpty()) {
            return null;
        }
        TypedDay typed = TypedDay.of(text(field));
        if (typed instanceof TypedDay.Read read) {
            return read.day();
        }
        throw Refusal.input(field, deed, ((TypedDay.Unreadable) typed).reason(), "Enter the day as 2026-03-18.");
    }

    /** A day and a time of day in the shop's zone. */
    Instant moment(String dayField, String timeField, ZoneId zone) {
        LocalDate day = day(dayField);
        if (day == null) {
            throw Refusal.input(dayField, deed, "The day is missing.", "Enter the day as 2026-03-18.");
        }
        try {
            return day.atTime(LocalTime.parse(text(timeField))).atZone(zone).toInstant();
        } catch (DateTimeException unreadable) {
            throw Refusal.input(
                    timeField,
                    deed,
                    text(timeField).isEmpty() ? "The time of day is missing." : text(timeField) + " is no time of day.",
                    "Enter it as 15:30.");
        }
    }

    <E extends Enum<E>> @Nullable E choice(String field, Class<E> kind) {
        String typed = text(field);
        for (E one : kind.getEnumConstants()) {
            if (one.name().equals(typed)) {
                return one;
            }
        }
        if (typed.isEmpty()) {
            return null;
        }
        throw Refusal.input(field, deed, typed + " is none of the choices.", "Choose from the list.");
    }
}
