package org.trammel.shop.people;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Guesses counted for one subject: somebody's PIN, a name typed at a desk, a device, an address. */
@Entity
@Table(name = "guess_count")
class GuessCount {

    static final int LOCKS_AFTER = 10;

    @Id
    private String subject;

    @Column(nullable = false)
    private int failures;

    @Column(name = "last_at", nullable = false)
    private Instant lastAt;

    @Column(name = "open_from", nullable = false)
    private Instant openFrom;

    @Column(name = "locked_at")
    private @Nullable Instant lockedAt;

    protected GuessCount() {}

    /** The delay after so many failures in a row: none for slips of the finger, then doubling, ten minutes at most. */
    static Duration delayAfter(int failures) {
        if (failures < 3) {
            return Duration.ZERO;
        }
        long seconds = 5L << Math.min(failures - 3, 10);
        return Duration.ofSeconds(Math.min(seconds, 600));
    }

    boolean locked() {
        return lockedAt != null;
    }

    boolean closed(Instant at) {
        return at.isBefore(openFrom);
    }

    Instant openFrom() {
        return openFrom;
    }

    int failures() {
        return failures;
    }

    String subject() {
        return subject;
    }

    @Nullable
    Instant lockedAt() {
        return lockedAt;
    }

    /** Counts a guess at somebody's secret; the tenth in a row locks it. */
    void countSecret(Instant at) {
        failures++;
        lastAt = at;
        openFrom = at.plus(delayAfter(failures));
        if (failures >= LOCKS_AFTER) {
            lockedAt = at;
        }
    }

    /**
     * Counts a guess from a place. Places share their people, so that slips of several do not slow anybody, a quiet
     * quarter of an hour forgets, and a place is never locked.
     */
    void countPlace(Instant at) {
        if (Duration.between(lastAt, at).toMinutes() >= 15) {
            failures = 0;
        }
        failures++;
        lastAt = at;
        openFrom = at.plus(delayAfter(failures - 3));
    }

    void forgetAll(Instant at) {
        failures = 0;
        openFrom = at;
        lockedAt = null;
    }

    void forgetOne(Instant at) {
        failures = Math.max(0, failures - 1);
        openFrom = at;
    }
}
