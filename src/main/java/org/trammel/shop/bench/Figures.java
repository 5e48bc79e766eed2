package org.trammel.shop.bench;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.calc.units.TypedNumber;
import org.trammel.shop.records.Refusal;

/** Figures as they are keyed at a station. */
final class Figures {

    private Figures() {}

    /**
     * The figure of a field.
     *
     * @param what is not done otherwise, as a sentence
     * @throws Refusal if it is not one figure
     */
    static BigDecimal read(String field, String what, @Nullable String typed) {
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
    static @Nullable BigDecimal readIfTyped(String field, String what, @Nullable String typed) {
        return typed == null || typed.isBlank() ? null : read(field, what, typed);
    }
}
