package org.trammel.shop.assembly;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.trammel.shop.records.Act;

/** A brake bedded. */
@Entity
@Immutable
@Table(name = "bedding_record")
class BeddingRow extends OperationRecord {

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private BuildRecord.Brake brake;

    @Column(nullable = false)
    private int stops;

    @Column(nullable = false)
    private BigDecimal kmh;

    @Column(name = "asked_stops", nullable = false)
    private int askedStops;

    @Column(name = "asked_kmh", nullable = false)
    private BigDecimal asked_kmh;

    @Column(nullable = false)
    private String source;

    @Column(nullable = false)
    private boolean clear;

    protected BeddingRow() {}

    BeddingRow(long operationId, BuildRecord.Bedded bedded, Act act) {
        super(operationId, act);
        this.brake = bedded.brake();
        this.stops = bedded.stops();
        this.kmh = bedded.kmh();
        this.askedStops = bedded.askedStops();
        this.asked_kmh = bedded.asked_kmh();
        this.source = bedded.source();
        this.clear = bedded.clear();
    }

    BuildRecord.Bedded bedded() {
        return new BuildRecord.Bedded(brake, stops, kmh, askedStops, asked_kmh, source, clear, by(), at());
    }
}
