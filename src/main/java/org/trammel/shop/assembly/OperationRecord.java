package org.trammel.shop.assembly;

import jakarta.persistence.Column;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.MappedSuperclass;
import java.time.Instant;
import java.util.UUID;
import org.trammel.shop.records.Act;

/** Something recorded at an operation by an act. */
@MappedSuperclass
abstract class OperationRecord {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected OperationRecord() {}

    OperationRecord(long operationId, Act act) {
        this.operationId = operationId;
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long operationId() {
        return operationId;
    }

    long by() {
        return by;
    }

    Instant at() {
        return at;
    }
}
