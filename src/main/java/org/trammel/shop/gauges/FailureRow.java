package org.trammel.shop.gauges;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

@Entity
@Immutable
@Table(name = "gauge_failure")
class FailureRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "gauge_id", nullable = false)
    private long gaugeId;

    @Column(name = "found_on", nullable = false)
    private LocalDate foundOn;

    @Column(name = "last_good_on")
    private @Nullable LocalDate lastGoodOn;

    private @Nullable BigDecimal error;

    @Column(nullable = false)
    private String unit;

    @Column(name = "error_at")
    private @Nullable BigDecimal errorAt;

    @Column(nullable = false)
    private String note;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    protected FailureRow() {}

    FailureRow(long gaugeId, @Nullable LocalDate lastGoodOn, Failure failure, Act act) {
        this.gaugeId = gaugeId;
        this.foundOn = failure.foundOn();
        this.lastGoodOn = lastGoodOn;
        this.error = failure.error();
        this.unit = failure.unit();
        this.errorAt = failure.errorAt();
        this.note = failure.note();
        this.by = act.by();
        this.at = act.at();
    }

    long id() {
        return id;
    }

    /** Whether the gauge may have been wrong already, and was not put right yet. */
    boolean reaches(Instant read, ZoneId zone) {
        return !read.isAfter(at)
                && (lastGoodOn == null
                        || !read.isBefore(lastGoodOn.atStartOfDay(zone).toInstant()));
    }

    Failure failure() {
        return new Failure(foundOn, error, unit, errorAt, note);
    }
}
