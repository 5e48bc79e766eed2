package org.trammel.calc.fastening;

import java.math.BigDecimal;

/**
 * What a hand torque tool may err by where nothing else is known of it.
 *
 * <p>6 % of the torque up to and at 10 N·m, 4 % above. Source: ISO 6789-1:2017, clause on the maximum permissible
 * deviation, from memory; there the boundary is the greatest torque of the tool, and some types have 6 % throughout. Here it
 * is the torque that is set, which is never more lenient than 4 % for a tool of 6 % below 10 N·m. A tool of the other types
 * carries its own figure.
 */
public final class ToolError {

    private static final BigDecimal BOUNDARY_Nm = BigDecimal.TEN;
    private static final BigDecimal SMALL_percent = BigDecimal.valueOf(6);
    private static final BigDecimal LARGE_percent = BigDecimal.valueOf(4);

    private ToolError() {}

    /** @param set_Nm what the tool is set to, or reads */
    public static BigDecimal percent(BigDecimal set_Nm) {
        return set_Nm.compareTo(BOUNDARY_Nm) <= 0 ? SMALL_percent : LARGE_percent;
    }
}
