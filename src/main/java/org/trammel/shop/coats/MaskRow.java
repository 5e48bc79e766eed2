package org.trammel.shop.coats;

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

/** A mask put on or taken off. */
@Entity
@Immutable
@Table(name = "coat_mask")
class MaskRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(nullable = false)
    private String landmark;

    @Column(nullable = false)
    private boolean fitted;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected MaskRow() {}

    MaskRow(long operationId, String landmark, boolean fitted, Act act) {
        this.operationId = operationId;
        this.landmark = landmark;
        this.fitted = fitted;
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long operationId() {
        return operationId;
    }

    String landmark() {
        return landmark;
    }

    boolean fitted() {
        return fitted;
    }

    long by() {
        return by;
    }

    Instant at() {
        return at;
    }
}
