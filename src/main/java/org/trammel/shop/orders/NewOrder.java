package org.trammel.shop.orders;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An order to enter.
 *
 * @param number such as O-042; null for the next free one
 * @param customerId a customer known already; null for a new one
 * @param customer details of a new customer; null for one known already
 * @param price in the shop's currency; null until it is agreed
 * @param promised null until a date is promised
 * @param percentile of 100 such promises how many are meant to be kept; null for the shop's setting
 * @param returnedSerial serial of a frame that came back and keeps it; null for a new frame
 * @param confirmed unusual numbers were asked about and meant
 */
public record NewOrder(
        @Nullable String number,
        @Nullable Long customerId,
        @Nullable CustomerDetails customer,
        OrderDetails details,
        List<OwnPartDetails> ownParts,
        @Nullable BigDecimal price,
        @Nullable LocalDate promised,
        @Nullable BigDecimal percentile,
        @Nullable String returnedSerial,
        boolean confirmed) {

    public NewOrder {
        ownParts = List.copyOf(ownParts);
    }
}
