package org.trammel.shop.coats;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** What is sprayed, and the earth it is sprayed against. */
@Entity
@Immutable
@Table(name = "coat_spray")
class SprayRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(nullable = false)
    private String lot;

    @Column(name = "expires_on")
    private @Nullable LocalDate expiresOn;

    @Column(name = "earth_mohm")
    private @Nullable BigDecimal earth_MOhm;

    @Column(name = "most_earth_mohm")
    private @Nullable BigDecimal mostEarth_MOhm;

    @Column
    private @Nullable String gauge;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected SprayRow() {}

    SprayRow(long operationId, SurfaceRecord.Spray spray, Act act) {
        this.operationId = operationId;
        this.lot = spray.lot();
        this.expiresOn = spray.expiresOn();
        this.earth_MOhm = spray.earth_MOhm();
        this.mostEarth_MOhm = spray.mostEarth_MOhm();
        this.gauge = spray.gauge();
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long operationId() {
        return operationId;
    }

    SurfaceRecord.Spray spray() {
        return new SurfaceRecord.Spray(lot, expiresOn, earth_MOhm, mostEarth_MOhm, gauge, by, at);
    }
}
