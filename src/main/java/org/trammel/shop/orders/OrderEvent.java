package org.trammel.shop.orders;

import org.trammel.shop.records.Act;

/** Something happened to an order; published in the transaction that did it, with the chains of order and frame open. */
public sealed interface OrderEvent {

    Act act();

    long orderId();

    /** Called off: whatever runs for it must stop. */
    record Cancelled(Act act, long orderId) implements OrderEvent {}
}
