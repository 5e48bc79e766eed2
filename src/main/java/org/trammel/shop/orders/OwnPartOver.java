package org.trammel.shop.orders;

import org.trammel.shop.records.Act;

/** Published when an own part of the customer is no longer awaited: it was given back, or replaced by the shop's. */
public record OwnPartOver(Act act, long orderId) {}
