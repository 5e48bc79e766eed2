package org.trammel.shop.ovens;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.QuenchDelay;
import org.trammel.shop.records.Act;

@Entity
@Immutable
@Table(name = "oven_run_quench_tap")
class QuenchTapRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "run_id", nullable = false)
    private long runId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private QuenchMark mark;

    @Column(name = "device_id")
    private @Nullable Long deviceId;

    @Column(name = "device_at")
    private @Nullable Instant deviceAt;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected QuenchTapRow() {}

    QuenchTapRow(long runId, QuenchMark mark, Act act) {
        this.runId = runId;
        this.mark = mark;
        this.deviceId = act.device();
        this.deviceAt = act.deviceAt();
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    QuenchMark mark() {
        return mark;
    }

    Instant at() {
        return at;
    }

    QuenchDelay.Tap tap() {
        return new QuenchDelay.Tap(deviceId, deviceAt, at);
    }
}
