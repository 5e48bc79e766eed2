package org.trammel.shop.web;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.calc.units.TypedNumber;
import org.trammel.shop.records.Refusal;

/** Figures and codes as people and programs key them: read, or refused in words. */
public final class Keyed {

    private Keyed() {}

    /**
     * The figure of a field.
     *
     * @param what is not done otherwise, as a sentence
     */
    public static BigDecimal figure(String field, String what, @Nullable String typed) {
        if (TypedNumber.of(typed) instanceof TypedNumber.Read read) {
            return read.value();
        }
        if (SerialNumber.read(typed) instanceof SerialNumber.Result.Whole tag) {
            throw Refusal.input(
                    field,
                    what,
                    "The tag of " + tag.serial().tag() + " was scanned into the place of a figure.",
                    "Key what the gauge shows.");
        }
        throw Refusal.input(
                field,
                what,
                ((TypedNumber.Unreadable) TypedNumber.of(typed)).reason(),
                "Key what the gauge shows, then Enter.");
    }

    /** The figure of a field that may stay empty. */
    public static @Nullable BigDecimal figureOrNone(String field, String what, @Nullable String typed) {
        return typed == null || typed.isBlank() ? null : figure(field, what, typed);
    }

    /** A code of an enum, however its case. */
    public static <E extends Enum<E>> E one(Class<E> type, String field, String what, @Nullable String typed) {
        for (E constant : type.getEnumConstants()) {
            if (typed != null && constant.name().equalsIgnoreCase(typed.strip())) {
                return constant;
            }
        }
        throw Refusal.input(
                field,
                what,
                (typed == null || typed.isBlank() ? "It is missing" : "“" + cut(typed) + "” is none") + "; there are "
                        + java.util.Arrays.stream(type.getEnumConstants())
                                .map(Enum::name)
                                .collect(java.util.stream.Collectors.joining(", "))
                        + ".",
                "Send one of them.");
    }

    private static String cut(String typed) {
        return typed.length() > 30 ? typed.substring(0, 30) + "…" : typed;
    }
}
