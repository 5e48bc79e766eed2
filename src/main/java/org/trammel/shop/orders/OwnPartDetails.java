package org.trammel.shop.orders;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A part of the customer's own that is to be built on.
 *
 * @param what such as fork or shock
 * @param dueOn the day it should come
 */
public record OwnPartDetails(
        String what, String description, @Nullable LocalDate dueOn) {}
