package org.trammel.shop.assembly;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;
import org.trammel.shop.records.Act;

/** Who rode a bicycle, and how it went. */
@Entity
@Immutable
@Table(name = "ride_record")
class RideRow extends OperationRecord {

    @Column(name = "rider_id", nullable = false)
    private long riderId;

    @Column(nullable = false)
    private boolean good;

    @Column(nullable = false)
    private String words;

    protected RideRow() {}

    RideRow(long operationId, long riderId, boolean good, String words, Act act) {
        super(operationId, act);
        this.riderId = riderId;
        this.good = good;
        this.words = words;
    }

    BuildRecord.Ridden ridden() {
        return new BuildRecord.Ridden(riderId, good, words, at());
    }
}
