package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.TypedDay;
import org.trammel.calc.units.TypedNumber;
import org.trammel.shop.records.Refusal;

/** The fields of the forms for lots as they were typed. */
record LotForm(Map<String, String> fields) {

    NewLot lot(String code) {
        return new NewLot(
                code,
                choice(LotKind.class, "kind", "Choose its kind."),
                text("what"),
                orNull("metal"),
                orNull("materialClass"),
                text("grade"),
                text("heat"),
                text("reservedFor").isEmpty() ? null : choice(MetalFamily.class, "reservedFor", "Choose a metal."),
                text("supplier"),
                day("receivedOn"),
                text("expiresOn").isEmpty() ? null : day("expiresOn"),
                figure("quantity"),
                text("unit"));
    }

    String text(String field) {
        return fields.getOrDefault(field, "").strip();
    }

    @Nullable
    String orNull(String field) {
        return text(field).isEmpty() ? null : text(field);
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
        throw refused(field, ((TypedNumber.Unreadable) number).reason(), "Type it again.");
    }

    BigDecimal neededFigure(String field) {
        BigDecimal figure = figure(field);
        if (figure == null) {
            throw refused(field, "Nothing was typed. An empty field is not zero.", "Enter what was measured.");
        }
        return figure;
    }

    LocalDate day(String field) {
        TypedDay typed = TypedDay.of(text(field));
        if (typed instanceof TypedDay.Read read) {
            return read.day();
        }
        throw refused(field, ((TypedDay.Unreadable) typed).reason(), "Enter the day as 2026-03-18.");
    }

    <E extends Enum<E>> E choice(Class<E> of, String field, String instead) {
        try {
            return Enum.valueOf(of, text(field));
        } catch (IllegalArgumentException e) {
            throw refused(field, "Nothing that is known was chosen.", instead);
        }
    }

    private static Refusal refused(String field, String why, String instead) {
        return Refusal.input(field, "This was not recorded.", why, instead);
    }
}
