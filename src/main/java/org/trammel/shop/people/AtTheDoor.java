package org.trammel.shop.people;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The device a request comes from and who is at it, whether still signed on or locked out by time.
 *
 * @param lastDoer who was at it before it locked; null if nobody or if they signed off
 */
record AtTheDoor(
        long deviceId,
        String deviceName,
        boolean tablet,
        List<String> stations,
        @Nullable SignedOn signedOn,
        @Nullable Person lastDoer) {

    /** Request attribute that carries it to the sign-on pages. */
    static final String ATTRIBUTE = "trammel.door";
}
