package org.trammel.shop.ovens;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.ThermocoupleRole;

/**
 * A thermocouple in an oven.
 *
 * @param removedAt null while it is there
 * @param removedWhy empty while it is there
 */
public record Fitted(
        long id,
        String code,
        ThermocoupleRole role,
        Instant fittedAt,
        @Nullable Instant removedAt,
        String removedWhy) {

    /** The role as people say it. */
    public String roleWord() {
        return word(role);
    }

    static String word(ThermocoupleRole role) {
        return switch (role) {
            case CONTROL -> "control";
            case LOAD -> "load";
            case OVER_TEMPERATURE -> "over-temperature";
        };
    }

    /** Whether it was in the oven at that instant. */
    public boolean thereAt(Instant at) {
        return !fittedAt.isAfter(at) && (removedAt == null || removedAt.isAfter(at));
    }
}
