package org.trammel.shop.travellers;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.routes.ClockKind;

/** A clock of a frame as a screen shows it. */
public record ClockView(
        String code,
        String name,
        ClockKind kind,
        ClockState state,
        long minutes,
        String startedBy,
        List<String> gates,
        @Nullable Instant startedAt,
        @Nullable Instant endsAt,
        @Nullable Instant stoppedAt) {

    static ClockView of(FrameClock clock) {
        return new ClockView(
                clock.code(),
                clock.name(),
                clock.kind(),
                clock.state(),
                clock.minutes(),
                clock.startedBy(),
                clock.gates(),
                clock.startedAt(),
                clock.endsAt(),
                clock.stoppedAt());
    }

    /** True while it stands still, as in a cold store; it has no end then. */
    public boolean stands() {
        return stoppedAt != null;
    }

    /** True if it is a window that is closed at that instant. */
    public boolean closedAt(Instant at) {
        return kind == ClockKind.WINDOW
                && (state == ClockState.RUN_OUT || state == ClockState.RUNNING && endsAt != null && at.isAfter(endsAt));
    }

    /** True if it is a waiting time that is not over at that instant. */
    public boolean waitingAt(Instant at) {
        return kind == ClockKind.WAIT && state == ClockState.RUNNING && endsAt != null && at.isBefore(endsAt);
    }

    /** True while it runs and is open at that instant. */
    public boolean openAt(Instant at) {
        return state == ClockState.RUNNING && endsAt != null && !at.isAfter(endsAt);
    }
}
