package org.trammel.shop.handwork;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.trammel.shop.records.Act;

/** How water ran off the parts of a frame. */
@Entity
@Immutable
@Table(name = "water_break")
class WaterBreakRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(nullable = false)
    private boolean held;

    @Column(nullable = false)
    private String parts;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected WaterBreakRow() {}

    WaterBreakRow(long operationId, boolean held, String parts, Act act) {
        this.operationId = operationId;
        this.held = held;
        this.parts = parts;
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long operationId() {
        return operationId;
    }

    HandRecord.Water water() {
        return new HandRecord.Water(held, parts, by, at);
    }
}
