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
import org.trammel.shop.records.Act;

/** What a frame was blasted with. */
@Entity
@Immutable
@Table(name = "coat_blast")
class BlastRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(nullable = false)
    private String metal;

    @Column(nullable = false)
    private String lot;

    @Column(name = "pressure_bar", nullable = false)
    private BigDecimal pressure_bar;

    @Column(name = "most_bar", nullable = false)
    private BigDecimal most_bar;

    @Column(nullable = false)
    private String gauge;

    @Column(nullable = false)
    private String cleanliness;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected BlastRow() {}

    BlastRow(long operationId, String metal, SurfaceRecord.Blast blast, Act act) {
        this.operationId = operationId;
        this.metal = metal;
        this.lot = blast.lot();
        this.pressure_bar = blast.pressure_bar();
        this.most_bar = blast.most_bar();
        this.gauge = blast.gauge();
        this.cleanliness = blast.cleanliness();
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long operationId() {
        return operationId;
    }

    SurfaceRecord.Blast blast() {
        return new SurfaceRecord.Blast(lot, pressure_bar, most_bar, gauge, cleanliness, by, at);
    }
}
