package org.trammel.calc.thermal;

import java.time.Duration;
import java.time.Instant;

/**
 * When a clock started, as far as it is known: not before the one instant, not after the other.
 *
 * @param earliest the earliest it can have been
 * @param latest the latest it can have been, not before the earliest
 */
public record DoubtfulStart(Instant earliest, Instant latest) {

    public DoubtfulStart {
        if (latest.isBefore(earliest)) {
            throw new IllegalArgumentException("The latest start " + latest + " lies before the earliest " + earliest);
        }
    }

    /** A start known to the instant. */
    public static DoubtfulStart at(Instant instant) {
        return new DoubtfulStart(instant, instant);
    }

    /**
     * A start told by a device whose clock may be wrong.
     *
     * @param deviceAt time the device showed
     * @param deviceAhead how far the device's clock was last seen ahead of the server's; negative if behind
     * @param doubt how far that may be wrong either way
     * @param received when the server received it; the start cannot be later
     */
    public static DoubtfulStart told(Instant deviceAt, Duration deviceAhead, Duration doubt, Instant received) {
        Instant best = deviceAt.minus(deviceAhead);
        Instant earliest = best.minus(doubt.abs());
        Instant latest = best.plus(doubt.abs());
        return new DoubtfulStart(
                earliest.isAfter(received) ? received : earliest, latest.isAfter(received) ? received : latest);
    }

    /** How far the two lie apart. */
    public Duration doubt() {
        return Duration.between(earliest, latest);
    }
}
