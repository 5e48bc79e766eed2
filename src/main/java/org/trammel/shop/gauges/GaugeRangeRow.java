package org.trammel.shop.gauges;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "gauge_range")
class GaugeRangeRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String kind;

    @Column(nullable = false)
    private String unit;

    private @Nullable BigDecimal lowest;

    private @Nullable BigDecimal highest;

    private @Nullable BigDecimal resolution;

    private @Nullable BigDecimal u;

    @Column(name = "u_percent")
    private @Nullable BigDecimal uPercent;

    @Column(name = "u_source", nullable = false)
    private String uSource;

    @Column(name = "error_percent")
    private @Nullable BigDecimal errorPercent;

    protected GaugeRangeRow() {}

    GaugeRangeRow(GaugeRange range) {
        this.kind = range.kind();
        this.unit = range.unit();
        this.lowest = range.lowest();
        this.highest = range.highest();
        this.resolution = range.resolution();
        this.u = range.u();
        this.uPercent = range.uPercent();
        this.uSource = range.uSource();
        this.errorPercent = range.errorPercent();
    }

    @Nullable
    Long id() {
        return id;
    }

    GaugeRange range() {
        return new GaugeRange(
                kind,
                unit,
                bareOrNone(lowest),
                bareOrNone(highest),
                bareOrNone(resolution),
                bareOrNone(u),
                bareOrNone(uPercent),
                uSource,
                bareOrNone(errorPercent));
    }

    /** The column's scale says nothing about the figure; 0,010000 and 0,01 are one resolution. */
    static BigDecimal bare(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    private static @Nullable BigDecimal bareOrNone(@Nullable BigDecimal number) {
        return number == null ? null : bare(number);
    }
}
