package org.trammel.shop.dew;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** Air and metal, with the margin as it was judged. Its places stand in rows of their own. */
@Entity
@Immutable
@Table(name = "dew_margin")
class DewMarginRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private DewPurpose purpose;

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

    @Column(name = "least_degc")
    private @Nullable BigDecimal least_degC;

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

    protected DewMarginRow() {}

    DewMarginRow(long operationId, DewPurpose purpose, DewMargin margin, Act act) {
        this.operationId = operationId;
        this.purpose = purpose;
        this.air_degC = margin.air_degC();
        this.humidity_percent = margin.humidity_percent();
        this.metal_degC = margin.metal_degC();
        this.point_degC = margin.point_degC();
        this.overIce = margin.overIce();
        this.margin_K = margin.margin_K();
        this.wanted_K = margin.wanted_K();
        this.least_degC = margin.least_degC();
        this.leastMetal_degC = margin.leastMetal_degC();
        this.source = margin.source();
        this.airGauge = margin.airGauge();
        this.metalGauge = margin.metalGauge();
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long id() {
        return id;
    }

    long operationId() {
        return operationId;
    }

    DewPurpose purpose() {
        return purpose;
    }

    DewMargin margin(List<DewMargin.Place> places) {
        return new DewMargin(
                air_degC,
                humidity_percent,
                metal_degC,
                places,
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
