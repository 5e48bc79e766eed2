package org.trammel.shop.inspection;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** One reading judged again. Only added to. */
@Entity
@Immutable
@IdClass(RejudgedKey.class)
@Table(name = "rejudged_reading")
class RejudgedReading {

    @Id
    @Column(name = "rejudgement_id")
    private long rejudgementId;

    @Id
    @Column(name = "reading_id")
    private long readingId;

    private int place;
    private String serial;
    private @Nullable BigDecimal least;
    private @Nullable BigDecimal greatest;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private ReadingOutcome outcome;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private Ground ground;

    @Column(name = "in_doubt")
    private boolean inDoubt;

    protected RejudgedReading() {}

    RejudgedReading(long rejudgementId, long readingId, String serial, SpanJudge.Found found, boolean inDoubt) {
        this.rejudgementId = rejudgementId;
        this.readingId = readingId;
        this.serial = serial;
        this.least = found.span() == null ? null : found.span().least();
        this.greatest = found.span() == null ? null : found.span().greatest();
        this.outcome = found.outcome();
        this.ground = found.ground();
        this.inDoubt = inDoubt;
        this.place = inDoubt ? 0 : outcome == ReadingOutcome.MEASURE_AGAIN ? 1 : 2;
    }

    /** Its columns in the order they are inserted in. */
    void into(PreparedStatement row) throws SQLException {
        row.setLong(1, rejudgementId);
        row.setLong(2, readingId);
        row.setInt(3, place);
        row.setString(4, serial);
        row.setBigDecimal(5, least);
        row.setBigDecimal(6, greatest);
        row.setString(7, outcome.name());
        row.setString(8, ground.name());
        row.setBoolean(9, inDoubt);
    }

    long readingId() {
        return readingId;
    }

    String serial() {
        return serial;
    }

    @Nullable
    BigDecimal least() {
        return least;
    }

    @Nullable
    BigDecimal greatest() {
        return greatest;
    }

    ReadingOutcome outcome() {
        return outcome;
    }

    Ground ground() {
        return ground;
    }

    /** Whether it is not cleared and a characteristic stood on it when it was judged again. */
    boolean inDoubt() {
        return inDoubt;
    }
}
