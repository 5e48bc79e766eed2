package org.trammel.shop.inspection;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.people.StaysAsItIs;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** A frame that was measured with a gauge found wrong, and what came of it. */
@Entity
@IdClass(RejudgedFrameKey.class)
@Table(name = "rejudged_frame")
class RejudgedFrame {

    @Id
    @Column(name = "rejudgement_id")
    private long rejudgementId;

    @Id
    private String serial;

    private int place;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private FrameOutcome outcome;

    private long readings;

    @Column(name = "to_measure")
    private long toMeasure;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private @Nullable FrameResult result;

    @Column(name = "result_words_id")
    private @Nullable Long resultWordsId;

    @Column(name = "result_by")
    private @Nullable Long resultBy;

    @Column(name = "result_at")
    private @Nullable Instant resultAt;

    @Version
    private long version;

    protected RejudgedFrame() {}

    RejudgedFrame(long rejudgementId, String serial) {
        this.rejudgementId = rejudgementId;
        this.serial = serial;
        turn(FrameOutcome.CLEARED);
    }

    /** Takes further readings; a frame is as bad as its worst reading. */
    void take(long more, long moreToMeasure, boolean left) {
        readings += more;
        toMeasure += moreToMeasure;
        if (toMeasure > 0) {
            turn(left ? FrameOutcome.CONTACT_OWNER : FrameOutcome.MEASURE_AGAIN);
        }
    }

    private void turn(FrameOutcome next) {
        outcome = next;
        place = next.place();
    }

    void requireWaits(String not) {
        if (result != null) {
            throw Refusal.stale(not, "It has one: " + result.word() + ".", "Look at it as it is now.");
        }
        if (outcome == FrameOutcome.CLEARED) {
            throw Refusal.state(not, "It is cleared by calculation.", "Nothing is to be done about it.");
        }
    }

    void settle(Act act, FrameResult came, long wordsId) {
        requireWaits("The frame was not given its result.");
        result = came;
        resultWordsId = wordsId;
        resultBy = act.by();
        resultAt = act.at();
    }

    /** Whether it still waits for a result. */
    boolean waits() {
        return outcome != FrameOutcome.CLEARED && result == null;
    }

    String serial() {
        return serial;
    }

    FrameOutcome outcome() {
        return outcome;
    }

    long rejudgementId() {
        return rejudgementId;
    }

    @Nullable
    FrameResult result() {
        return result;
    }

    @Nullable
    Long resultWordsId() {
        return resultWordsId;
    }

    RejudgedFrameLine line(@Nullable String words, @Nullable StaysAsItIs decided) {
        return new RejudgedFrameLine(
                serial, outcome, readings, toMeasure, result, words, resultBy, resultAt, decided, waits());
    }
}
