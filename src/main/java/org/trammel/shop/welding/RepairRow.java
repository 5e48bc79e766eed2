package org.trammel.shop.welding;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** A node that is to be welded again. */
@Entity
@Immutable
@Table(name = "weld_repair")
class RepairRow {

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

    @Column(name = "number", nullable = false)
    private int number;

    @Column(name = "reason", nullable = false)
    private String reason;

    @Column(name = "nonconformance")
    private @Nullable String nonconformance;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected RepairRow() {}

    RepairRow(long operationId, long stepId, String node, NodeRecord.Repair repair, Act act) {
        this.openedId = repair.openedId();
        this.operationId = operationId;
        this.stepId = stepId;
        this.node = node;
        this.number = repair.number();
        this.reason = repair.reason();
        this.nonconformance = repair.nonconformance();
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

    NodeRecord.Repair repair() {
        return new NodeRecord.Repair(openedId, number, reason, nonconformance, by, at);
    }
}
