package org.trammel.shop.welding;

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

/** A node welded. */
@Entity
@Immutable
@Table(name = "weld_node_done")
class NodeDoneRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "opened_id", nullable = false)
    private long openedId;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(name = "step_id", nullable = false)
    private long stepId;

    @Column(name = "node", nullable = false)
    private String node;

    @Column(name = "amps_least")
    private @Nullable BigDecimal ampsLeast;

    @Column(name = "amps_most")
    private @Nullable BigDecimal ampsMost;

    @Column(name = "volts")
    private @Nullable BigDecimal volts;

    @Column(name = "amps")
    private @Nullable BigDecimal amps;

    @Column(name = "length_mm")
    private @Nullable BigDecimal length_mm;

    @Column(name = "seconds")
    private @Nullable BigDecimal seconds;

    @Column(name = "efficiency")
    private @Nullable BigDecimal efficiency;

    @Column(name = "heat_kj_per_mm")
    private @Nullable BigDecimal heat_kJ_per_mm;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(name = "colour")
    private @Nullable BeadColour colour;

    @Column(name = "fillet_mm")
    private @Nullable BigDecimal fillet_mm;

    @Column(name = "gauge")
    private @Nullable String gauge;

    @Column(name = "words", nullable = false)
    private String words;

    @Column(name = "nonconformance")
    private @Nullable String nonconformance;

    /** 0 for what was entered first, then counted for each correction. */
    @Column(name = "number", nullable = false)
    private int number;

    @Column(name = "correction")
    private @Nullable String correction;

    /** The one by which it was judged; null of what was closed before that was kept. */
    @Column(name = "procedure_id")
    private @Nullable Long procedureId;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected NodeDoneRow() {}

    NodeDoneRow(long operationId, long stepId, String node, int number, NodeRecord.Done done, Act act) {
        this.openedId = done.openedId();
        this.operationId = operationId;
        this.stepId = stepId;
        this.node = node;
        this.ampsLeast = done.ampsLeast();
        this.ampsMost = done.ampsMost();
        this.volts = done.volts();
        this.amps = done.amps();
        this.length_mm = done.length_mm();
        this.seconds = done.seconds();
        this.efficiency = done.efficiency();
        this.heat_kJ_per_mm = done.heat_kJ_per_mm();
        this.colour = done.colour();
        this.fillet_mm = done.fillet_mm();
        this.gauge = done.gauge();
        this.words = String.join("\n", done.words());
        this.nonconformance = done.nonconformance();
        this.number = number;
        this.correction = done.correction();
        this.procedureId = done.procedureId();
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long operationId() {
        return operationId;
    }

    long stepId() {
        return stepId;
    }

    String node() {
        return node;
    }

    NodeRecord.Done done() {
        return new NodeRecord.Done(
                id == null ? 0 : id,
                openedId,
                procedureId == null ? 0 : procedureId,
                ampsLeast,
                ampsMost,
                volts,
                amps,
                length_mm,
                seconds,
                efficiency,
                heat_kJ_per_mm,
                colour,
                fillet_mm,
                gauge,
                words.lines().toList(),
                nonconformance,
                correction,
                by,
                at);
    }
}
