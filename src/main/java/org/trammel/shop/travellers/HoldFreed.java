package org.trammel.shop.travellers;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** One operation the QA lead lets go on under a hold that stays. */
@Entity
@Table(name = "hold_freed")
class HoldFreed {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "hold_id")
    private long holdId;

    @Column(name = "operation_id")
    private long operationId;

    @Column(name = "freed_by")
    private long freedBy;

    private Instant at;

    private String reason;

    protected HoldFreed() {}

    HoldFreed(long holdId, long operationId, long freedBy, Instant at, String reason) {
        this.holdId = holdId;
        this.operationId = operationId;
        this.freedBy = freedBy;
        this.at = at;
        this.reason = reason;
    }

    long id() {
        return id;
    }

    long holdId() {
        return holdId;
    }

    long operationId() {
        return operationId;
    }

    long freedBy() {
        return freedBy;
    }

    Instant at() {
        return at;
    }

    String reason() {
        return reason;
    }
}
