package org.trammel.shop.travellers;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.routes.ClockKind;
import org.trammel.shop.routes.ClockSheet;

/** A clock of one frame: a window in which the work of an operation must begin, or a time it must wait. */
@Entity
@Table(name = "frame_clock")
class FrameClock {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "traveller_id")
    private long travellerId;

    private String code;
    private String name;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private ClockKind kind;

    private long minutes;

    @Column(name = "started_by")
    private String startedBy;

    private String gates;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private ClockState state;

    @Column(name = "started_at")
    private @Nullable Instant startedAt;

    @Column(name = "ends_at")
    private @Nullable Instant endsAt;

    /** Since when it stands still, as in a cold store, and what was left of it then. */
    @Column(name = "stopped_at")
    private @Nullable Instant stoppedAt;

    @Column(name = "left_ms")
    private @Nullable Long left_ms;

    /** How long it stood in all. */
    @Column(name = "stood_ms")
    private long stood_ms;

    @Column(name = "started_by_step_id")
    private @Nullable Long startedByStepId;

    @Version
    private long version;

    protected FrameClock() {}

    FrameClock(long travellerId, ClockSheet sheet) {
        this.travellerId = travellerId;
        this.code = sheet.code();
        this.name = sheet.name();
        this.kind = sheet.kind();
        this.minutes = sheet.minutes();
        this.startedBy = sheet.startedBy();
        this.gates = String.join(",", sheet.gates());
        this.state = ClockState.PLANNED;
    }

    /**
     * Starts it. When the event's time is in doubt, a window closes on the earliest possible start and a waiting time
     * ends on the latest. A tick taken back and given again is no new event: a window keeps its first start until its
     * operation is done over.
     */
    void start(Instant earliest, Instant latest, @Nullable Long stepId) {
        Instant from = kind == ClockKind.WINDOW ? firstStart(earliest, stepId) : latest;
        stood_ms = from.equals(startedAt) ? stood_ms : 0;
        stoppedAt = null;
        left_ms = null;
        state = ClockState.RUNNING;
        startedAt = from;
        endsAt = end();
        startedByStepId = stepId;
    }

    private @Nullable Instant end() {
        return startedAt == null
                ? null
                : startedAt.plus(Duration.ofMinutes(minutes)).plusMillis(stood_ms);
    }

    /** Stands still from now on; one that ran out or is over does not. */
    void stand(Instant at) {
        if (running() && endsAt != null && !at.isAfter(endsAt)) {
            stoppedAt = at;
            left_ms = Duration.between(at, endsAt).toMillis();
            endsAt = null;
        }
    }

    /**
     * Runs on.
     *
     * @param cold whether it was cold enough to the end; else a window has run all the time, and a waiting time stood
     */
    void runOn(Instant at, boolean cold) {
        if (stoppedAt != null && left_ms != null) {
            boolean stood = cold || kind == ClockKind.WAIT;
            stood_ms += stood ? Duration.between(stoppedAt, at).toMillis() : 0;
            endsAt = (stood ? at : stoppedAt).plusMillis(left_ms);
            stoppedAt = null;
            left_ms = null;
        }
    }

    boolean stands() {
        return stoppedAt != null;
    }

    private Instant firstStart(Instant now, @Nullable Long stepId) {
        boolean again = startedAt != null && (startedByStepId == null || startedByStepId.equals(stepId));
        return again && startedAt.isBefore(now) ? startedAt : now;
    }

    /** The same clock, not yet started, for another traveller. */
    FrameClock planned(long travellerId) {
        FrameClock copy = new FrameClock();
        copy.travellerId = travellerId;
        copy.code = code;
        copy.name = name;
        copy.kind = kind;
        copy.minutes = minutes;
        copy.startedBy = startedBy;
        copy.gates = gates;
        copy.state = ClockState.PLANNED;
        return copy;
    }

    /** Goes on where the clock of an older revision stands; how long it runs is what the newer one says. */
    void goOnFrom(FrameClock old) {
        state = old.state == ClockState.RUN_OUT && minutes != old.minutes ? ClockState.RUNNING : old.state;
        startedAt = old.startedAt;
        stood_ms = old.stood_ms;
        endsAt = end();
        if (old.stoppedAt != null) {
            stand(old.stoppedAt);
        }
    }

    /** The event that started it was taken back; when it was is not forgotten. */
    void takeBack() {
        state = ClockState.PLANNED;
    }

    /** The operation that starts it is done over: its next start is a new event. */
    void startOver() {
        state = ClockState.PLANNED;
        startedAt = null;
        endsAt = null;
        stoppedAt = null;
        left_ms = null;
        stood_ms = 0;
        startedByStepId = null;
    }

    void meet() {
        state = ClockState.MET;
    }

    /** An operation it gates is done over while the one that starts it is not: it is judged once more. */
    void judgeAgain() {
        if (state == ClockState.MET) {
            state = ClockState.RUNNING;
        }
    }

    void runOut() {
        state = ClockState.RUN_OUT;
    }

    boolean running() {
        return state == ClockState.RUNNING;
    }

    /** True if the window is closed at that instant; the end itself is still inside. */
    boolean closedAt(Instant at) {
        return kind == ClockKind.WINDOW
                && (state == ClockState.RUN_OUT || running() && endsAt != null && at.isAfter(endsAt));
    }

    /** True if the waiting time is not over at that instant. */
    boolean waitingAt(Instant at) {
        return kind == ClockKind.WAIT && running() && endsAt != null && at.isBefore(endsAt);
    }

    /** Whether it is the last operation it guards, the one that meets it. */
    boolean lastGate(String operationCode) {
        List<String> gates = gates();
        return !gates.isEmpty() && gates.get(gates.size() - 1).equals(operationCode);
    }

    boolean gates(String operationCode) {
        return gates().contains(operationCode);
    }

    List<String> gates() {
        return gates.isEmpty() ? List.of() : List.of(gates.split(","));
    }

    long id() {
        return id;
    }

    long travellerId() {
        return travellerId;
    }

    String code() {
        return code;
    }

    String name() {
        return name;
    }

    ClockKind kind() {
        return kind;
    }

    long minutes() {
        return minutes;
    }

    String startedBy() {
        return startedBy;
    }

    ClockState state() {
        return state;
    }

    @Nullable
    Instant stoppedAt() {
        return stoppedAt;
    }

    @Nullable
    Instant startedAt() {
        return startedAt;
    }

    @Nullable
    Instant endsAt() {
        return endsAt;
    }

    @Nullable
    Long startedByStepId() {
        return startedByStepId;
    }
}
