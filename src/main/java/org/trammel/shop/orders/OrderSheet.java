package org.trammel.shop.orders;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One order as other modules read it; holds nothing the customer could ask to be erased.
 *
 * @param number such as O-042
 * @param serial stored form such as AB270423; null until the frame has one
 * @param returnedFrame the serial is an older one: a frame that came back
 * @param promised the date promised last
 * @param percentile the share of cases, of 100, that the promise was meant to keep
 * @param designId the order's design; null until one was begun
 * @param designRevisionId the revision approved or released last; null until one was
 * @param routeCode route it was released on
 * @param country two letters of ISO 3166-1, whose rules hold for the bicycle
 * @param ordered when it was entered
 * @param shipped when it left
 */
public record OrderSheet(
        long id,
        String number,
        @Nullable String serial,
        boolean returnedFrame,
        String description,
        String metal,
        String kind,
        OrderState state,
        @Nullable LocalDate promised,
        @Nullable BigDecimal percentile,
        @Nullable Long designId,
        @Nullable Long designRevisionId,
        @Nullable String routeCode,
        String country,
        Instant ordered,
        @Nullable Instant shipped) {}
