package org.trammel.calc.thermal;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * State of a clock that keeps a gate: a window in which something must be done, or a waiting time before it may be done.
 *
 * <p>Doubt about the start always counts against the frame: a window closes on the earliest possible start, a waiting
 * time ends on the latest. Time in a pause does not count; pauses that overlap count once. The last instant of a window
 * belongs to it, and a waiting time is over at its last instant.
 */
public sealed interface Countdown {

    /** The window is open. */
    record Open(Duration left, Instant closes) implements Countdown {}

    /** The window is open and stands still. */
    record OpenPaused(Duration left) implements Countdown {}

    /** The window closed. */
    record Closed(Instant since) implements Countdown {}

    /** The waiting time runs. */
    record Waiting(Duration left, Instant ends) implements Countdown {}

    /** The waiting time stands still. */
    record WaitingPaused(Duration left) implements Countdown {}

    /** The waiting time is over. */
    record Over(Instant since) implements Countdown {}

    /** The clock starts later than now: a time was told wrongly. */
    record NotStarted(Instant starts) implements Countdown {}

    /** Whether the gate lets through as far as this clock goes. */
    default boolean letsThrough() {
        return this instanceof Open || this instanceof OpenPaused || this instanceof Over;
    }

    /**
     * State of a window.
     *
     * @param length how long it is open
     * @param now the present moment
     */
    static Countdown window(DoubtfulStart start, Duration length, List<Pause> pauses, Instant now) {
        Instant from = start.earliest();
        if (from.isAfter(now)) {
            return new NotStarted(from);
        }
        RunSoFar run = RunSoFar.of(from, length, pauses, now);
        if (run.left().isNegative()) {
            return new Closed(run.ends());
        }
        return run.standing() ? new OpenPaused(run.left()) : new Open(run.left(), run.ends());
    }

    /**
     * State of a waiting time.
     *
     * @param length how long to wait
     * @param now the present moment
     */
    static Countdown waiting(DoubtfulStart start, Duration length, List<Pause> pauses, Instant now) {
        Instant from = start.latest();
        if (from.isAfter(now)) {
            return new NotStarted(from);
        }
        RunSoFar run = RunSoFar.of(from, length, pauses, now);
        if (run.left().isNegative() || run.left().isZero()) {
            return new Over(run.ends());
        }
        return run.standing() ? new WaitingPaused(run.left()) : new Waiting(run.left(), run.ends());
    }
}
