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
import org.trammel.shop.records.Act;

/** A node that a loop of its operation did not touch. */
@Entity
@Immutable
@Table(name = "weld_node_kept")
class NodeKeptRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "done_id", nullable = false)
    private long doneId;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(name = "step_id", nullable = false)
    private long stepId;

    @Column(name = "node", nullable = false)
    private String node;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected NodeKeptRow() {}

    NodeKeptRow(long operationId, long stepId, String node, long doneId, Act act) {
        this.operationId = operationId;
        this.stepId = stepId;
        this.node = node;
        this.doneId = doneId;
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

    long doneId() {
        return doneId;
    }

    NodeRecord.Kept kept() {
        return new NodeRecord.Kept(by, at);
    }
}
