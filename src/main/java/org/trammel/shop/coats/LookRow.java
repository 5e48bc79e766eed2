package org.trammel.shop.coats;

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
import org.trammel.shop.records.Act;

@Entity
@Immutable
@Table(name = "coat_look")
class LookRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(name = "finish_id", nullable = false)
    private long finishId;

    @Column(name = "cross_cut")
    private @Nullable Integer crossCut;

    @Column
    private @Nullable BigDecimal gloss;

    @Column(name = "gloss_gauge")
    private @Nullable String glossGauge;

    @Column(name = "colour_difference")
    private @Nullable BigDecimal colourDifference;

    @Column(name = "colour_gauge")
    private @Nullable String colourGauge;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private CoatVerdict verdict;

    @Column(nullable = false)
    private String words;

    @Column
    private @Nullable String nonconformance;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected LookRow() {}

    LookRow(long operationId, long finishId, Look look, @Nullable String gauge, Act act) {
        this.operationId = operationId;
        this.finishId = finishId;
        this.crossCut = look.crossCut();
        this.gloss = look.gloss();
        this.glossGauge = look.gloss() == null ? null : gauge;
        this.colourDifference = look.colourDifference();
        this.colourGauge = look.colourDifference() == null ? null : gauge;
        this.verdict = look.verdict();
        this.words = String.join("\n", look.words());
        this.nonconformance = look.nonconformance();
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long operationId() {
        return operationId;
    }

    Look look() {
        return new Look(
                crossCut, gloss, colourDifference, verdict, words.lines().toList(), nonconformance, by, at);
    }
}
