package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/**
 * What is entered of an oven.
 *
 * @param purposes programmes of which it may run; one or more
 */
public record NewOven(
        String what,
        Set<Purpose> purposes,
        @Nullable BigDecimal uniformity_K,
        @Nullable BigDecimal length_mm,
        @Nullable BigDecimal width_mm,
        @Nullable BigDecimal height_mm,
        @Nullable BigDecimal most_kg) {

    public NewOven {
        purposes = purposes.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(purposes));
    }

    private static final BigDecimal LARGEST_MM = BigDecimal.valueOf(20_000);
    private static final BigDecimal LARGEST_KG = BigDecimal.valueOf(10_000);
    private static final BigDecimal LARGEST_K = BigDecimal.valueOf(50);

    NewOven checked(String deed) {
        if (purposes.isEmpty()) {
            throw Refusal.input(
                    "purposes",
                    deed,
                    "It is not said what it is for.",
                    "Tick what may be done in it: one thing or more.");
        }
        return new NewOven(
                TypedText.line("what", "What it does", deed, what, 200),
                purposes,
                between("uniformity", "The uniformity", deed, uniformity_K, LARGEST_K, " K"),
                whole("length", "The length inside", deed, length_mm),
                whole("width", "The width inside", deed, width_mm),
                whole("height", "The height inside", deed, height_mm),
                between("mass", "The greatest mass of a load", deed, most_kg, LARGEST_KG, " kg"));
    }

    private static BigDecimal whole(String field, String what, String deed, @Nullable BigDecimal typed) {
        BigDecimal value = between(field, what, deed, typed, LARGEST_MM, " mm");
        if (value.stripTrailingZeros().scale() > 0) {
            throw Refusal.input(
                    field, deed, what + ", " + value + " mm, is no whole number.", "Enter whole millimetres.");
        }
        return value;
    }

    private static BigDecimal between(
            String field, String what, String deed, @Nullable BigDecimal value, BigDecimal most, String unit) {
        if (value == null) {
            throw Refusal.input(field, deed, what + " is missing.", "Fill it in.");
        }
        if (value.signum() <= 0 || value.compareTo(most) > 0) {
            throw Refusal.input(
                    field,
                    deed,
                    what + ", " + value.toPlainString() + unit + ", is not above 0 and at most " + most + unit + ".",
                    "Enter it in" + unit + ".");
        }
        return value;
    }
}
