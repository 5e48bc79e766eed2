package org.trammel.shop.cuts;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** A tube as it was measured; its mitred ends stand in rows of their own. */
@Entity
@Immutable
@Table(name = "tube_cut")
class CutRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(nullable = false)
    private String piece;

    @Column(nullable = false)
    private String called;

    @Column(name = "blank_mm", nullable = false)
    private BigDecimal blank_mm;

    @Column(name = "wanted_mm", nullable = false)
    private BigDecimal wanted_mm;

    @Column(name = "length_gauge", nullable = false)
    private String lengthGauge;

    @Column(name = "phase_deg")
    private @Nullable BigDecimal phase_deg;

    @Column(name = "phase_gauge")
    private @Nullable String phaseGauge;

    @Column(name = "angle_gauge")
    private @Nullable String angleGauge;

    @Column(name = "gap_gauge")
    private @Nullable String gapGauge;

    @Column(name = "wall_gauge")
    private @Nullable String wallGauge;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected CutRow() {}

    CutRow(long operationId, Cut cut, Act act) {
        this.operationId = operationId;
        this.piece = cut.piece();
        this.called = cut.called();
        this.blank_mm = cut.blank_mm();
        this.wanted_mm = cut.wanted_mm();
        this.lengthGauge = cut.with().length();
        this.phase_deg = cut.phase_deg();
        this.phaseGauge = cut.with().phase();
        this.angleGauge = cut.with().angle();
        this.gapGauge = cut.with().gap();
        this.wallGauge = cut.with().wall();
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

    String piece() {
        return piece;
    }

    Instant at() {
        return at;
    }

    UUID actId() {
        return actId;
    }

    Cut cut(List<Cut.End> ends) {
        return new Cut(
                piece,
                called,
                blank_mm,
                wanted_mm,
                phase_deg,
                ends,
                new Cut.With(lengthGauge, angleGauge, phaseGauge, gapGauge, wallGauge),
                by,
                at);
    }
}
