package org.trammel.shop.web;

import java.beans.PropertyEditorSupport;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.WebDataBinder;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.InitBinder;
import org.trammel.calc.units.TypedNumber;

/**
 * Figures of form fields, as people type them: decimal comma or point, true minus, pasted spaces. An editor and not a
 * converter, because a converter that refuses is followed by the framework's own, which reads 1e5.
 */
@ControllerAdvice
class TypedFigures {

    @InitBinder
    void figures(WebDataBinder binder) {
        binder.registerCustomEditor(BigDecimal.class, new PropertyEditorSupport() {
            @Override
            public void setAsText(String typed) {
                setValue(read(typed));
            }
        });
    }

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
