package org.trammel.shop.demo;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/**
 * Tells the demo day: each thread that tells a part of the past sets it for itself, and from then on it runs for all.
 */
class DemoClock extends Clock {

    /** Wednesday 18 March 2026, half past eight in the shop. */
    static final Instant MORNING = Instant.parse("2026-03-18T07:30:00Z");

    private final Clock real;
    private final ThreadLocal<@Nullable Instant> told = new ThreadLocal<>();
    private volatile Instant at = MORNING;
    private volatile Instant since;
    private volatile boolean running;

    /** @param real the clock of the machine, which tells how much time passes */
    DemoClock(Clock real) {
        this.real = real;
        this.since = real.instant();
    }

    /** Stands still at an instant for this thread until the next call. */
    void setTo(Instant instant) {
        told.set(instant);
    }

    void pass(Duration duration) {
        setTo(instant().plus(duration));
    }

    /** Runs from an instant on. */
    void runFrom(Instant instant) {
        told.remove();
        at = instant;
        since = real.instant();
        running = true;
    }

    @Override
    public Instant instant() {
        Instant mine = told.get();
        if (mine != null) {
            return mine;
        }
        return running ? at.plus(Duration.between(since, real.instant())).truncatedTo(ChronoUnit.MICROS) : at;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return Clock.fixed(instant(), zone);
    }
}
