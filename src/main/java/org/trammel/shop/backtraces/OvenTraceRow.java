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
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.ovens.OvenTest;
import org.trammel.shop.ovens.RunDoubts;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.KeptWords;
import org.trammel.shop.records.Refusal;

@Entity
@Table(name = "oven_trace")
class OvenTraceRow {

    private static final String ABOUT_NOTHING = "No run was judged, steered or watched by it since it was last right.";

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

    @Column(name = "widened_words_id")
    private @Nullable Long widenedWordsId;

    @Column(name = "opened_by", nullable = false)
    private long openedBy;

    @Column(name = "opened_at", nullable = false)
    private Instant openedAt;

    @Column(name = "closed_by")
    private @Nullable Long closedBy;

    @Column(name = "closed_at")
    private @Nullable Instant closedAt;

    @Column(name = "closed_words_id")
    private @Nullable Long closedWordsId;

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

    /** @param wordsId what was learnt; null for one about nothing, which is closed as it is opened */
    void close(Act act, @Nullable Long wordsId) {
        requireOpen(number() + " was not closed.");
        state = OvenTraceState.CLOSED;
        closedBy = act.by();
        closedAt = act.at();
        closedWordsId = wordsId;
    }

    /** The last good test is doubted too; the one before it counts. */
    void widen(@Nullable Instant before, long wordsId) {
        requireOpen(number() + " was not widened.");
        lastGoodAt = before;
        widenedWordsId = wordsId;
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

    /** Ids of what was written of it. */
    List<Long> wordsIds() {
        return Stream.of(widenedWordsId, closedWordsId).filter(Objects::nonNull).toList();
    }

    private static @Nullable String shown(@Nullable Long id, Map<Long, KeptWords> texts) {
        KeptWords text = id == null ? null : texts.get(id);
        return text == null ? null : text.shown();
    }

    /** Why it was closed by itself, or what was learnt. */
    private @Nullable String closedWords(Map<Long, KeptWords> texts) {
        return state == OvenTraceState.CLOSED && closedWordsId == null ? ABOUT_NOTHING : shown(closedWordsId, texts);
    }

    RunDoubts.Doubt doubt(boolean cleared) {
        return new RunDoubts.Doubt(id, number(), thermocouple, cleared, state == OvenTraceState.OPEN);
    }

    OvenTrace line(String oven, int frames, int waiting, Map<Long, KeptWords> texts) {
        return new OvenTrace(
                id,
                number(),
                oven,
                thermocouple,
                error_K,
                lastGoodAt,
                foundAt,
                state == OvenTraceState.OPEN,
                shown(widenedWordsId, texts),
                openedBy,
                openedAt,
                closedBy,
                closedAt,
                closedWords(texts),
                frames,
                waiting);
    }
}
