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

/** What somebody read from the metal that is not the serial of the frame. */
@Entity
@Immutable
@Table(name = "serial_misread")
class MisreadRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(name = "read_as", nullable = false)
    private String readAs;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected MisreadRow() {}

    MisreadRow(long operationId, String readAs, Act act) {
        this.operationId = operationId;
        this.readAs = readAs;
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long operationId() {
        return operationId;
    }

    HandRecord.Misread misread() {
        return new HandRecord.Misread(readAs, by, at);
    }
}
