package org.trammel.shop.stations;

import java.time.LocalDate;

/**
 * A jig of a station.
 *
 * @param checkedOn day of its last check
 * @param dueOn last day before the next check is due; a date past warns, it does not block
 * @param stopped the QA lead has stopped it: nothing may be set up in it
 */
public record Jig(String code, String stationCode, LocalDate checkedOn, LocalDate dueOn, boolean stopped) {

    /** Whether the next check is overdue. */
    public boolean overdue(LocalDate on) {
        return on.isAfter(dueOn);
    }
}
