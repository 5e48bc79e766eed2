package org.trammel.shop.web;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.TypedDay;
import org.trammel.calc.units.TypedNumber;
import org.trammel.shop.records.Refusal;

/**
 * The fields of a form as they were typed. What cannot be read is collected, so that one answer can name every field at
 * fault.
 */
public final class TypedFields {

    private final Map<String, String> fields;
    private final String deed;
    private final Map<String, Refusal> wrong = new LinkedHashMap<>();

    /**
     * @param fields by name, as a controller gets them
     * @param deed what is not done otherwise, as a sentence
     */
    public TypedFields(Map<String, String> fields, String deed) {
        this.fields = fields;
        this.deed = deed;
    }

    /** The text of a field without the spaces round it; empty if it was not sent. */
    public String text(String field) {
        return fields.getOrDefault(field, "").strip();
    }

    /** Whether a field was sent with anything in it. */
    public boolean has(String field) {
        return !text(field).isEmpty();
    }

    /** Whether the form had the field at all. */
    public boolean sent(String field) {
        return fields.containsKey(field);
    }

    /** Whether a box was ticked. */
    public boolean ticked(String field) {
        return text(field).equals("true");
    }

    /** Whether an unusual entry was asked about and meant. */
    public boolean confirmed() {
        return ticked("confirm");
    }

    /** A figure; null if the field is empty, which is no number and not zero, or if it cannot be read. */
    public @Nullable BigDecimal figureOrNone(String field) {
        return has(field) ? figure(field) : null;
    }

    /** A figure that must be there; null only if it cannot be read. */
    public @Nullable BigDecimal figure(String field) {
        TypedNumber number = TypedNumber.of(fields.get(field));
        if (number instanceof TypedNumber.Read read) {
            return read.value();
        }
        String typed = has(field) ? "“" + cut(text(field)) + "” is not one number. " : "";
        wrong(field, typed + ((TypedNumber.Unreadable) number).reason(), "Type it again.");
        return null;
    }

    /** A day as 2026-03-18; null if the field is empty or names no day. */
    public @Nullable LocalDate dayOrNone(String field) {
        if (!has(field)) {
            return null;
        }
        TypedDay typed = TypedDay.of(text(field));
        if (typed instanceof TypedDay.Read read) {
            return read.day();
        }
        wrong(
                field,
                "“" + cut(text(field)) + "” is no day. " + ((TypedDay.Unreadable) typed).reason(),
                "Choose the day that is meant.");
        return null;
    }

    /** One of the names of an enum; the other if none was sent or none of that name exists. */
    public <E extends Enum<E>> E one(Class<E> type, String field, E other) {
        if (!has(field)) {
            return other;
        }
        for (E each : type.getEnumConstants()) {
            if (each.name().equals(text(field))) {
                return each;
            }
        }
        String names = Arrays.stream(type.getEnumConstants()).map(Enum::name).collect(Collectors.joining(", "));
        wrong(field, "“" + cut(text(field)) + "” is none of " + names + ".", "Choose one of them.");
        return other;
    }

    /** A whole number such as an id; null if the field is empty. */
    public @Nullable Long idOrNone(String field) {
        if (!has(field)) {
            return null;
        }
        if (!text(field).matches("[0-9]{1,18}")) {
            wrong(
                    field,
                    "“" + cut(text(field)) + "” is no whole number.",
                    "Choose one from the list, or type digits alone.");
            return null;
        }
        return Long.valueOf(text(field));
    }

    /** Notes a field that cannot be taken. */
    public void wrong(String field, String why, String instead) {
        wrong.putIfAbsent(field, Refusal.input(field, deed, why, instead));
    }

    /** Every field at fault with why and what to do instead. */
    public Map<String, String> wrongs() {
        Map<String, String> words = new LinkedHashMap<>();
        wrong.forEach((field, refusal) -> words.put(field, refusal.why() + " " + refusal.instead()));
        return words;
    }

    /** Refuses if any field is at fault: at the first of them, and with what is wrong of every one. */
    public void refuseIfWrong() {
        if (wrong.isEmpty()) {
            return;
        }
        Refusal first = wrong.values().iterator().next();
        if (wrong.size() == 1) {
            throw first;
        }
        throw Refusal.input(
                Objects.requireNonNull(first.field()),
                deed,
                wrong.size() + " fields cannot be taken. "
                        + wrong.values().stream().map(Refusal::why).collect(Collectors.joining(" ")),
                first.instead() + " Correct the others too, then send it again.");
    }

    private static String cut(String text) {
        return text.length() > 60 ? text.substring(0, 60) + "…" : text;
    }
}
