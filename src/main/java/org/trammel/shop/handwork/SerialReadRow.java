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
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** A serial read back from the metal. One that is not the frame's is a {@link MisreadRow}. */
@Entity
@Immutable
@Table(name = "serial_read")
class SerialReadRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(name = "strike_tick_id")
    private @Nullable Long strikeTickId;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected SerialReadRow() {}

    SerialReadRow(long operationId, long strikeTickId, Act act) {
        this.operationId = operationId;
        this.strikeTickId = strikeTickId;
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long operationId() {
        return operationId;
    }

    HandRecord.SerialRead read() {
        return new HandRecord.SerialRead(by, at);
    }
}
