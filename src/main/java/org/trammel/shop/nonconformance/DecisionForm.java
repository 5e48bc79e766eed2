package org.trammel.shop.nonconformance;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.TypedDay;
import org.trammel.calc.units.TypedNumber;
import org.trammel.shop.records.Refusal;

/** A decision as it was typed. */
record DecisionForm(
        @Nullable String decision,
        @Nullable String words,
        @Nullable String from,
        @Nullable String limits,
        @Nullable String expiresOn,
        @Nullable Boolean changesWhatWasOrdered,
        @Nullable String customerAgreement,
        @Nullable Boolean beyondLimit,
        @Nullable String hours,
        @Nullable String materialCost,
        @Nullable Set<Long> stillValid,
        @Nullable Boolean confirm) {

    private static final String WHAT = "The decision was not put forward.";

    Proposal proposal() {
        return new Proposal(
                chosen(),
                words == null ? "" : words.strip(),
                none(from),
                none(limits),
                day(),
                Boolean.TRUE.equals(changesWhatWasOrdered),
                none(customerAgreement),
                Boolean.TRUE.equals(beyondLimit),
                number("hours", hours),
                number("materialCost", materialCost),
                stillValid == null ? Set.of() : stillValid);
    }

    private Decision chosen() {
        try {
            return Decision.valueOf(decision == null ? "" : decision);
        } catch (IllegalArgumentException unknown) {
            throw Refusal.input("decision", WHAT, "No decision is chosen.", "Choose what becomes of it.");
        }
    }

    private @Nullable LocalDate day() {
        if (none(expiresOn) == null) {
            return null;
        }
        TypedDay typed = TypedDay.of(expiresOn);
        if (typed instanceof TypedDay.Read read) {
            return read.day();
        }
        throw Refusal.input("expiresOn", WHAT, ((TypedDay.Unreadable) typed).reason(), "Enter it as 2026-12-31.");
    }

    private static @Nullable BigDecimal number(String field, @Nullable String typed) {
        if (none(typed) == null) {
            return null;
        }
        TypedNumber read = TypedNumber.of(typed);
        if (read instanceof TypedNumber.Read number) {
            return number.value();
        }
        throw Refusal.input(
                field,
                WHAT,
                ((TypedNumber.Unreadable) read).reason(),
                "Enter a number such as 1,5, or leave it empty.");
    }

    private static @Nullable String none(@Nullable String words) {
        return words == null || words.isBlank() ? null : words.strip();
    }
}
