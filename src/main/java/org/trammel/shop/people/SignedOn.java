package org.trammel.shop.people;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Who is signed on at the tablet or desk a request comes from. This is the principal.
 *
 * @param person who acts
 * @param second who else is signed on at the same tablet, to witness
 * @param stations codes of the stations the tablet serves; empty at a desk
 * @param locksAt when the sign-on locks unless something is done
 */
public record SignedOn(
        Person person,
        @Nullable Person second,
        long deviceId,
        String deviceName,
        boolean tablet,
        List<String> stations,
        Instant locksAt) {

    public SignedOn {
        stations = List.copyOf(stations);
    }
}
