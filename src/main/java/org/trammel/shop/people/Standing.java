package org.trammel.shop.people;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Where a person stands with a qualification on a day.
 *
 * @param kind code of the qualification, such as "WELD:AL:141"
 * @param until last day it holds; null if it has no end or was never held
 */
public record Standing(String kind, State state, @Nullable LocalDate until) {

    /** What a qualification is worth on a day. */
    public enum State {
        VALID,
        /** Within its expiry, but the six-month confirmation has run out. */
        CONFIRMATION_LAPSED,
        EXPIRED,
        /** Taken back before its expiry. */
        ENDED,
        NOT_HELD
    }

    public boolean valid() {
        return state == State.VALID;
    }
}
