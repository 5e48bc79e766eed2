package org.trammel.shop.stations;

import java.math.BigDecimal;

/**
 * A place in the shop where operations are done.
 *
 * @param code short code that routes name, such as "3"
 * @param wipLimit how many frames may be there at once
 * @param paperOnly no tablet stands there: the work is done from a printed sheet and entered outside
 */
public record Station(String code, String name, int wipLimit, BigDecimal productiveHoursPerWeek, boolean paperOnly) {}
