package org.trammel.shop.inspection;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A re-judgement as the screens and the programs read it.
 *
 * @param lastGoodOn day the gauge was last known to be right; null if it never was
 * @param error what it read too high by when it was found wrong; null if no figure was found
 * @param unit of error, errorAt, least and greatest
 * @param least most it may have read too low by, 0 or less; null if nobody knows
 * @param greatest most it may have read too high by, 0 or more; null if nobody knows
 * @param equalWithin_mm heights so near each other were taken to share one error
 * @param readings how many were taken with it since it was last right, through set-ups too
 * @param judged how many of them are judged again so far
 * @param frames how many frames they are of, so far
 * @param waiting how many of the frames have no result yet
 */
public record RejudgementLine(
        long id,
        String number,
        String gauge,
        @Nullable LocalDate lastGoodOn,
        LocalDate foundOn,
        @Nullable BigDecimal error,
        String unit,
        @Nullable BigDecimal errorAt,
        @Nullable BigDecimal least,
        @Nullable BigDecimal greatest,
        BigDecimal equalWithin_mm,
        long readings,
        long judged,
        int frames,
        int waiting,
        RejudgementState state,
        Instant openedAt,
        @Nullable Long closedBy,
        @Nullable Instant closedAt,
        @Nullable String closedWords) {}
