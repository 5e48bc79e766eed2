package org.trammel.shop.ovens;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

@Entity
@Immutable
@Table(name = "oven_test")
class OvenTestRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "oven_id", nullable = false)
    private long ovenId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private TestKind kind;

    private @Nullable String thermocouple;

    @Column(name = "tested_at", nullable = false)
    private Instant testedAt;

    @Column(name = "due_on")
    private @Nullable LocalDate dueOn;

    @Column(nullable = false)
    private boolean good;

    @Column(name = "lowest_k")
    private @Nullable BigDecimal lowest_K;

    @Column(name = "highest_k")
    private @Nullable BigDecimal highest_K;

    @Column(name = "error_k")
    private @Nullable BigDecimal error_K;

    @Column(name = "at_degc", nullable = false)
    private BigDecimal at_degC;

    @Column(nullable = false)
    private String report;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected OvenTestRow() {}

    OvenTestRow(long ovenId, NewTest entry, boolean good, Act act) {
        this.ovenId = ovenId;
        this.kind = entry.kind();
        this.thermocouple = entry.thermocouple();
        this.testedAt = entry.testedAt();
        this.dueOn = good ? entry.dueOn() : null;
        this.good = good;
        this.lowest_K = entry.lowest_K();
        this.highest_K = entry.highest_K();
        this.error_K = entry.error_K();
        this.at_degC = Objects.requireNonNull(entry.at_degC());
        this.report = Objects.requireNonNull(entry.report());
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long ovenId() {
        return ovenId;
    }

    OvenTest test() {
        return new OvenTest(
                id, kind, thermocouple, testedAt, dueOn, good, lowest_K, highest_K, error_K, at_degC, report, by);
    }
}
