package org.trammel.shop.assembly;

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
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** One bolt of one pass. */
@Entity
@Immutable
@Table(name = "bolt_torque")
class TorqueRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(name = "component_id", nullable = false)
    private long partId;

    @Column(name = "fastener_id", nullable = false)
    private long fastenerId;

    @Column(nullable = false)
    private int round;

    @Column(nullable = false)
    private int pass;

    @Column(nullable = false)
    private int bolt;

    @Column(name = "target_nm", nullable = false)
    private BigDecimal target_Nm;

    @Column(name = "set_nm", nullable = false)
    private BigDecimal set_Nm;

    @Column(name = "reading_nm")
    private @Nullable BigDecimal reading_Nm;

    @Column(name = "least_nm", nullable = false)
    private BigDecimal least_Nm;

    @Column(name = "most_nm", nullable = false)
    private BigDecimal most_Nm;

    @Column(name = "error_percent", nullable = false)
    private BigDecimal error_percent;

    @Column(nullable = false)
    private String gauge;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private TorqueVerdict verdict;

    private @Nullable String nonconformance;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected TorqueRow() {}

    TorqueRow(long operationId, long partId, long fastenerId, Bolt bolt, Act act) {
        this.operationId = operationId;
        this.partId = partId;
        this.fastenerId = fastenerId;
        this.round = bolt.round();
        this.pass = bolt.pass();
        this.bolt = bolt.bolt();
        this.target_Nm = bolt.target_Nm();
        this.set_Nm = bolt.set_Nm();
        this.reading_Nm = bolt.reading_Nm();
        this.least_Nm = bolt.least_Nm();
        this.most_Nm = bolt.most_Nm();
        this.error_percent = bolt.error_percent();
        this.gauge = bolt.gauge();
        this.verdict = bolt.verdict();
        this.nonconformance = bolt.nonconformance();
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long operationId() {
        return operationId;
    }

    Key key() {
        return new Key(partId, fastenerId);
    }

    /** Which fastener of which component of the frame. */
    record Key(long partId, long fastenerId) {}

    Bolt bolt() {
        return new Bolt(
                round,
                pass,
                bolt,
                target_Nm,
                set_Nm,
                reading_Nm,
                least_Nm,
                most_Nm,
                error_percent,
                gauge,
                verdict,
                nonconformance,
                by,
                at);
    }
}
