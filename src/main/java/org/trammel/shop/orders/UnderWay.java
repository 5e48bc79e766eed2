package org.trammel.shop.orders;

import java.util.List;

/**
 * Tells what is running for an order, so that nobody cancels it blindly. Implemented by modules that orders does not
 * know, such as the travellers.
 */
public interface UnderWay {

    /** One short sentence for each thing that runs; empty if nothing does. */
    List<String> of(OrderSheet order);
}
