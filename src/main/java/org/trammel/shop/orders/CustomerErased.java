package org.trammel.shop.orders;

import org.trammel.shop.records.Act;

/**
 * A customer asked to be erased: whoever keeps what they said about a frame erases it in the same act.
 *
 * @param serial one frame that was built for them
 */
public record CustomerErased(Act act, String serial) {}
