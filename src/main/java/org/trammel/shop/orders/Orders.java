package org.trammel.shop.orders;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.trammel.shop.records.Act;

/** The orders of the shop. */
@Service
public class Orders {

    /**
     * One order.
     *
     * @throws org.trammel.shop.records.Refusal if there is none with that id
     */
    public OrderSheet byId(long orderId) {
        throw new UnsupportedOperationException("being built");
    }

    /** The order with that number, such as O-101. */
    public Optional<OrderSheet> byNumber(String number) {
        throw new UnsupportedOperationException("being built");
    }

    /** Every order whose frame the shop still owes, by promised date. */
    public List<OrderSheet> open() {
        throw new UnsupportedOperationException("being built");
    }

    /**
     * The serial of the order's frame: the next free one, or the one it already has (a returned frame keeps its own).
     * Called at release, in the same transaction.
     *
     * @return stored form such as AV26101H
     */
    public String assignSerial(Act act, long orderId) {
        throw new UnsupportedOperationException("being built");
    }

    /** The traveller was released: approved, or in work for a later revision, to in work. */
    public OrderSheet began(Act act, long orderId, long designRevisionId, String routeCode) {
        throw new UnsupportedOperationException("being built");
    }

    /** The last gate before sending is signed: in work to ready to ship. */
    public OrderSheet finished(Act act, long orderId) {
        throw new UnsupportedOperationException("being built");
    }

    /** A gate was opened again after the frame was finished: ready to ship back to in work. */
    public OrderSheet reopened(Act act, long orderId) {
        throw new UnsupportedOperationException("being built");
    }

    /** The frame left: ready to ship to shipped. */
    public OrderSheet shipped(Act act, long orderId) {
        throw new UnsupportedOperationException("being built");
    }

    /**
     * Adds to what the order cost so far.
     *
     * @param hours hours of work, null if none
     * @param amount in the shop's currency, null if none
     * @param reason in a few words; kept beside the log, not in it
     */
    public void addCost(
            Act act,
            long orderId,
            CostKind kind,
            @Nullable BigDecimal hours,
            @Nullable BigDecimal amount,
            String reason) {
        throw new UnsupportedOperationException("being built");
    }
}
