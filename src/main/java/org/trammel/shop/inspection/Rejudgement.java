package org.trammel.shop.inspection;

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
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.gauges.GaugeFailed;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** A gauge that was found wrong, and how far what was read with it has been judged again. */
@Entity
@Table(name = "rejudgement")
class Rejudgement {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "gauge_id")
    private long gaugeId;

    @Column(name = "gauge_code")
    private String gaugeCode;

    private String means;

    @Column(name = "last_good_on")
    private @Nullable LocalDate lastGoodOn;

    @Column(name = "found_on")
    private LocalDate foundOn;

    private Instant since;
    private Instant until;
    private @Nullable BigDecimal error;
    private String unit;

    @Column(name = "error_at")
    private @Nullable BigDecimal errorAt;

    private @Nullable BigDecimal least;
    private @Nullable BigDecimal greatest;

    @Column(name = "equal_within_mm")
    private BigDecimal equalWithin_mm;

    private long readings;

    @Column(name = "last_reading_id")
    private long lastReadingId;

    private long judged;

    @Column(name = "reached_id")
    private long reachedId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private RejudgementState state;

    @Column(name = "opened_by")
    private long openedBy;

    @Column(name = "opened_at")
    private Instant openedAt;

    @Column(name = "closed_by")
    private @Nullable Long closedBy;

    @Column(name = "closed_at")
    private @Nullable Instant closedAt;

    @Column(name = "closed_words_id")
    private @Nullable Long closedWordsId;

    @Column(name = "next_act")
    private UUID nextAct;

    @Version
    private long version;

    protected Rejudgement() {}

    /** The readings it is about: how many, and the last of them. */
    record Extent(long readings, long lastReadingId) {

        Extent and(Extent other) {
            return new Extent(readings + other.readings, Math.max(lastReadingId, other.lastReadingId));
        }
    }

    /** Opened, and closed at once where nothing was read with the gauge. */
    Rejudgement(GaugeFailed failed, Instant since, BigDecimal equalWithin_mm, Extent extent) {
        this.gaugeId = failed.gaugeId();
        this.gaugeCode = failed.code();
        this.means = failed.means().stream().sorted().map(String::valueOf).collect(Collectors.joining(","));
        this.lastGoodOn = failed.lastGoodOn();
        this.foundOn = failed.foundOn();
        this.since = since;
        this.until = failed.act().at();
        this.error = failed.error();
        this.unit = failed.unit();
        this.errorAt = failed.errorAt();
        this.least = failed.least();
        this.greatest = failed.greatest();
        this.equalWithin_mm = equalWithin_mm;
        this.readings = extent.readings();
        this.lastReadingId = extent.lastReadingId();
        this.judged = 0;
        this.reachedId = 0;
        this.state = RejudgementState.JUDGING;
        this.openedBy = failed.act().by();
        this.openedAt = failed.act().at();
        this.nextAct = UUID.randomUUID();
        if (extent.readings() == 0) {
            this.state = RejudgementState.CLOSED;
            this.closedBy = Act.SERVICE;
            this.closedAt = failed.act().at();
        }
    }

    static Rejudgement in(RejudgementRepository all, long id) {
        return all.findById(id)
                .orElseThrow(() -> Refusal.missing(
                        "The re-judgement was not found.",
                        "There is none with the number " + number(id) + ".",
                        "Choose one from the list."));
    }

    /** So many more were judged, up to that one. */
    void reach(int more, long readingId) {
        requireState(RejudgementState.JUDGING, "judged further");
        judged += more;
        reachedId = readingId;
        nextAct = UUID.randomUUID();
    }

    void allJudged() {
        requireState(RejudgementState.JUDGING, "judged further");
        state = RejudgementState.OPEN;
    }

    void close(Act act, @Nullable Long wordsId) {
        requireState(RejudgementState.OPEN, "closed");
        state = RejudgementState.CLOSED;
        closedBy = act.by();
        closedAt = act.at();
        closedWordsId = wordsId;
    }

    void requireState(RejudgementState wanted, String done) {
        if (state != wanted) {
            throw Refusal.state(
                    number() + " is not " + done + ".",
                    state == RejudgementState.JUDGING
                            ? judged + " of " + readings + " readings are judged so far."
                            : "It is " + state.word() + ".",
                    state == RejudgementState.JUDGING ? "Wait until all are judged." : "Look at it as it is now.");
        }
    }

    /** What people call it, such as RJ-0003. */
    String number() {
        return number(id);
    }

    static String number(long id) {
        return String.format("RJ-%04d", id);
    }

    long id() {
        return id;
    }

    String gaugeCode() {
        return gaugeCode;
    }

    Set<Long> means() {
        return Arrays.stream(means.split(",")).map(Long::valueOf).collect(Collectors.toSet());
    }

    /** The error it may have had; null if nobody knows it. */
    @Nullable
    GaugeError gaugeError() {
        return least == null || greatest == null
                ? null
                : new GaugeError(gaugeId, gaugeCode, means(), since, until, least, greatest, unit, equalWithin_mm);
    }

    Instant since() {
        return since;
    }

    Instant until() {
        return until;
    }

    long lastReadingId() {
        return lastReadingId;
    }

    long reachedId() {
        return reachedId;
    }

    RejudgementState state() {
        return state;
    }

    /** Id of the act that keeps the next portion; drawn at random, so that nobody can use it up beforehand. */
    UUID nextAct() {
        return nextAct;
    }

    @Nullable
    Long closedWordsId() {
        return closedWordsId;
    }

    /** @param words what was said as it was closed by somebody */
    RejudgementLine line(int frames, int waiting, @Nullable String words) {
        return new RejudgementLine(
                id,
                number(),
                gaugeCode,
                lastGoodOn,
                foundOn,
                error,
                unit,
                errorAt,
                least,
                greatest,
                equalWithin_mm,
                readings,
                judged,
                frames,
                waiting,
                state,
                openedAt,
                closedBy,
                closedAt,
                readings == 0 ? "Nothing was read with it since it was last right." : words);
    }
}
