package org.trammel.shop.assembly;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** How far a seatpost was found to be in. */
@Entity
@Immutable
@Table(name = "seatpost_insertion")
class InsertionRow extends OperationRecord {

    @Column(name = "component_id", nullable = false)
    private long partId;

    @Column(name = "inserted_mm", nullable = false)
    private BigDecimal inserted_mm;

    @Column(name = "least_mm", nullable = false)
    private BigDecimal least_mm;

    @Column(name = "drawn_mm")
    private @Nullable BigDecimal drawn_mm;

    protected InsertionRow() {}

    InsertionRow(long operationId, PostIn post, BigDecimal inserted_mm, Act act) {
        super(operationId, act);
        this.partId = post.part().id();
        this.inserted_mm = inserted_mm;
        this.least_mm = post.least_mm();
        this.drawn_mm = post.drawn_mm();
    }

    long partId() {
        return partId;
    }

    BigDecimal inserted_mm() {
        return inserted_mm;
    }

    BigDecimal least_mm() {
        return least_mm;
    }
}
