package org.trammel.shop.orders;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What a customer told about themselves. Kept apart from orders and log, and erased when they ask.
 *
 * @param contact address, telephone, mail, as they gave it
 * @param country two letters of ISO 3166-1
 * @param consentOn the day they agreed that contact data is kept beyond the order, for a recall; null if they did not
 */
public record CustomerDetails(
        String name,
        String contact,
        String country,
        @Nullable LocalDate consentOn) {}
