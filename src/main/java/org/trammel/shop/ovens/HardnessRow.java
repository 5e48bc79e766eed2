package org.trammel.shop.ovens;

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
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.HardnessMethod;
import org.trammel.shop.records.Act;

@Entity
@Immutable
@Table(name = "oven_hardness")
class HardnessRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "run_id", nullable = false)
    private long runId;

    @Column(name = "traveller_id")
    private @Nullable Long travellerId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private HardnessMethod method;

    @Column(nullable = false)
    private BigDecimal figure;

    @Column(nullable = false)
    private String scale;

    private @Nullable BigDecimal least;

    private @Nullable BigDecimal most;

    @Column(nullable = false)
    private String place;

    @Column(nullable = false)
    private String gauge;

    private @Nullable String report;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected HardnessRow() {}

    HardnessRow(
            long runId,
            @Nullable Long travellerId,
            HardnessMethod method,
            BigDecimal figure,
            String scale,
            @Nullable BigDecimal least,
            @Nullable BigDecimal most,
            String place,
            String gauge,
            @Nullable String report,
            Act act) {
        this.runId = runId;
        this.travellerId = travellerId;
        this.method = method;
        this.figure = figure;
        this.scale = scale;
        this.least = least;
        this.most = most;
        this.place = place;
        this.gauge = gauge;
        this.report = report;
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    @Nullable
    Long travellerId() {
        return travellerId;
    }

    Hardness hardness(String on) {
        return new Hardness(
                travellerId,
                on,
                method,
                ProgrammeStep.bare(figure),
                scale,
                ProgrammeStep.bareOrNone(least),
                ProgrammeStep.bareOrNone(most),
                place,
                gauge,
                report,
                met(),
                by,
                at);
    }

    private @Nullable Boolean met() {
        if (least == null && most == null) {
            return null;
        }
        return (least == null || figure.compareTo(least) >= 0) && (most == null || figure.compareTo(most) <= 0);
    }
}
