package org.trammel.shop.drift;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A watched axis.
 *
 * @param by what its chart follows
 * @param of which one: a jig's code, a welder's initials, a tube set as the lots that are in it
 * @param code of the characteristic, such as 080-3
 * @param unit of its readings
 * @param scaled whether the chart shows shares of the half tolerance; otherwise deviations from the nominal in the unit
 */
public record Series(long id, Factor by, String of, String code, String name, String unit, boolean scaled) {

    /** What the chart is in, in words. */
    public String chartUnit() {
        return scaled ? "share of the half tolerance" : unit;
    }

    /** The jig it watches; null if it follows something else. */
    public @Nullable String jig() {
        return by == Factor.JIG ? of : null;
    }

    /** Whether a reading is one of this series. */
    boolean takes(Point point) {
        return unit.equals(point.unit()) && Objects.equals(of, point.level(by));
    }
}
