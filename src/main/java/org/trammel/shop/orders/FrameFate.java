package org.trammel.shop.orders;

/** Tells what became of an order's frame in the shop. Implemented by a module that orders does not know: the travellers. */
public interface FrameFate {

    /** Whether the frame was scrapped, so that the order is owed a frame that nobody builds any more. */
    boolean scrapped(OrderSheet order);
}
