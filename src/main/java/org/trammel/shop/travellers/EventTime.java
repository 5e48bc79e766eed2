package org.trammel.shop.travellers;

import java.time.Duration;
import java.time.Instant;
import org.trammel.shop.records.Act;

/** When something happened, as far as two clocks can tell. */
final class EventTime {

    /** A tick kept on a tablet longer than this is no longer believed to tell when its event was. */
    private static final Duration BELIEVED = Duration.ofHours(12);

    private EventTime() {}

    /**
     * The earliest the event can have been: the device's time if it lies before the server's and within twelve hours
     * of it, else the server's. A device that runs ahead never makes an event later than its arrival.
     */
    static Instant earliest(Act act) {
        Instant device = act.deviceAt();
        if (device == null
                || device.isAfter(act.at())
                || device.isBefore(act.at().minus(BELIEVED))) {
            return act.at();
        }
        return device;
    }
}
