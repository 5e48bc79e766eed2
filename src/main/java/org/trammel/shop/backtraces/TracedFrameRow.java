package org.trammel.shop.backtraces;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.ovens.Run;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@Entity
@Table(name = "oven_trace_frame")
class TracedFrameRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "trace_id", nullable = false)
    private long traceId;

    @Column(name = "run_id", nullable = false)
    private long runId;

    @Column(name = "traveller_id", nullable = false)
    private long travellerId;

    @Column(nullable = false)
    private String serial;

    @Column(nullable = false)
    private String part;

    @Column(nullable = false)
    private String mark;

    /** Sorts: what is worst stands first. */
    @Column(nullable = false)
    private int place;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private TraceOutcome outcome;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private @Nullable TraceResult result;

    @Column(name = "result_words_id")
    private @Nullable Long resultWordsId;

    @Column(name = "result_by")
    private @Nullable Long resultBy;

    @Column(name = "result_at")
    private @Nullable Instant resultAt;

    @Version
    private long version;

    protected TracedFrameRow() {}

    TracedFrameRow(long traceId, Run.Loaded frame, long runId, TraceOutcome outcome) {
        this.traceId = traceId;
        this.runId = runId;
        this.travellerId = frame.travellerId();
        this.serial = frame.serial();
        this.part = frame.part();
        this.mark = frame.mark();
        turn(outcome);
    }

    /** Told anew, a run may be worse than it seemed; nothing gets better by itself. */
    boolean worsen(TraceOutcome next) {
        if (result != null || next.place() >= place) {
            return false;
        }
        turn(next);
        return true;
    }

    private void turn(TraceOutcome next) {
        outcome = next;
        place = next.place();
    }

    void requireWaits(String deed) {
        if (result != null) {
            throw Refusal.stale(deed, "It has one: " + result.word() + ".", "Look at it as it is now.");
        }
        if (!outcome.asksForAResult()) {
            throw Refusal.state(deed, "It is " + outcome.word() + ".", "Nothing is to be done about it.");
        }
    }

    void settle(Act act, TraceResult came, long wordsId) {
        requireWaits("The frame was not given its result.");
        result = came;
        resultWordsId = wordsId;
        resultBy = act.by();
        resultAt = act.at();
    }

    boolean waits() {
        return outcome.asksForAResult() && result == null;
    }

    long id() {
        return id;
    }

    long traceId() {
        return traceId;
    }

    long runId() {
        return runId;
    }

    long travellerId() {
        return travellerId;
    }

    String serial() {
        return serial;
    }

    TraceOutcome outcome() {
        return outcome;
    }

    @Nullable
    TraceResult result() {
        return result;
    }

    @Nullable
    Long resultWordsId() {
        return resultWordsId;
    }

    OvenTrace.TracedFrame frame(String run, @Nullable Instant shippedAt, String standing, TraceDecisions.Told told) {
        return new OvenTrace.TracedFrame(
                id,
                run,
                serial,
                part,
                mark,
                outcome,
                shippedAt,
                standing,
                result,
                told.resultWords(),
                resultBy,
                resultAt,
                told.decided(),
                waits());
    }
}
