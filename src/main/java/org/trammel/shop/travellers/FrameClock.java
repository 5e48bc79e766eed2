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
        state = ClockState.RUNNING;
        startedAt = from;
        endsAt = from.plus(Duration.ofMinutes(minutes));
        startedByStepId = stepId;
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
        endsAt = startedAt == null ? null : startedAt.plus(Duration.ofMinutes(minutes));
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
