package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A survey or an accuracy test.
 *
 * @param thermocouple of an accuracy test
 * @param dueOn last day on which it stands; null where the oven failed it
 * @param lowest_K of a survey, how much below the set temperature the coldest place was; below 0
 * @param highest_K the hottest, above 0
 * @param error_K of an accuracy test, how much too high it read
 * @param at_degC temperature it was done at
 */
public record OvenTest(
        long id,
        TestKind kind,
        @Nullable String thermocouple,
        Instant testedAt,
        @Nullable LocalDate dueOn,
        boolean good,
        @Nullable BigDecimal lowest_K,
        @Nullable BigDecimal highest_K,
        @Nullable BigDecimal error_K,
        BigDecimal at_degC,
        String report,
        long by) {}
