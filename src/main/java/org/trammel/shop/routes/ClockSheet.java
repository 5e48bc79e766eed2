package org.trammel.shop.routes;

import java.util.List;

/**
 * A clock that runs whether anybody looks or not.
 *
 * @param code its code in the route, such as COLD-SET
 * @param startedBy code of the operation whose finish starts it, unless a step of that operation names this clock
 * @param gates codes of the operations it closes (a window that is past) or keeps shut (a waiting time not yet over)
 * @param source where the time comes from; "shop default" until the QA lead owns it
 */
public record ClockSheet(
        String code, String name, ClockKind kind, long minutes, String startedBy, List<String> gates, String source) {

    public ClockSheet {
        gates = List.copyOf(gates);
    }
}
