package org.trammel.calc.geometry;

import java.util.OptionalDouble;

/**
 * A length with the limit that it must keep, where there is one.
 *
 * @param value_mm as computed
 * @param bound which side of the limit it must be on
 * @param limit the limit, in millimetres
 */
public record Clearance(double value_mm, Bound bound, OptionalDouble limit) {

    /** Which side of a limit. */
    public enum Bound {
        AT_LEAST,
        AT_MOST,
        INFORMATION
    }

    static Clearance atLeast(double value_mm, double limit_mm) {
        return new Clearance(value_mm, Bound.AT_LEAST, OptionalDouble.of(limit_mm));
    }

    static Clearance atMost(double value_mm, double limit_mm) {
        return new Clearance(value_mm, Bound.AT_MOST, OptionalDouble.of(limit_mm));
    }

    static Clearance information(double value_mm) {
        return new Clearance(value_mm, Bound.INFORMATION, OptionalDouble.empty());
    }

    /** What is left to the limit, in millimetres; below 0 where it is not kept. */
    public OptionalDouble margin() {
        return limit.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        bound == Bound.AT_LEAST ? value_mm - limit.getAsDouble() : limit.getAsDouble() - value_mm);
    }

    /** Whether the limit is kept; exactly on it is. */
    public boolean isMet() {
        return limit.isEmpty() || margin().getAsDouble() >= 0;
    }
}
