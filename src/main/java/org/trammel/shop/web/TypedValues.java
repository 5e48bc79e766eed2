package org.trammel.shop.web;

import java.beans.PropertyEditorSupport;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.WebDataBinder;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.InitBinder;
import org.trammel.calc.units.TypedDay;
import org.trammel.calc.units.TypedNumber;

/**
 * Figures and days of form fields, as people type them: decimal comma or point, true minus, pasted spaces; days that a
 * shop can mean. Editors and not converters, because a converter that refuses is followed by the framework's own, which
 * reads 1e5.
 */
@ControllerAdvice
class TypedValues {

    @InitBinder
    void figures(WebDataBinder binder) {
        binder.registerCustomEditor(BigDecimal.class, new PropertyEditorSupport() {
            @Override
            public void setAsText(String typed) {
                setValue(read(typed));
            }
        });
    }

    @InitBinder
    void days(WebDataBinder binder) {
        binder.registerCustomEditor(LocalDate.class, new PropertyEditorSupport() {
            @Override
            public void setAsText(String typed) {
                setValue(typed.isBlank() ? null : day(typed));
            }
        });
    }

    private static LocalDate day(String typed) {
        TypedDay day = TypedDay.of(typed);
        if (day instanceof TypedDay.Read read) {
            return read.day();
        }
        throw new Unreadable(" is no day. " + ((TypedDay.Unreadable) day).reason());
    }

    /** What was typed is not one number, or no day; the message goes on after what was typed. */
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
        throw new Unreadable(" is not one number. " + ((TypedNumber.Unreadable) number).reason());
    }
}
