package org.trammel.shop.welding;

import java.time.Instant;
import java.util.List;
import org.trammel.calc.welding.WeldLimit;

/**
 * A table of limits of imperfections.
 *
 * @param by id of the person who entered it; 0 for what the program came with
 */
public record LimitSet(
        String code,
        String what,
        String standard,
        String edition,
        String source,
        List<WeldLimit> lines,
        long by,
        Instant at) {

    /** As a sheet names it beside a verdict. */
    public String called() {
        return standard + ":" + edition;
    }
}
