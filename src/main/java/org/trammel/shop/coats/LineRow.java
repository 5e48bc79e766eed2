package org.trammel.shop.coats;

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

/** A line of film laid or drawn off. */
@Entity
@Immutable
@Table(name = "coat_line")
class LineRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(nullable = false)
    private String name;

    @Column(nullable = false)
    private boolean laid;

    @Column(name = "drive_mm")
    private @Nullable BigDecimal drive_mm;

    @Column(name = "non_drive_mm")
    private @Nullable BigDecimal nonDrive_mm;

    @Column(name = "bleed_mm")
    private @Nullable BigDecimal bleed_mm;

    @Column(nullable = false)
    private String gauge;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected LineRow() {}

    LineRow(long operationId, MaskLine line, Act act) {
        this.operationId = operationId;
        this.name = line.name();
        this.laid = line.laid();
        this.drive_mm = line.drive_mm();
        this.nonDrive_mm = line.nonDrive_mm();
        this.bleed_mm = line.bleed_mm();
        this.gauge = line.gauge();
        this.by = line.by();
        this.at = line.at();
        this.actId = act.id();
    }

    long operationId() {
        return operationId;
    }

    MaskLine line() {
        return new MaskLine(name, laid, drive_mm, nonDrive_mm, bleed_mm, gauge, by, at);
    }
}
