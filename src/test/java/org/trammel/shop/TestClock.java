package org.trammel.shop;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicReference;

/** The application's clock in tests: it stands still until a test moves it, and is set back before each test. */
public final class TestClock extends Clock {

    /** Where every test begins: a Wednesday morning in the shop. */
    public static final Instant START = Instant.parse("2026-03-18T07:30:00Z");

    private final AtomicReference<Instant> now = new AtomicReference<>(START);

    public void setTo(Instant instant) {
        now.set(instant);
    }

    public void pass(Duration duration) {
        now.updateAndGet(before -> before.plus(duration));
    }

    @Override
    public Instant instant() {
        return now.get();
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        Clock still = this;
        return new Clock() {
            @Override
            public Instant instant() {
                return still.instant();
            }

            @Override
            public ZoneId getZone() {
                return zone;
            }

            @Override
            public Clock withZone(ZoneId other) {
                return still.withZone(other);
            }
        };
    }
}
