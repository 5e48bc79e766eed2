package org.trammel.shop.drift;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.Baseline;
import org.trammel.shop.records.Act;

/** What the limits of a series are made of. Only added to. */
@Entity
@Table(name = "drift_base")
class BaseRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "series_id")
    private long seriesId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private Base.Kind kind;

    private BigDecimal centre;
    private BigDecimal sigma;
    private int readings;

    @Column(name = "starts_at")
    private @Nullable Instant startsAt;

    @Column(name = "ends_at")
    private @Nullable Instant endsAt;

    private BigDecimal weight;
    private BigDecimal width;
    private BigDecimal slack;
    private BigDecimal decision;

    @Column(name = "stops_jig")
    private boolean stopsJig;

    private String source;
    private String reason;

    @Column(name = "person_id")
    private long personId;

    private Instant at;

    @Column(name = "act_id")
    private UUID actId;

    protected BaseRow() {}

    BaseRow(Act act, long seriesId, NewBase entry, Baseline taken, @Nullable Instant starts, @Nullable Instant ends) {
        this.seriesId = seriesId;
        this.kind = entry.kind();
        this.centre = kept(taken.mean());
        this.sigma = kept(taken.sigma());
        this.readings = taken.count();
        this.startsAt = starts;
        this.endsAt = ends;
        this.weight = entry.weight();
        this.width = entry.width();
        this.slack = entry.slack();
        this.decision = entry.decision();
        this.stopsJig = entry.stopsJig();
        this.source = entry.source();
        this.reason = entry.reason();
        this.personId = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    static BigDecimal kept(double figure) {
        return BigDecimal.valueOf(figure).setScale(10, RoundingMode.HALF_UP);
    }

    Base base() {
        return new Base(
                id, seriesId, kind, centre, sigma, readings, startsAt, endsAt, weight, width, slack, decision, stopsJig,
                source, reason, personId, at);
    }
}
