package org.trammel.shop.handwork;

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

/** Air and metal before the arc, with the limits they were judged by. */
@Entity
@Immutable
@Table(name = "metal_air")
class MetalAirRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(name = "air_degc", nullable = false)
    private BigDecimal air_degC;

    @Column(name = "humidity_percent", nullable = false)
    private BigDecimal humidity_percent;

    @Column(name = "metal_degc", nullable = false)
    private BigDecimal metal_degC;

    @Column(name = "point_degc", nullable = false)
    private BigDecimal point_degC;

    @Column(name = "over_ice", nullable = false)
    private boolean overIce;

    @Column(name = "margin_k", nullable = false)
    private BigDecimal margin_K;

    @Column(name = "wanted_k", nullable = false)
    private BigDecimal wanted_K;

    @Column(name = "least_degc", nullable = false)
    private BigDecimal least_degC;

    @Column(name = "least_metal_degc", nullable = false)
    private BigDecimal leastMetal_degC;

    @Column(nullable = false)
    private String source;

    @Column(name = "air_gauge", nullable = false)
    private String airGauge;

    @Column(name = "metal_gauge", nullable = false)
    private String metalGauge;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected MetalAirRow() {}

    MetalAirRow(long operationId, HandRecord.Air air, Act act) {
        this.operationId = operationId;
        this.air_degC = air.air_degC();
        this.humidity_percent = air.humidity_percent();
        this.metal_degC = air.metal_degC();
        this.point_degC = air.point_degC();
        this.overIce = air.overIce();
        this.margin_K = air.margin_K();
        this.wanted_K = air.wanted_K();
        this.least_degC = air.least_degC();
        this.leastMetal_degC = air.leastMetal_degC();
        this.source = air.source();
        this.airGauge = air.airGauge();
        this.metalGauge = air.metalGauge();
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long operationId() {
        return operationId;
    }

    HandRecord.Air air() {
        return new HandRecord.Air(
                air_degC,
                humidity_percent,
                metal_degC,
                point_degC,
                overIce,
                margin_K,
                wanted_K,
                least_degC,
                leastMetal_degC,
                source,
                airGauge,
                metalGauge,
                by,
                at);
    }
}
