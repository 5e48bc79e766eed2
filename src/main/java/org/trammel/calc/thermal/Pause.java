package org.trammel.calc.thermal;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Time in which a clock stood, as while a quenched frame lies in cold storage.
 *
 * @param from when it stopped
 * @param until when it ran on, or null while it stands
 */
public record Pause(Instant from, @Nullable Instant until) {

    public Pause {
        if (until != null && until.isBefore(from)) {
            throw new IllegalArgumentException("A pause ends after it began: " + from + " to " + until);
        }
    }
}
