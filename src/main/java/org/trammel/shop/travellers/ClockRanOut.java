package org.trammel.shop.travellers;

import java.time.Duration;
import org.trammel.shop.records.Act;

/** A window closed before the operation it guards began; published in the transaction that noticed it. */
public record ClockRanOut(Act act, long travellerId, String serial, String part, String code, String name) {

    /**
     * What was done inside a window may reach the service this much after it has closed. The gates close with the
     * window; what follows from its end waits for this, or a hold would refuse what was done in time.
     */
    public static final Duration MAY_ARRIVE_LATE = Duration.ofMinutes(5);
}
