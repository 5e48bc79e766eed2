package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A survey or accuracy test as it is entered.
 *
 * @param lowest_K of a survey, 0 or below
 * @param highest_K of a survey, 0 or above
 * @param error_K of an accuracy test; above 0 where the thermocouple read too high
 * @param limit_K of an accuracy test, the greatest error that is good; a survey is good within the oven's uniformity
 */
public record NewTest(
        TestKind kind,
        @Nullable String thermocouple,
        Instant testedAt,
        @Nullable LocalDate dueOn,
        @Nullable BigDecimal lowest_K,
        @Nullable BigDecimal highest_K,
        @Nullable BigDecimal error_K,
        @Nullable BigDecimal limit_K,
        @Nullable BigDecimal at_degC,
        @Nullable String report) {

    public static NewTest survey(
            Instant testedAt,
            @Nullable LocalDate dueOn,
            @Nullable BigDecimal lowest_K,
            @Nullable BigDecimal highest_K,
            @Nullable BigDecimal at_degC,
            @Nullable String report) {
        return new NewTest(TestKind.SURVEY, null, testedAt, dueOn, lowest_K, highest_K, null, null, at_degC, report);
    }

    public static NewTest accuracy(
            String thermocouple,
            Instant testedAt,
            @Nullable LocalDate dueOn,
            @Nullable BigDecimal error_K,
            @Nullable BigDecimal limit_K,
            @Nullable BigDecimal at_degC,
            @Nullable String report) {
        return new NewTest(
                TestKind.ACCURACY, thermocouple, testedAt, dueOn, null, null, error_K, limit_K, at_degC, report);
    }
}
