package org.trammel.shop.materials;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** A line of the table of fits. Its end is written beside it; it is never removed. */
@Entity
@Table(name = "material_fit")
class FitRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "class_code", nullable = false)
    private String materialClass;

    @Column(nullable = false)
    private String metal;

    private @Nullable String process;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(name = "after_weld", nullable = false)
    private Fit.AfterWeld afterWeld;

    @Column(nullable = false)
    private String source;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant since;

    @Column(name = "ended_by")
    private @Nullable Long endedBy;

    @Column(name = "ended_at")
    private @Nullable Instant endedAt;

    @Column(name = "ended_reason")
    private @Nullable String endedReason;

    protected FitRow() {}

    FitRow(
            String materialClass,
            String metal,
            @Nullable String process,
            Fit.AfterWeld afterWeld,
            String source,
            Act act) {
        this.materialClass = materialClass;
        this.metal = metal;
        this.process = process;
        this.afterWeld = afterWeld;
        this.source = source;
        this.by = act.by();
        this.since = act.at();
    }

    void end(String reason, Act act) {
        endedReason = reason;
        endedBy = act.by();
        endedAt = act.at();
    }

    boolean ended() {
        return endedAt != null;
    }

    long id() {
        return id;
    }

    Fit fit() {
        return new Fit(id, materialClass, metal, process, afterWeld, source, by, since);
    }
}
