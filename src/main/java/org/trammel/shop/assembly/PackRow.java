package org.trammel.shop.assembly;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;
import org.trammel.shop.records.Act;

/** Frame, box and paper bore one serial. */
@Entity
@Immutable
@Table(name = "pack_record")
class PackRow extends OperationRecord {

    @Column(nullable = false)
    private String serial;

    protected PackRow() {}

    PackRow(long operationId, String serial, Act act) {
        super(operationId, act);
        this.serial = serial;
    }

    BuildRecord.Packed packed() {
        return new BuildRecord.Packed(serial, by(), at());
    }
}
