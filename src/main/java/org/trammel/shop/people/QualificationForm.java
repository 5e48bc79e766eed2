package org.trammel.shop.people;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;

/** A qualification as it is entered. A browser sends nothing for a box that is not ticked. */
record QualificationForm(
        @Nullable String kind,
        @Nullable String standard,
        @Nullable String metal,
        @Nullable String process,
        @Nullable String thicknessFromMm,
        @Nullable String thicknessToMm,
        @Nullable String joint,
        @Nullable LocalDate issuedOn,
        @Nullable LocalDate expiresOn,
        @Nullable Boolean sixMonthConfirmation,
        @Nullable LocalDate confirmedOn) {

    private static final String DEED = "The qualification was not entered.";

    Qualification sheet() {
        if (issuedOn == null) {
            throw Refusal.input("issuedOn", DEED, "The day of the test is missing.", "Enter the day it began.");
        }
        return new Qualification(
                0,
                0,
                kind == null ? "" : kind.strip().toUpperCase(Locale.ROOT),
                standard == null ? "" : standard.strip(),
                text("metal", metal, 30),
                text("process", process, 30),
                mm("thicknessFromMm", thicknessFromMm),
                mm("thicknessToMm", thicknessToMm),
                text("joint", joint, 60),
                issuedOn,
                expiresOn,
                Boolean.TRUE.equals(sixMonthConfirmation),
                confirmedOn,
                null);
    }

    private static @Nullable String text(String field, @Nullable String value, int longest) {
        if (value == null || value.isBlank()) {
            return null;
        }
        if (value.strip().length() > longest) {
            throw Refusal.input(field, DEED, "It has more than " + longest + " characters.", "Enter it shorter.");
        }
        return value.strip();
    }

    private static @Nullable BigDecimal mm(String field, @Nullable String value) {
        if (value == null || value.isBlank()) {
            return null;
        }
        String plain = value.strip().replace(',', '.');
        if (!plain.matches("\\d{1,3}(\\.\\d{1,2})?")) {
            throw Refusal.input(
                    field,
                    DEED,
                    "A thickness is a figure in mm with at most two decimals.",
                    "Enter it such as 0,7 or leave it out.");
        }
        return new BigDecimal(plain);
    }
}
