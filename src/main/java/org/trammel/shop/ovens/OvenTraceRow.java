package org.trammel.shop.ovens;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Objects;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@Entity
@Table(name = "oven_trace")
class OvenTraceRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "oven_id", nullable = false)
    private long ovenId;

    @Column(name = "test_id", nullable = false)
    private long testId;

    @Column(nullable = false)
    private String thermocouple;

    @Column(name = "error_k", nullable = false)
    private BigDecimal error_K;

    @Column(name = "last_good_at")
    private @Nullable Instant lastGoodAt;

    @Column(name = "found_at", nullable = false)
    private Instant foundAt;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private OvenTraceState state;

    @Column(name = "widened_words")
    private @Nullable String widenedWords;

    @Column(name = "opened_by", nullable = false)
    private long openedBy;

    @Column(name = "opened_at", nullable = false)
    private Instant openedAt;

    @Column(name = "closed_by")
    private @Nullable Long closedBy;

    @Column(name = "closed_at")
    private @Nullable Instant closedAt;

    @Column(name = "closed_words")
    private @Nullable String closedWords;

    @Version
    private long version;

    protected OvenTraceRow() {}

    OvenTraceRow(long ovenId, OvenTest failed, @Nullable Instant lastGoodAt, Act act) {
        this.ovenId = ovenId;
        this.testId = failed.id();
        this.thermocouple = Objects.requireNonNull(failed.thermocouple());
        this.error_K = Objects.requireNonNull(failed.error_K());
        this.lastGoodAt = lastGoodAt;
        this.foundAt = failed.testedAt();
        this.state = OvenTraceState.OPEN;
        this.openedBy = act.by();
        this.openedAt = act.at();
    }

    void requireOpen(String deed) {
        if (state != OvenTraceState.OPEN) {
            throw Refusal.state(deed, number() + " is closed.", "Look at it as it is now.");
        }
    }

    void close(Act act, String words) {
        requireOpen(number() + " was not closed.");
        state = OvenTraceState.CLOSED;
        closedBy = act.by();
        closedAt = act.at();
        closedWords = words;
    }

    /** The last good test is doubted too; the one before it counts. */
    void widen(@Nullable Instant before, String words) {
        requireOpen(number() + " was not widened.");
        lastGoodAt = before;
        widenedWords = words;
    }

    String number() {
        return OvenTrace.number(id);
    }

    long id() {
        return id;
    }

    long ovenId() {
        return ovenId;
    }

    String thermocouple() {
        return thermocouple;
    }

    BigDecimal error_K() {
        return error_K;
    }

    @Nullable
    Instant lastGoodAt() {
        return lastGoodAt;
    }

    /** From when on its readings are in doubt. */
    Instant since() {
        return lastGoodAt == null ? Instant.EPOCH : lastGoodAt;
    }

    Instant foundAt() {
        return foundAt;
    }

    OvenTrace line(String oven, int frames, int waiting) {
        return new OvenTrace(
                id,
                number(),
                oven,
                thermocouple,
                error_K,
                lastGoodAt,
                foundAt,
                state == OvenTraceState.OPEN,
                widenedWords,
                openedBy,
                openedAt,
                closedBy,
                closedAt,
                closedWords,
                frames,
                waiting);
    }
}
