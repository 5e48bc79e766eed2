package org.trammel.shop.yields;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What all gates let through since a day.
 *
 * @param rolled share of frames that pass every gate at the first attempt; null without a gate
 * @param reworkHours of a frame over all gates, on average
 * @param cost the same in the shop's currency
 * @param hourCost setting it was reckoned with, currency per h
 * @param words where most hours go; empty without a gate
 */
public record YieldSheet(
        LocalDate since,
        List<GateLine> gates,
        @Nullable Double rolled,
        double reworkHours,
        double cost,
        BigDecimal hourCost,
        String words) {}
