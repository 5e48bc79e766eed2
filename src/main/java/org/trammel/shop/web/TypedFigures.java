package org.trammel.shop.web;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.TypedNumber;

/** Figures of form fields, as people type them: decimal comma or point, true minus, pasted spaces. */
final class TypedFigures {

    private TypedFigures() {}

    /** What was typed is not one number. */
    static final class Unreadable extends IllegalArgumentException {

        Unreadable(String reason) {
            super(reason);
        }
    }

    /** Reads a field; an empty one is no number, not zero. */
    static @Nullable BigDecimal read(String typed) {
        if (typed.isBlank()) {
            return null;
        }
        TypedNumber number = TypedNumber.of(typed);
        if (number instanceof TypedNumber.Read read) {
            return read.value();
        }
        throw new Unreadable(((TypedNumber.Unreadable) number).reason());
    }
}
