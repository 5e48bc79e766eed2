package org.trammel.shop.welding;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** A node begun. */
@Entity
@Immutable
@Table(name = "weld_node_opened")
class NodeOpenedRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(name = "step_id", nullable = false)
    private long stepId;

    @Column(name = "node", nullable = false)
    private String node;

    @Column(name = "procedure_id", nullable = false)
    private long procedureId;

    @Column(name = "fillers", nullable = false)
    private String fillers;

    @Column(name = "gases", nullable = false)
    private String gases;

    @Column(name = "interpass_degc")
    private @Nullable BigDecimal interpass_degC;

    @Column(name = "most_interpass_degc")
    private @Nullable BigDecimal mostInterpass_degC;

    @Column(name = "interpass_guard_degc")
    private @Nullable BigDecimal interpassGuard_degC;

    @Column(name = "gauge")
    private @Nullable String gauge;

    @Column(name = "reason")
    private @Nullable String reason;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected NodeOpenedRow() {}

    NodeOpenedRow(long operationId, long stepId, String node, long procedureId, NodeRecord.Opened opened, Act act) {
        this.operationId = operationId;
        this.stepId = stepId;
        this.node = node;
        this.procedureId = procedureId;
        this.fillers = opened.fillers();
        this.gases = opened.gases();
        this.interpass_degC = opened.interpass_degC();
        this.mostInterpass_degC = opened.mostInterpass_degC();
        this.interpassGuard_degC = opened.interpassGuard_degC();
        this.gauge = opened.gauge();
        this.reason = opened.reason();
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

    NodeRecord.Opened opened() {
        return new NodeRecord.Opened(
                id, fillers, gases, interpass_degC, mostInterpass_degC, interpassGuard_degC, gauge, reason, by, at);
    }
}
