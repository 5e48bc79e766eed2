package org.trammel.shop.orders;

import org.trammel.shop.records.Act;

/** Something happened to an order; published in the transaction that did it. */
public sealed interface OrderEvent {

    Act act();

    long orderId();

    /** Called off: whatever runs for it must stop. */
    record Cancelled(Act act, long orderId) implements OrderEvent {}

    /** A part of the customer's own came and was measured. */
    record OwnPartArrived(Act act, long orderId, long partId) implements OrderEvent {}
}
