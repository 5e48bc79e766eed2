package org.trammel.shop.orders;

/** Where an order stands. */
public enum OrderState {
    /** Entered, nothing drawn yet. */
    ORDERED("ordered"),
    /** A drawing is being made or is with the customer. */
    DESIGNING("designing"),
    /** The customer approved a drawing. */
    APPROVED("approved"),
    /** Released to the shop: a traveller runs. */
    IN_WORK("in work"),
    /** Every operation but the sending is signed. */
    READY_TO_SHIP("ready to ship"),
    /** With the customer. */
    SHIPPED("shipped"),
    /** The frame came back; work on it runs under an order of its own. */
    RETURNED("returned"),
    /** Called off. */
    CANCELLED("cancelled");

    private final String word;

    OrderState(String word) {
        this.word = word;
    }

    /** The word people read. */
    public String word() {
        return word;
    }

    /** Whether the shop still owes a frame. */
    public boolean open() {
        return this != SHIPPED && this != RETURNED && this != CANCELLED;
    }
}
